using RigScenarios.Answers.Exercises;
using RigScenarios.Costs;
using RigScenarios.Parts;
using RigScenarios.Scenarios;

namespace RigScenarios.Tests.Answers.Exercises;

/// <summary>Which solutions count: any that works within the budget, and none that changes what is given.</summary>
public sealed class SolutionTests
{
    [Theory]
    [InlineData("days.firing.blocks.wheel.length", "5 min")]
    [InlineData("days.firing.starts", "10:00")]
    [InlineData("days.firing.blocks.wheel.states.camera", "off")]
    [InlineData("days.firing.blocks.wheel.states.monitor", "standby")]
    [InlineData("conditions.ambient", "25 °C")]
    [InlineData("parts.brick-290wh.battery.energy", "600 Wh")]
    [InlineData("parts.main-cable.buy", "1 EUR")]
    [InlineData("builds.tripod.devices.camera.essential", "no")]
    [InlineData("builds.tripod.devices.camera.power", "{standby: 1 W, record: 1 W}")]
    [InlineData("builds.tripod.devices", "{camera: {fed-by: splitter, outlet: one, cable: camera-cable, essential: yes}}")]
    [InlineData("builds.tripod.stance", "hand")]
    [InlineData("builds.tripod.beside", "[brick]")]
    [InlineData("builds.tripod.on-legs.wind", "1 m/s")]
    [InlineData("builds.tripod.on-legs.foot-radius", "900 mm")]
    [InlineData("builds.tripod.on-head", "{slide-middle: -20 mm, base-depth: 40 mm}")]
    [InlineData("builds.tripod.places.camera.forward", "40 mm")]
    [InlineData("builds.tripod.places.brick.up", "0 mm")]
    [InlineData("builds.tripod.battery.start-temperature", "40 °C")]
    [InlineData("builds.tripod.battery.load-scale", "0.5")]
    [InlineData("kit.camera.part", "monitor-5in")]
    public void What_is_given_stays_given(string path, string value)
    {
        var exercise = Drawing.Of(2);
        // Some of it would not be a sound file at all; then it never gets as far as a check.
        Scenario solution;
        try
        {
            solution = exercise.With([.. Drawing.Key(exercise), (path, value)]);
        }
        catch (ScenarioProblemsException)
        {
            Assert.True(path is "builds.tripod.devices" or "kit.camera.part", path);
            return;
        }
        var check = ExerciseCheck.Of(exercise, solution, TestContext.Current.CancellationToken);
        Assert.False(check.IsSolved);
        Assert.Contains(check.Refused, change => path.StartsWith(change.Path, StringComparison.Ordinal)
            || change.Path.StartsWith(path, StringComparison.Ordinal) || (path.StartsWith("parts.", StringComparison.Ordinal)
                && change.Path.StartsWith("kit.", StringComparison.Ordinal)));
        Each.Of(check.Refused, change => Assert.Contains(ExerciseSentences.Of(check),
            line => line.Contains(change.Why, StringComparison.Ordinal)));
    }

    [Fact]
    public void Nothing_may_be_left_at_home()
    {
        var exercise = Drawing.Of(2);
        var key = exercise.With(Drawing.Key(exercise));
        var build = key.Builds["tripod"];
        var solution = key with { Builds = key.Builds.With("tripod", build with
        {
            Devices = build.Devices.Without("transmitter"), Carries = [.. build.Carries.Where(name => name != "top-handle")],
        }) };
        var paths = ExerciseCheck.Of(exercise, solution, TestContext.Current.CancellationToken).Refused
            .Select(change => change.Path).ToList();
        Assert.Contains("builds.tripod.devices.transmitter", paths);
        Assert.Contains("builds.tripod.carries", paths);
    }

    [Fact]
    public void Another_way_that_works_within_the_budget_is_solved_and_a_dearer_one_is_not()
    {
        // Seed 2 has a worn battery, which is dear to renew.
        var exercise = Drawing.Of(2);
        var worn = Assert.Single(exercise.Causes, cause => cause.Slot == "age of brick");
        var others = exercise.Causes.Where(cause => cause != worn).SelectMany(cause => cause.Repair.Settings)
            .Select(setting => (setting.Path, setting.Value)).ToList();
        ExerciseCheck Try(params (string Path, string Text)[] way) => ExerciseCheck.Of(exercise,
            exercise.With([.. others, .. way]), TestContext.Current.CancellationToken);
        var second = new (string, string)[]
        {
            ("kit.second", "{part: brick-150wh}"),
            ("batteries.first", "{item: brick, capacity-left: 82 %, resistance-growth: 1.5}"),
            ("batteries.second", "{item: second}"), ("swaps.reserve", "15 %"),
        };
        var cheaper = Try(second);
        Assert.True(cheaper.IsSolved, string.Join('\n', ExerciseSentences.Of(cheaper)));
        // The price of a Brick 150 Wh in data/parts.
        Assert.Equal(330m, cheaper.Cost?.Amount);
        var both = Try([.. second, ("batteries.third", "{item: third}"), ("kit.third", "{part: brick-290wh, count: 1}")]);
        Assert.Equal(330m + 610m, both.Cost?.Amount);
        Assert.False(both.IsWithinBudget);
        Assert.False(both.IsSolved);
        Assert.StartsWith("Not solved: it works, but it costs too much.", ExerciseSentences.VerdictOf(both),
            StringComparison.Ordinal);
    }

