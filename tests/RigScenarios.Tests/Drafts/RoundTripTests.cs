using CsCheck;
using RigScenarios.Answers;
using RigScenarios.Drafts;
using RigScenarios.Drafts.Edits;
using RigScenarios.Files;
using RigScenarios.Files.Editing;
using RigScenarios.Scenarios;

namespace RigScenarios.Tests.Drafts;

/// <summary>What the form doesn't show must be there afterwards.</summary>
public sealed class RoundTripTests
{
    /// <summary>A rig that is being described, in any order and not yet complete.</summary>
    private static readonly Gen<GivenRig> AnyRig = Gen.Int[0, 100_000].Array[1, 14]
        .Select(steps => steps.Aggregate(Drafting.Blank, Step));

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
    public void What_is_given_of_a_completed_rig_is_what_was_given() => AnyRig.Holds(
        (given, looked) =>
        {
            var answer = Completion.Of(given);
            var back = GivenRig.Read(Opening.Of(answer.Whole, given.Frame), given.Frame);
            looked.One();
            Assert.Equal(Said(given), Said(back));
            // And once more: the same file.
            Assert.Equal(ScenarioFile.Text(answer.Whole), ScenarioFile.Text(Completion.Of(back).Whole));
        },
        cases: 150, atLeast: 150);

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

    /// <summary>One thing that somebody does to a rig; what can't be done leaves it as it is.</summary>
    private static GivenRig Step(GivenRig given, int drawn)
    {
        var (kind, which) = (drawn % 12, drawn / 12);
        var question = RigQuestions.All[which % RigQuestions.All.Count];
        var things = RigView.Of(given).Things;
        var thing = things.Count == 0 ? null : things[which % things.Count];
        var listed = Drafting.Library.Where(part => question.PartKinds.Contains(part.Value.Kind)).ToList();
        try
        {
            return kind switch
            {
                0 or 1 or 2 => listed.Count == 0 ? given.AndOwn(question.Key)
                    : given.And(question.Key, listed[which % listed.Count].Key),
                3 => given.AndOwn(question.Key),
                4 or 5 or 6 => things.Where(one => one.Own is not null).Aggregate(given, (now, one) => Figure(now, one, which)),
                7 => given.Batteries(1 + (which % 4)),
                8 => given.Charger($"{1 + (which % 3)}"),
                9 => Fields[which % Fields.Length] is var field ? given.Set(field.Key, field.Text) : given,
                10 when thing is not null => (which % 3) switch
                {
                    0 => given.Without(thing.Name),
                    1 => given.Feed(thing.Name, which % 2 == 0 ? "battery" : ""),
                    _ => given.Cable(thing.Name, "2 m", "AWG 18"),
                },
                _ => Supplying.Journey(given, which % 2 == 0 ? "flight" : "", "2").Given,
            };
        }
        catch (ScenarioProblemsException)
        {
            return given;
        }
    }

    private static readonly (string Key, string Text)[] Fields = [("capacity-left", "80 %"), ("charge", "90 %"),
        ("ambient", "-5 °C"), ("slide-middle", "20 mm"), ("swap-at", "20 %"), ("charger-current", "2 A"),
        ("charger-stands", "in a heated vehicle"), ("stance", "shoulder"), ("age-bought", "2023-03"), ("age-kept", "60 %"),
        ("age-place", "hot van"), ("age-emptied", "mostly"), ("age-second-hand", "yes"), ("age-until", "2026-11-30")];

    private static GivenRig Figure(GivenRig given, ThingInView thing, int which)
    {
        var figures = LabelQuestions.Of(thing.Question).ToList();
        var figure = figures[which % figures.Count];
        return given.With($"parts.{thing.Own}.{figure.Path}", figure.Example);
    }

    /// <summary>What it says, whatever its spelling and the order of its fields.</summary>
    private static string Said(GivenRig given) => GivenJson.Write(ScenarioFormat.Whole.Write(given.Scenario)).ToJsonString();
}
