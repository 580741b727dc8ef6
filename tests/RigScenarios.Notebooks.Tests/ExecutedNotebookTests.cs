using System.Text.Json.Nodes;
using RigScenarios.Notebooks.Compiler;

namespace RigScenarios.Notebooks.Tests;

[Collection(OneNotebookAtATime.Name)]
public sealed class ExecutedNotebookTests(TrialRun trial)
{
    private readonly JsonArray cells = JsonNode.Parse(ExecutedNotebook.Of(trial.Run))!["cells"]!.AsArray();

    [Fact]
    public void Values_given_stand_in_a_cell_of_their_own_after_the_parameters()
    {
        Assert.Equal("injected-parameters", cells[4]!["metadata"]!["tags"]![0]!.GetValue<string>());
        Assert.Equal("ambientCelsius = -20;\nplace = \"in a pocket\";", cells[4]!["source"]!.GetValue<string>());
    }

    [Fact]
    public void Cells_keep_their_ids_and_have_their_outputs()
    {
        var chart = cells.Single(cell => cell!["id"]!.GetValue<string>() == "chart")!;
        var output = Assert.Single(chart["outputs"]!.AsArray())!;
        Assert.Contains("rigFigure(\"voltage\"", output["data"]!["text/html"]!.GetValue<string>(), StringComparison.Ordinal);
        Assert.StartsWith("Battery voltage until the camera stops", output["data"]!["text/plain"]!.GetValue<string>(),
            StringComparison.Ordinal);
        Assert.Equal(4, chart["execution_count"]!.GetValue<int>());
    }

    [Fact]
    public void The_drawing_script_is_in_the_first_cells_output() =>
        Assert.Contains("plotly.js (cartesian", cells[1]!["outputs"]![0]!["data"]!["text/html"]!.GetValue<string>(),
            StringComparison.Ordinal);
}
