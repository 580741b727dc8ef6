using RigScenarios.Drafts;
using RigScenarios.Drafts.Edits;
using RigScenarios.Files;
using RigScenarios.Files.Formats;
using RigScenarios.Parts;
using RigScenarios.Scenarios;

namespace RigScenarios.Tests.Drafts;

public sealed class RigQuestionsTests
{
    [Fact]
    public void Each_question_offers_parts_of_its_kinds_and_each_kind_has_one_question()
    {
        // A charger is not on the rig.
        Assert.Equal(Enum.GetValues<PartKind>().Where(kind => kind != PartKind.Charger),
            RigQuestions.All.SelectMany(question => question.PartKinds).Order());
        Each.Of(RigQuestions.All.Where(question => question.PartKinds.Count > 0),
            question => Assert.Contains(Drafting.Library.Values, part => question.PartKinds.Contains(part.Kind)));
    }

    [Fact]
    public void Every_example_and_every_choice_is_one_that_the_file_takes()
    {
        foreach (var field in RigFields.All)
        {
            foreach (var text in field.Choices.Select(choice => choice.Text).Append(field.Example)
                .Where(text => text.Length > 0))
                Assert.DoesNotContain(Drafting.Small.Set(field.Key, text).Problems,
                    problem => problem.Path == field.PathIn(Drafting.Small.Frame));
        }
        foreach (var figure in LabelQuestions.All)
        {
            var given = Drafting.Blank.AndOwn(figure.Of[0], (figure.Path, figure.Example));
            Assert.DoesNotContain(given.Problems, problem => problem.Path.EndsWith(figure.Path, StringComparison.Ordinal));
            Assert.EndsWith(figure.Unit, figure.Example, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Every_figure_of_a_label_is_a_field_of_a_part_of_its_kind()
    {
        foreach (var figure in LabelQuestions.All)
        {
            foreach (var question in figure.Of)
            {
                var log = new ReadLog("");
                var part = new Part { Kind = RigQuestions.Find(question)!.OwnKind, Name = "It" };
                Assert.True(PartFormat.Whole.TrySet(part, figure.Path.Split('.'), new TextNode(figure.Example, TextPlace.None),
                    figure.Path, log, out _), $"{question}: {figure.Path}");
            }
        }
        Assert.Equal(LabelQuestions.All.Count, LabelQuestions.All.Select(figure => figure.Key).Distinct().Count());
    }

    [Fact]
    public void The_typical_days_fit_any_rig_and_differ()
    {
        Assert.Equal(5, TypicalDays.All.Count);
        foreach (var day in TypicalDays.All)
        {
            Assert.True(day.Blocks.Count > 6, day.Key);
            Each.Of(day.Blocks.Values,
                block => Assert.True(block.States.Count == 0 || block.States.Keys.Single() == "camera"));
            var answer = Drafting.Answer(Drafting.Small.With(day));
            Assert.Empty(answer.Problems);
            Assert.InRange(answer.Answer!.Plan.Days[0].Length.Hours, 5, 12);
        }
        Assert.Equal(5, TypicalDays.All.Select(day => Drafting.Answer(Drafting.Small.With(day)).Answer!.Reserve.Time)
            .Distinct().Count());
        var night = TypicalDays.All.First(day => day.Key == "night-in-the-cold");
        Assert.True(night.Ambient.DegreesCelsius < 0);
        Assert.True(night.Starts.ToTimeSpan().TotalHours + night.Blocks.Values.Sum(block => block.Length.Hours) > 24);
    }

    [Fact]
    public void A_typical_day_speaks_of_the_camera_by_its_name_in_the_kit()
    {
        var scenario = SmallScenario.Read(SmallScenario.Text());
        var given = Drafting.Open(scenario, "one", "day");
        var camera = RigView.Of(given).Camera!;
        Each.Of(given.With(TypicalDays.All[0]).Day.Blocks.Values.SelectMany(block => block.States.Keys),
            name => Assert.Equal(camera, name));
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
    public void Things_are_named_by_their_question_and_carried_ones_by_their_part()
    {
        var given = Drafting.Blank.And("monitor", "monitor-5in").AndOwn("monitor").And("other", "cage-full").AndOwn("device");
        Assert.Equal([("monitor", "monitor"), ("monitor-2", "monitor"), ("device", "device"), ("cage-full", "other")],
            RigView.Of(given).Things.Select(thing => (thing.Name, thing.Question)));
        Assert.Equal([null, "own-monitor-2", "own-device", null], RigView.Of(given).Things.Select(thing => thing.Own));
        Assert.Throws<ScenarioProblemsException>(() => Adding.Own(given, "moniter"));
    }
}