    // The prices of data/parts for the one day: a Brick 290 Wh at 24 EUR, a Brick 150 Wh at 14 EUR of rent or 330 EUR.
    [Theory]
    [InlineData(Had.Rented, "", 24, 14)]
    [InlineData(Had.Rented, ", had: bought", 24, 330)]
    [InlineData(Had.Owned, "", 610, 330)]
    public void What_is_new_costs_what_the_kit_says_of_how_things_are_had(Had others, string had, int worn, int second)
    {
        var scenario = Drawing.Demo("pottery-class") with { Costs = new CostTerms { OthersAre = others } };
        var exercise = Exercise.Draw(scenario, "tripod", [], 2, cancellation: TestContext.Current.CancellationToken);
        var renewed = Assert.Single(exercise.Causes, cause => cause.Slot == "age of brick");
        Assert.Equal(new Money(worn, "EUR"), renewed.Repair.Price);
        Assert.Equal(worn, ExerciseCheck.Of(exercise, exercise.With(Drawing.Key(exercise)), TestContext.Current.CancellationToken)
            .Cost?.Amount);
        Assert.Equal(others == Had.Rented, ExerciseSentences.Task(exercise)[^1].Contains("its rent", StringComparison.Ordinal));
        var solution = exercise.With([("kit.second", $"{{part: brick-150wh{had}}}"), ("batteries.first", "{item: brick, "
            + "capacity-left: 82 %, resistance-growth: 1.5}"), ("batteries.second", "{item: second}")]);
        var check = ExerciseCheck.Of(exercise, solution, TestContext.Current.CancellationToken);
        Assert.Equal(second, check.Cost?.Amount);
        // What "run" says of the same file, where it is not told that a new thing is owned.
        if (others != Had.Owned)
            Assert.Equal(second, KitCost.Of(solution, ["second"]).Total);
    }

    [Fact]
    public void A_battery_that_is_only_written_younger_is_bought()
    {
        var exercise = Drawing.Of(2);
        var build = exercise.StudentScenario.Builds["tripod"];
        var forgotten = exercise.StudentScenario with { Builds = exercise.StudentScenario.Builds.With("tripod", build with
        {
            Battery = build.Battery with { CapacityLeft = null, ResistanceGrowth = null },
        }) };
        var check = ExerciseCheck.Of(exercise, forgotten, TestContext.Current.CancellationToken);
        Assert.Equal(610m, check.Cost?.Amount);
    }

    [Fact]
    public void Things_of_the_kit_cost_nothing_and_what_has_no_price_is_not_known()
    {
        var free = Drawing.Of(2);
        var taken = ExerciseCheck.Of(free, free.With([("kit.head.part", "head-light")]), TestContext.Current.CancellationToken);
        Assert.Empty(taken.Bought);
        Assert.False(taken.IsCostUnknown);
        var scenario = Drawing.Demo("pottery-class");
        scenario = scenario with { Library = scenario.Library.With("brick-230wh",
            scenario.Library["brick-230wh"] with { Buy = null }) };
        var exercise = Exercise.Draw(scenario, "tripod", [], 2, cancellation: TestContext.Current.CancellationToken);
        var unknown = ExerciseCheck.Of(exercise, exercise.With([.. Drawing.Key(exercise), ("kit.second", "{part: brick-230wh}"),
            ("batteries.first", "{item: brick}"), ("batteries.second", "{item: second}")]),
            TestContext.Current.CancellationToken);
        Assert.True(unknown.IsCostUnknown);
        Assert.Null(unknown.IsWithinBudget);
        Assert.False(unknown.IsSolved);
        Assert.StartsWith("Not known:", ExerciseSentences.VerdictOf(unknown), StringComparison.Ordinal);
        Assert.Contains("at least 610 EUR", ExerciseSentences.Cost(unknown), StringComparison.Ordinal);
    }

    [Fact]
    public void A_solution_for_another_rig_is_told_as_one()
    {
        var exercise = Drawing.Of(2);
        var check = ExerciseCheck.Of(exercise, Drawing.Demo("night-dolly"), TestContext.Current.CancellationToken);
        Assert.Null(check.Answer);
        Assert.False(check.IsSolved);
        Assert.Contains(check.Refused, change => change.Path == "builds.tripod");
    }
}
