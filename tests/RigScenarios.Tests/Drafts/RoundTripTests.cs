using RigScenarios.Answers;
using RigScenarios.Drafts;
using RigScenarios.Files;
using RigScenarios.Files.Editing;

namespace RigScenarios.Tests.Drafts;

/// <summary>What the form doesn't show must be there afterwards.</summary>
public sealed class RoundTripTests
{
    [Fact]
    public void What_is_given_of_any_demo_scenario_completes_to_the_same_scenario()
    {
        Assert.NotEmpty(Drafting.Pairs);
        foreach (var (scenario, build, day) in Drafting.Pairs)
        {
            var after = Drafting.Open(scenario, build, day).Whole();
            Assert.Equal(ScenarioFile.Text(scenario), ScenarioFile.Text(after));
        }
    }

    [Fact]
    public void What_went_through_the_form_as_text_is_the_same()
    {
        foreach (var given in Drafting.Pairs.Select(pair => Drafting.Open(pair.Scenario, pair.Build, pair.Day))
            .Append(Drafting.Blank).Append(Drafting.Small))
        {
            using var json = System.Text.Json.JsonDocument.Parse(GivenJson.Write(given.Tree).ToJsonString());
            Assert.True(TreeDifference.Same(given.Tree, GivenJson.Read(json.RootElement)));
        }
    }

    [Fact]
    public void A_new_scenario_stands_on_its_own_and_the_file_gives_the_same_answer()
    {
        using var folder = new TemporaryFolder();
        var answer = Drafting.Answer(Drafting.Small);
        Assert.Empty(answer.Problems);
        var file = Path.Combine(folder.Path, "my-rig.yaml");
        ScenarioFile.Write(answer.Scenario!, file);
        var (read, problems) = ScenarioFile.TryRead(file);
        Assert.Empty(problems);
        Assert.Empty(read!.Library);
        Assert.Empty(read.PartsFrom);
        var ofFile = RigAnswer.Of(read, "rig", ["day"], cancellation: TestContext.Current.CancellationToken);
        Assert.Equal(answer.Answer!.Reserve, ofFile.Reserve);
        Assert.Equal(answer.Sentence, AnswerSentences.Headline(ofFile));
        Assert.Equal(ScenarioFile.Text(read), ScenarioFile.Text(Drafting.Open(read).Whole()));
    }
}
