using RigScenarios.Answers;
using RigScenarios.Limits;

namespace RigScenarios.Tests.Answers;

/// <summary>What is said of a fuse that carries too much: a camera of 20 W on 10 V draws 2 A through the plate's fuse.</summary>
public sealed class FuseCautionTests
{
    [Theory]
    [InlineData("rating: 1 A", "Fuse, plate: at 2.0 A of 1.0 A rated it opens within 2 minutes, not at once.")]
    [InlineData("rating: 1.4 A", "Fuse, plate: at 2.0 A of 1.4 A rated it opens within an hour, not at once.")]
    [InlineData("rating: 1.8 A",
        "Fuse, plate: at 2.0 A of 1.8 A rated it may carry that for hours, or go in the middle of a take.")]
    [InlineData("rating: 1 A, kind: resettable",
        "Fuse, plate: at 2.0 A of 1.0 A rated it may carry that for hours, or go in the middle of a take.")]
    public void Past_its_rating_the_time_to_open_is_told(string fuse, string caution) =>
        Assert.Contains(caution, AnswerCautions.Of(Answer(fuse)));

    /// <summary>2 A are 80 % of 2.5 A: more than the 75 % for hours, and less than what is printed on it.</summary>
    [Fact]
    public void Between_what_it_carries_for_hours_and_its_rating_it_only_ages()
    {
        var answer = Answer("rating: 2.5 A");

        Assert.True(Assert.Single(answer.Simulation.Limits, limit => limit.Kind == LimitKind.Fuse).IsPassed);
        Assert.DoesNotContain(AnswerCautions.Of(answer), caution => caution.StartsWith("Fuse", StringComparison.Ordinal));
    }

    private static RigAnswer Answer(string fuse) => RigAnswer.Of(SmallScenario.Read(SmallScenario.Text(build: "plate: plate")
        .Replace("plate: {own-draw: 2 W}", $"plate: {{fuse: {{{fuse}}}}}", StringComparison.Ordinal)), "one", ["day"],
        cancellation: TestContext.Current.CancellationToken);
}
