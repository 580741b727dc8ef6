using CsCheck;
using RigScenarios.Answers;
using RigScenarios.Drafts;
using RigScenarios.Files;

namespace RigScenarios.Tests.Drafts;

/// <summary>What the form doesn't show must be there afterwards.</summary>
public sealed class RoundTripTests
{
    [Fact]
    public void A_draft_of_any_demo_scenario_put_back_gives_the_same_scenario()
    {
        Assert.NotEmpty(Drafting.Pairs);
        foreach (var (scenario, build, day) in Drafting.Pairs)
        {
            var after = RigDraft.Of(scenario, build, day).ApplyTo(scenario, Drafting.Library, build, day);
            Assert.Equal(ScenarioFile.Text(scenario), ScenarioFile.Text(after));
            Assert.Equal(scenario, after);
        }
    }

    [Fact]
    public void A_draft_that_went_through_the_form_as_text_is_the_same()
    {
        foreach (var draft in Drafting.Pairs.Select(pair => RigDraft.Of(pair.Scenario, pair.Build, pair.Day))
            .Append(RigDraft.Blank).Append(Drafting.Small))
        {
            var (again, problems) = RigDraftFormat.TryRead(RigDraftFormat.Write(draft));
            Assert.Empty(problems);
            Assert.Equal(draft, again);
            using var json = System.Text.Json.JsonDocument.Parse(RigDraftFormat.WriteJson(draft).ToJsonString());
            Assert.Equal(draft, RigDraftFormat.TryRead(json.RootElement).Draft);
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
        var after = RigDraft.Of(read, "rig", "day").ApplyTo(read, Drafting.Library, "rig", "day");
        Assert.Equal(ScenarioFile.Text(read), ScenarioFile.Text(after));
    }
}
