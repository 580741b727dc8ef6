using RigScenarios.Files;
using RigScenarios.Scenarios;
using Snapshooter.Xunit3;

namespace RigScenarios.Tests.Files;

public sealed class TenMistakesTests
{
    private static IReadOnlyList<Diagnostic> Problems => ScenarioFile.TryRead(Repository.TestData("ten-mistakes.yaml")).Problems;

    [Fact]
    public void All_mistakes_of_a_file_are_told_at_once_and_in_these_words()
    {
        var text = string.Join('\n', Problems.Select(problem => (problem with { File = "ten-mistakes.yaml" }).ToString())) + "\n";
        Snapshot.Match(text);
    }

    [Fact]
    public void Each_has_its_line_and_column_and_field()
    {
        Assert.True(Problems.Count >= 10);
        Each.Of(Problems, problem => Assert.True(problem.At.Line > 1 && problem.At.Column > 0 && problem.Path.Length > 0,
            problem.ToString()));
        Assert.Equal(Problems.Select(problem => problem.At.Line).Order(), Problems.Select(problem => problem.At.Line));
    }

    [Theory]
    [InlineData("conditions.ambiant", "ambient")]
    [InlineData("parts.brick.kind", "battery")]
    [InlineData("kit.monitor.part", "monitor")]
    [InlineData("builds.tripod.devices.camera.fed-by", "first-regulator")]
    [InlineData("days.day-one.blocks.evening.states.camra", "camera")]
    [InlineData("days.day-one.blocks.morning.states.camera", "record")]
    public void A_slip_of_the_keyboard_gets_the_word_that_was_meant(string path, string nearest) =>
        Assert.Contains(Problems, problem => problem.Path == path && problem.Nearest == nearest);

    [Theory]
    [InlineData("parts.brick.battery.energy", "Probably \"98 Wh\" was meant")]
    [InlineData("parts.brick.battery.voltage", "write a point: \"14.4 V\"")]
    [InlineData("parts.camera.power.record", "not a unit of power")]
    [InlineData("kit.camera", "stands twice")]
    [InlineData("builds.tripod.regulators.first-regulator.fed-by", "circle")]
    public void A_mistake_of_another_kind_is_named_with_the_way_out(string path, string words) =>
        Assert.Contains(Problems, problem => problem.Path == path && problem.Problem.Contains(words, StringComparison.Ordinal));

    [Fact]
    public void The_exception_carries_the_same_problems()
    {
        var exception = Assert.Throws<ScenarioProblemsException>(() =>
            ScenarioFile.Read(Repository.TestData("ten-mistakes.yaml")));
        Assert.Equal(Problems, exception.Problems);
        Each.HasNot(exception.Problems, problem => problem.At == TextPlace.None);
    }
}
