using RigScenarios.Drafts;
using RigScenarios.Files.Formats;
using RigScenarios.Parts;
using RigScenarios.Scenarios;

namespace RigScenarios.Tests.Drafts;

public sealed class RigQuestionsTests
{
    [Fact]
    public void There_is_one_question_for_each_role_and_it_offers_parts()
    {
        Assert.Equal(Enum.GetValues<RigRole>(), RigQuestions.Things.Select(question => question.Role!.Value).Order());
        Each.Of(Enum.GetValues<RigRole>(), role => Assert.Equal(role, RigQuestions.For(role).Role));
        // A charger is not on the rig.
        Assert.Equal(Enum.GetValues<PartKind>().Where(kind => kind != PartKind.Charger),
            RigQuestions.Things.SelectMany(question => question.PartKinds).Order());
        Each.Of(RigQuestions.Things, question => Assert.Contains(Drafting.Library.Values,
            part => question.PartKinds.Contains(part.Kind)));
    }

    [Fact]
    public void Every_example_is_one_that_the_form_takes()
    {
        foreach (var question in RigQuestions.Circumstances.Where(question => question.Example.Length > 0))
            Assert.Empty(RigDraftFormat.TryRead(Map((question.Key, new TextNode(question.Example, TextPlace.None)))).Problems);
        foreach (var question in RigQuestions.Label)
        {
            var own = Map((question.Key, new TextNode(question.Example, TextPlace.None)));
            Assert.Empty(RigDraftFormat.TryRead(Map(("things",
                Map(("it", Map(("role", new TextNode("monitor", TextPlace.None)), ("own", own))))))).Problems);
        }
    }

    [Fact]
    public void The_typical_days_fit_any_rig_and_differ()
    {
        Assert.Equal(3, TypicalDays.All.Count);
        foreach (var day in TypicalDays.All)
        {
            Assert.True(day.Blocks.Count > 6, day.Key);
            Each.Of(day.Blocks.Values,
                block => Assert.True(block.States.Count == 0 || block.States.Keys.Single() == "camera"));
            var answer = Drafting.Answer(Drafting.Small.With(day));
            Assert.Empty(answer.Problems);
            Assert.InRange(answer.Answer!.Plan.Days[0].Length.Hours, 5, 12);
        }
        Assert.Equal(3, TypicalDays.All.Select(day => Drafting.Answer(Drafting.Small.With(day)).Answer!.Reserve.Time)
            .Distinct().Count());
    }

    [Fact]
    public void Every_part_has_words_for_a_list()
    {
        foreach (var (id, part) in Drafting.Library)
            Assert.True(PartInWords.Of(part) is { Mass.Length: > 0, Price.Length: > 0 }, id);
        Assert.Equal("820 g · 13 W standby, 21 W record · 3600 EUR, 95 EUR a day · 6.8 to 8.6 V",
            PartInWords.Of(Drafting.Library["compact-body-b"]).ToString());
        Assert.Equal("1110 g · 410 EUR, 17 EUR a day · 190 Wh, 14.4 V, 12 A",
            PartInWords.Of(Drafting.Library["brick-190wh"]).ToString());
    }

    [Fact]
    public void Things_are_named_by_their_role_and_carried_ones_by_their_part()
    {
        var draft = new RigDraft().With(new DraftThing { Role = RigRole.Monitor }).With(new DraftThing { Role = RigRole.Monitor })
            .With(new DraftThing { Role = RigRole.Other, Part = "cage-full" });
        Assert.Equal(["monitor", "monitor-2", "cage-full"], draft.Things.Keys);
    }

    private static MapNode Map(params (string Key, FileNode Value)[] entries) =>
        new([.. entries.Select(entry => new MapEntry(entry.Key, TextPlace.None, entry.Value))], TextPlace.None);
}
