using RigScenarios.Notebooks.Compiler;
using RigScenarios.Notebooks.Parameters;
using RigScenarios.Notebooks.Tests.Places;
using Snapshooter.Xunit3;

namespace RigScenarios.Notebooks.Tests;

public sealed class ParameterTests
{
    private static readonly NotebookParameters Parameters = NotebookFile.Load(Checkout.TestNotebook("trial.ipynb")).Parameters;

    [Fact]
    public void Type_name_value_and_comment_are_read()
    {
        var cold = Parameters.All[0];
        Assert.Equal(("ambientCelsius", ParameterKind.Number, "-8"), (cold.Name, cold.Kind, cold.Default));
        Assert.Equal(("air temperature around the rig", "°C", -30.0, 45.0), (cold.Label, cold.Unit, cold.Minimum, cold.Maximum));
        Assert.Equal(4, Parameters.Cell);
    }

    [Fact]
    public void All_kinds_are_told_apart() => Assert.Equal(
        [ParameterKind.Number, ParameterKind.Number, ParameterKind.WholeNumber, ParameterKind.Text, ParameterKind.YesNo],
        Parameters.All.Select(parameter => parameter.Kind));

    [Fact]
    public void A_range_without_a_unit_is_a_range()
    {
        var batteries = Parameters.All[2];
        Assert.Equal(("batteries in the case", "", 1.0, 12.0),
            (batteries.Label, batteries.Unit, batteries.Minimum, batteries.Maximum));
    }

    [Fact]
    public void Choices_are_read() =>
        Assert.Equal(["on the rig", "in a pocket", "in a warm box"], Parameters.All[3].Choices);

    [Theory]
    [InlineData("ambientCelsius", "-20", "-20")]
    [InlineData("ambientCelsius", "−20 °C", "-20")]
    [InlineData("ambientCelsius", "7.50", "7.5")]
    [InlineData("batteries", "3", "3")]
    [InlineData("place", "IN A POCKET", "in a pocket")]
    [InlineData("monitorOn", "no", "false")]
    public void Values_are_read_as_people_write_them(string name, string given, string expected)
    {
        var value = Parameters.Resolve(new Dictionary<string, string> { [name] = given }).Single(v => v.Parameter.Name == name);
        Assert.Equal((expected, true), (value.Value, value.IsGiven));
    }

    [Fact]
    public void What_is_not_given_keeps_the_notebooks_value() =>
        Assert.Equal(["-8", "98", "2", "on the rig", "true"], Parameters.Resolve().Select(value => value.Value));

    [Fact]
    public void All_problems_are_told_at_once_in_plain_words()
    {
        var problem = Assert.Throws<NotebookInputException>(() => Parameters.Resolve(new Dictionary<string, string>
        {
            ["ambientCelcius"] = "3",
            ["somethingElse"] = "3",
            ["batteries"] = "2.5",
            ["capacityWattHours"] = "900",
            ["ambientCelsius"] = "14 °F",
            ["place"] = "in the car",
            ["monitorOn"] = "maybe",
        }));
        Snapshot.Match(problem.Message.ReplaceLineEndings("\n"));
    }

    [Fact]
    public void A_text_with_quotes_stays_a_text()
    {
        var parameter = new NotebookParameter { Name = "note", Kind = ParameterKind.Text, Default = "", Label = "note" };
        Assert.Equal("\"say \\\"go\\\"; a\\\\b\"", ExecutedNotebook.Literal(parameter, "say \"go\"; a\\b"));
    }

    [Fact]
    public void Places_of_a_build_are_read_and_checked()
    {
        var folder = Directory.CreateTempSubdirectory("rigscenarios-places-").FullName;
        try
        {
            var file = Path.Combine(folder, "moves.ipynb");
            var scenario = System.Text.Json.JsonSerializer
                .Serialize(Path.Combine(Checkout.Root, "data", "scenarios", "winter-harbour.yaml"));
            var cell = $"string scenario = {scenario};  // kit, a scenario file\nstring build = \"tripod\";  // build of the "
                + "camera, a build of scenario\nvar places = \"\";  // Parts moved on the drawing, places of build";
            File.WriteAllText(file, System.Text.Json.JsonSerializer.Serialize(new
            {
                nbformat = 4, nbformat_minor = 5, metadata = new { },
                cells = new[] { new { cell_type = "code", id = "p", metadata = new { tags = new[] { "parameters" } },
                    source = cell, outputs = Array.Empty<object>(), execution_count = (int?)null } },
            }));
            var parameters = NotebookFile.Load(file).Parameters;
            var places = parameters.All[2];
            Assert.Equal((ParameterKind.Places, "build", "Parts moved on the drawing", ""),
                (places.Kind, places.Of, places.Label, places.Default));
            string Value(string text, string build = "tripod") =>
                parameters.Resolve(new Dictionary<string, string> { ["places"] = text, ["build"] = build })[2].Value;
            Assert.Equal("plate -150 mm", Value("plate -150 mm"));
            Assert.Equal("", Value(""));
            Assert.Equal("pad -150 mm", Value("pad -150 mm", "shoulder"));
            string Problem(string text) => Assert.Single(Assert.Throws<NotebookInputException>(() => Value(text)).Problems);
            Assert.Contains("places: plaet: There is no \"plaet\" on the rig. Did you mean \"plate\"? Expected (Parts moved "
                + "on the drawing): ", Problem("plaet -150 mm"), StringComparison.Ordinal);
            Assert.Contains("-500 mm is outside of what its mount allows. Expected (Parts moved on the drawing): -190 mm to "
                + "-136 mm.", Problem("plate -500 mm"), StringComparison.Ordinal);
            Assert.Contains("which is not a thing with a distance", Problem("plate"), StringComparison.Ordinal);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }
}
