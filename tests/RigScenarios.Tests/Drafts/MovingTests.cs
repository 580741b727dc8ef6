using RigScenarios.Answers;
using RigScenarios.Drafts;
using RigScenarios.Drafts.Edits;
using RigScenarios.Files;
using RigScenarios.Scenarios;

namespace RigScenarios.Tests.Drafts;

/// <summary>Where the things of a rig sit, from the form to the file and back.</summary>
public sealed class MovingTests
{
    private static readonly Scenario Harbour = Drafting.Scenarios
        .Single(scenario => scenario.Title == "Winter harbour documentary");

    // A rig on rods: the plate slides behind the body.
    private static readonly GivenRig OnRods = Drafting.Small.And("lens", "stills-prime-24").And("other", "cage-full")
        .And("other", "rods-400-steel").And("head", "head-middle").And("legs", "tripod-middle");

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
        var to = Math.Round(slides.Range.Least.Millimeters + 5);
        var written = OnRods.Move("plate", to).Set("slide-middle", "-20 mm").Whole();
        var (read, problems) = ScenarioFile.TryReadText(ScenarioFile.Text(written), Path.Combine(Repository.Root, "moved.yaml"));
        Assert.True(read is not null, string.Join(Environment.NewLine, problems));
        Assert.Equal(to, read.Builds["rig"].Places["plate"].Forward!.Value.Millimeters, 6);
        Assert.Equal(-20, read.Builds["rig"].OnHead!.SlideMiddle!.Value.Millimeters, 6);
        var back = Drafting.Open(read);
        Assert.Equal(to, Drafting.Answer(back).Moveable.Single(part => part.Name == "plate").At.Millimeters, 2);
        Assert.Equal(["head", "legs"], RigView.Of(back).Things.Select(thing => thing.Question)
            .Where(question => question is "head" or "legs"));
        // Opened and saved again: not a letter of the file changes.
        Assert.Equal(ScenarioFile.Text(read), ScenarioFile.Text(back.Whole()));
    }

    [Fact]
    public void The_battery_further_back_moves_the_centre_back()
    {
        var slides = Drafting.Answer(OnRods).Moveable.Single(part => part.Name == "plate");
        double Centre(double at) =>
            Drafting.Answer(OnRods.Move("plate", at)).Answer!.Balance!.Mass.Centre.X.Millimeters;
        Assert.True(Centre(slides.Range.Least.Millimeters) < Centre(slides.Range.Greatest.Millimeters) - 5);
    }

    [Fact]
    public void Beyond_the_end_of_the_mount_it_stands_at_the_end()
    {
        var answer = Drafting.Answer(OnRods.Move("plate", -2500));
        Assert.Empty(answer.Problems);
        Assert.NotNull(answer.Scenario);
        var slides = answer.Moveable.Single(part => part.Name == "plate");
        Assert.Equal(slides.Range.Least.Millimeters, answer.Scenario.Builds["rig"].Places["plate"].Forward!.Value.Millimeters, 6);
        var refused = Assert.Throws<ScenarioProblemsException>(() => Moving.To(OnRods, "camera", "3 mm"));
        Assert.Contains("does not slide", refused.Problems.Single().Problem, StringComparison.Ordinal);
        Assert.Throws<ScenarioProblemsException>(() => Moving.To(OnRods, "plate", "far"));
    }

    [Fact]
    public void A_thing_taken_off_takes_its_place_and_those_on_it_along()
    {
        var after = Drafting.Open(Harbour, "tripod", "day-one").Without("monitor-arm").Without("long-rods").Whole();
        Assert.Equal(["cage", "camera", "long-lens", "brick", "transmitter", "top-handle", "camera-power"],
            after.Builds["tripod"].Places.Keys);
        Assert.NotNull(ScenarioBalance.Of(after, "tripod").Best);
    }

    [Fact]
    public void A_thing_that_gets_another_name_keeps_its_place()
    {
        var places = Drafting.Open(Harbour, "tripod", "day-one").Choose("camera", "compact-body-a").Whole()
            .Builds["tripod"].Places;
        Assert.Equal("cage", places["camera-2"].On);
        Assert.Equal("camera-2", places["long-lens"].On);
        Assert.False(places.ContainsKey("camera"));
    }

    [Fact]
    public void A_head_of_its_own_figures_is_taken_with_what_is_usual_and_says_what_that_was()
    {
        var given = OnRods.Without("head").AndOwn("head", ("rated-load", "8 kg"));
        var answer = Drafting.Answer(given);
        Assert.Empty(answer.Problems);
        var head = answer.Answer!.Balance!.Best!.Head;
        Assert.Equal((2, 8), (head.Drag!.Value.NewtonMeters, head.RatedLoad!.Value.Kilograms));
        // 8 kg * 9.80665 m/s² * 0.1 m = 7.8 N·m.
        Assert.Equal(7.8, answer.Scenario!.Parts["own-head"].Head!.CounterbalanceTo!.Value.NewtonMeters, 9);
        Assert.Contains(answer.Assumed, value => value.Field == "parts.own-head.head.drag");
        var back = Drafting.Open(answer.Scenario);
        Assert.Equal(("8 kg", null, null), (back.TextAt("parts.own-head.rated-load"), back.TextAt("parts.own-head.head.drag"),
            back.TextAt("parts.own-head.head.counterbalance-to")));
        var measured = Drafting.Answer(given.With("parts.own-head.head.drag", "3 N·m"));
        Assert.Equal(3, measured.Answer!.Balance!.Best!.Head.Drag!.Value.NewtonMeters);
        Each.HasNot(measured.Assumed, value => value.Field == "parts.own-head.head.drag");
    }

    [Fact]
    public void Legs_of_their_own_figures_tip_over_too()
    {
        var answer = Drafting.Answer(OnRods.Without("legs").AndOwn("legs", ("legs.foot-radius", "450 mm")));
        Assert.Empty(answer.Problems);
        Assert.NotNull(answer.Answer!.Balance!.Level);
        Assert.Equal(450, answer.Answer.Balance.Supports.Stand!.FootRadius.Millimeters, 9);
    }
}
