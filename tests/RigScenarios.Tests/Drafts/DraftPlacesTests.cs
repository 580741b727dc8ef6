using RigScenarios.Answers;
using RigScenarios.Drafts;
using RigScenarios.Files;
using RigScenarios.Scenarios;
using UnitsNet;

namespace RigScenarios.Tests.Drafts;

/// <summary>Where the things of a draft sit, from the form to the file and back.</summary>
public sealed class DraftPlacesTests
{
    private static readonly Scenario Harbour = Drafting.Scenarios
        .Single(scenario => scenario.Title == "Winter harbour documentary");

    // A rig on rods: the plate slides behind the body.
    private static readonly RigDraft OnRods = Drafting.Small
        .With("lens", new DraftThing { Role = RigRole.Lens, Part = "stills-prime-24" })
        .With("cage", new DraftThing { Role = RigRole.Other, Part = "cage-full" })
        .With("rods", new DraftThing { Role = RigRole.Other, Part = "rods-400-steel" })
        .With("head", new DraftThing { Role = RigRole.Head, Part = "head-middle" })
        .With("legs", new DraftThing { Role = RigRole.Legs, Part = "tripod-middle" });

    [Fact]
    public void A_new_rig_is_balanced_on_usual_places_and_says_so()
    {
        var answer = Drafting.Answer(OnRods);
        Assert.Empty(answer.Problems);
        Assert.NotNull(answer.Answer!.Balance!.Best);
        Assert.NotNull(answer.Answer.Balance.Level);
        Assert.Contains(answer.Assumed, value => value.Field == "places");
        Assert.Equal("plate", answer.BatterySlide);
        Assert.Contains(answer.Moveable, part => part is { Name: "plate", IsUsual: true });
        // Nobody moved anything, so no place is claimed to be known.
        Assert.Empty(answer.Scenario!.Builds["rig"].Places);
    }

    [Fact]
    public void What_was_moved_goes_into_the_file_and_comes_back()
    {
        var slides = Drafting.Answer(OnRods).Moveable.Single(part => part.Name == "plate");
        var to = Length.FromMillimeters(Math.Round(slides.Range.Least.Millimeters + 5));
        var draft = OnRods with { Places = new([new("plate", to)]), SlideMiddle = Length.FromMillimeters(-20) };
        var written = draft.ApplyTo(null, Drafting.Library, "rig", "day");
        var (read, problems) = ScenarioFile.TryReadText(ScenarioFile.Text(written), Path.Combine(Repository.Root, "moved.yaml"));
        Assert.True(read is not null, string.Join(Environment.NewLine, problems));
        Assert.Equal(to.Millimeters, read.Builds["rig"].Places["plate"].Forward!.Value.Millimeters, 6);
        Assert.Equal(-20, read.Builds["rig"].OnHead!.SlideMiddle!.Value.Millimeters, 6);
        var back = RigDraft.Of(read, "rig", "day");
        Assert.Equal(to.Millimeters, back.Places["plate"].Millimeters, 2);
        Assert.Equal(-20, back.SlideMiddle!.Value.Millimeters, 6);
        Assert.Equal((RigRole.Head, RigRole.Legs), (back.Things["head"].Role, back.Things["legs"].Role));
        // Opened and saved again: not a letter of the file changes.
        Assert.Equal(ScenarioFile.Text(read), ScenarioFile.Text(back.ApplyTo(read, Drafting.Library, "rig", "day")));
    }

    [Fact]
    public void The_battery_further_back_moves_the_centre_back()
    {
        var slides = Drafting.Answer(OnRods).Moveable.Single(part => part.Name == "plate");
        double Centre(Length at) =>
            Drafting.Answer(OnRods with { Places = new([new("plate", at)]) }).Answer!.Balance!.Mass.Centre.X.Millimeters;
        Assert.True(Centre(slides.Range.Least) < Centre(slides.Range.Greatest) - 5);
    }

