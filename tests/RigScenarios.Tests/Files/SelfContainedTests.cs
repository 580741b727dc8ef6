using RigScenarios.Answers;
using RigScenarios.Files;

namespace RigScenarios.Tests.Files;

public sealed class SelfContainedTests
{
    [Theory]
    [InlineData("winter-harbour.yaml")]
    [InlineData("teaching-kit.yaml")]
    public void A_scenario_on_its_own_answers_the_same_from_any_folder(string name)
    {
        var scenario = ScenarioFile.Read(Path.Combine(Repository.Root, "data", "scenarios", name));
        using var folder = new TemporaryFolder();
        var (alone, problems) = ScenarioFile.TryRead(folder.Write("alone.yaml", ScenarioFile.Text(scenario.SelfContained())));
        Assert.Empty(problems);
        var cancellation = TestContext.Current.CancellationToken;
        foreach (var build in scenario.Builds.Keys)
        {
            foreach (var day in scenario.Days.Keys)
            {
                var (there, here) = (RigAnswer.Of(scenario, build, [day], AnswerOptions.EndOnly, cancellation: cancellation),
                    RigAnswer.Of(alone!, build, [day], AnswerOptions.EndOnly, cancellation: cancellation));
                Assert.Equal(there.Reserve.Time.Seconds, here.Reserve.Time.Seconds, 6);
                Assert.Equal(AnswerSentences.Headline(there), AnswerSentences.Headline(here));
            }
        }
    }
}
