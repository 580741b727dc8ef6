using RigScenarios.Notebooks.Parameters;
using RigScenarios.Notebooks.Tests.Places;
using Snapshooter.Xunit3;

namespace RigScenarios.Notebooks.Tests;

public sealed class ParameterTests
{
    private static readonly NotebookParameters Parameters = Notebook.Load(Checkout.TestNotebook("trial.ipynb")).Parameters;

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
        Assert.Equal(("batteries in the case", "", 1.0, 12.0), (batteries.Label, batteries.Unit, batteries.Minimum, batteries.Maximum));
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
        Assert.Equal("\"say \\\"go\\\"; a\\\\b\"", parameter.Literal("say \"go\"; a\\b"));
    }
}
