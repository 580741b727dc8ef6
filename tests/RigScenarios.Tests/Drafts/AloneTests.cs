using System.Text.Json;
using RigScenarios.Drafts;
using RigScenarios.Parts;

namespace RigScenarios.Tests.Drafts;

/// <summary>A rig that goes anywhere, such as in a link, is the same rig without the file that it was opened from.</summary>
public sealed class AloneTests
{
    [Fact]
    public void The_answer_to_any_demo_is_the_same_without_its_file() => Each.Of(Drafting.Pairs, pair =>
    {
        var given = Drafting.Open(pair.Scenario, pair.Build, pair.Day);
        var (before, after) = (Drafting.Answer(given), Drafting.Answer(Sent(given.Alone())));
        Assert.Empty(after.Problems);
        Assert.Equal(before.Sentence, after.Sentence);
        Assert.Equal(before.Cautions, after.Cautions);
        Assert.Equal(before.Totals.Mass, after.Totals.Mass);
        Assert.Equal(before.Answer!.Questions.Select(question => question.Verdict),
            after.Answer!.Questions.Select(question => question.Verdict));
    });

    [Fact]
    public void Other_builds_and_days_of_the_file_are_in_it() => Each.Of(Drafting.Pairs, pair =>
    {
        var alone = Drafting.Open(pair.Scenario, pair.Build, pair.Day).Alone();
        Assert.Equal(pair.Scenario.Builds.Keys, alone.Scenario.Builds.Keys);
        Assert.Equal(pair.Scenario.Days.Keys, alone.Scenario.Days.Keys);
        Assert.Empty(alone.Scenario.PartsFrom);
    });

    [Fact]
    public void A_part_of_a_parts_file_that_is_not_listed_goes_along_and_a_listed_one_does_not()
    {
        var harbour = Drafting.Pairs.First(pair => pair.Scenario.Title == "Winter harbour documentary");
        var used = harbour.Scenario.Kit["camera"].Part;
        var frame = new RigFrame(harbour.Scenario, new OrderedMap<Part>(Drafting.Library.Where(part => part.Key != used)),
            harbour.Build, harbour.Day);
        Assert.Equal([used], GivenRig.Of(harbour.Scenario, frame).Alone().Scenario.Parts.Keys);
        Assert.Empty(Drafting.Open(harbour.Scenario, harbour.Build, harbour.Day).Alone().Scenario.Parts);
    }

    [Fact]
    public void A_rig_that_is_not_complete_stays_as_it_was_written()
    {
        var given = Drafting.Blank.And("camera", "compact-body-b").Set("charge", "nearly full");
        Assert.Equal(GivenJson.Write(given.Tree).ToJsonString(), GivenJson.Write(given.Alone().Tree).ToJsonString());
    }

    /// <summary>As it arrives.</summary>
    private static GivenRig Sent(GivenRig given)
    {
        using var json = JsonDocument.Parse(GivenJson.Write(given.Tree).ToJsonString());
        return GivenRig.Read(GivenJson.Read(json.RootElement),
            RigFrame.New(Drafting.Library) with { Build = given.Frame.Build, Day = given.Frame.Day });
    }
}