    [Fact]
    public void Beyond_the_end_of_the_mount_it_stands_at_the_end_and_a_warning_says_so()
    {
        var answer =
            Drafting.Answer(
            OnRods with { Places = new([new("plate", Length.FromMillimeters(-2500)), new("gone", Length.Zero)]) });
        var warning = Assert.Single(answer.Problems);
        Assert.Equal((Severity.Warning, "places.plate"), (warning.Severity, warning.Path));
        Assert.Contains("-2500 mm is beyond that", warning.Problem, StringComparison.Ordinal);
        Assert.NotNull(answer.Scenario);
        var slides = answer.Moveable.Single(part => part.Name == "plate");
        Assert.Equal(slides.Range.Least.Millimeters, answer.Scenario.Builds["rig"].Places["plate"].Forward!.Value.Millimeters, 6);
    }

    [Fact]
    public void A_thing_taken_off_takes_its_place_and_those_on_it_along()
    {
        var draft = RigDraft.Of(Harbour, "tripod", "day-one").Without("monitor-arm").Without("long-rods");
        var after = draft.ApplyTo(Harbour, Drafting.Library, "tripod", "day-one").Builds["tripod"];
        Assert.Equal(["cage", "camera", "long-lens", "brick", "transmitter", "top-handle", "camera-power"], after.Places.Keys);
        Assert.NotNull(ScenarioBalance.Of(draft.ApplyTo(Harbour, Drafting.Library, "tripod", "day-one"), "tripod").Best);
    }

    [Fact]
    public void A_thing_that_gets_another_name_keeps_its_place()
    {
        var draft = RigDraft.Of(Harbour, "tripod", "day-one");
        draft = draft.With("camera", draft.Things["camera"] with { Part = "compact-body-a" });
        var places = draft.ApplyTo(Harbour, Drafting.Library, "tripod", "day-one").Builds["tripod"].Places;
        Assert.Equal("cage", places["camera-2"].On);
        Assert.Equal("camera-2", places["long-lens"].On);
        Assert.False(places.ContainsKey("camera"));
    }

    [Fact]
    public void A_head_of_its_own_figures_is_taken_with_what_is_usual_and_says_what_that_was()
    {
        var draft = OnRods.With("head",
            new DraftThing { Role = RigRole.Head, Own = new OwnFigures { Name = "My head", RatedLoad = Mass.FromKilograms(8) } });
        var answer = Drafting.Answer(draft);
        Assert.Empty(answer.Problems);
        var head = answer.Answer!.Balance!.Best!.Head;
        Assert.Equal((2, 8), (head.Drag!.Value.NewtonMeters, head.RatedLoad!.Value.Kilograms));
        // 8 kg * 9.80665 m/s² * 0.1 m = 7.8 N·m.
        Assert.Equal(7.8, answer.Scenario!.Parts["own-head"].Head!.CounterbalanceTo!.Value.NewtonMeters, 9);
        Assert.Contains(answer.Assumed, value => value.Field == "parts.own-head.head.drag");
        var back = RigDraft.Of(answer.Scenario, "rig", "day").Things["head"].Own!;
        Assert.Equal((8.0, null, null), (back.RatedLoad!.Value.Kilograms, back.Drag, back.Counterbalance));
        var measured = Drafting.Answer(draft.With("head",
            draft.Things["head"] with { Own = draft.Things["head"].Own! with { Drag = Torque.FromNewtonMeters(3) } }));
        Assert.Equal(3, measured.Answer!.Balance!.Best!.Head.Drag!.Value.NewtonMeters);
        Each.HasNot(measured.Assumed, value => value.Field == "parts.own-head.head.drag");
    }

    [Fact]
    public void Legs_of_their_own_figures_tip_over_too()
    {
        var answer = Drafting.Answer(OnRods.With("legs",
            new DraftThing { Role = RigRole.Legs, Own = new OwnFigures { FootRadius = Length.FromMillimeters(450) } }));
        Assert.Empty(answer.Problems);
        Assert.NotNull(answer.Answer!.Balance!.Level);
        Assert.Equal(450, answer.Answer.Balance.Supports.Stand!.FootRadius.Millimeters, 9);
    }
}
