using RigScenarios.Files;

namespace RigScenarios.Tests.Files;

/// <summary>A brace or bracket without its other half is told where it stands, not where the parser stumbles.</summary>
public sealed class YamlBracketTests
{
    [Theory]
    [InlineData("conditions: {ambient: 25 °C}", "conditions: {ambient: 25 °C", "The \"{\" that opens here is not closed", "{")]
    [InlineData("plate: {part: plate}}", "plate: {part: plate}", "The \"{\" that opens here is not closed", "{flat")]
    [InlineData("conditions: {ambient: 25 °C}", "conditions: ambient: 25 °C}", "A \"}\" stands here without the \"{\"", "}")]
    [InlineData("{charge: 100 %, voltage: 10 V}]}", "{charge: 100 %, voltage: 10 V}}", "the \"[\" of line", null)]
    [InlineData("title: By hand", "title: \"By \\q hand\"", "a backslash begins an escape", null)]
    [InlineData("blocks: {all: {length: 2 h, others: record}}", "blocks: {all: {length: 2 h, others: record}", "is missing",
        "{all")]
    public void What_is_missing_is_told_at_its_place(string right, string wrong, string words, string? at)
    {
        var text = SmallScenario.Text();
        Assert.Contains(right, text, StringComparison.Ordinal);
        text = text.Replace(right, wrong, StringComparison.Ordinal);
        var (scenario, problems) = ScenarioFile.TryReadText(text, "brace.yaml");
        Assert.Null(scenario);
        var problem = Assert.Single(problems);
        Assert.Contains(words, problem.Problem, StringComparison.Ordinal);
        Assert.DoesNotContain("\\U", problem.Problem, StringComparison.Ordinal);
        if (at is not null)
            Assert.StartsWith(at, text.Split('\n')[problem.At.Line - 1][(problem.At.Column - 1)..], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("title: what {x")]
    [InlineData("title: don't [x")]
    [InlineData("title: \"a } b\"")]
    [InlineData("title: 'a ] b' # and { here")]
    [InlineData("title: a } b ]")]
    [InlineData("a: {b: [1, 2],\n  c: d}\ne: f")]
    public void Marks_within_texts_are_no_brackets(string text) => Assert.Null(YamlBrackets.Find(text));

    [Fact]
    public void Files_that_can_be_read_have_none_alone()
    {
        foreach (var file in Repository.ScenarioFiles.Concat(Repository.PartsFiles))
            Assert.Null(YamlBrackets.Find(File.ReadAllText(file)));
    }
}
