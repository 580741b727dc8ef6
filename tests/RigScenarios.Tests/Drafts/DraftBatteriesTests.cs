using RigScenarios.Answers;
using RigScenarios.Builds;
using RigScenarios.Days;
using RigScenarios.Drafts;
using RigScenarios.Files;
using RigScenarios.Parts;
using RigScenarios.Scenarios;
using UnitsNet;

namespace RigScenarios.Tests.Drafts;

/// <summary>Several batteries and a charger in a draft: from the form to the file and back.</summary>
public sealed class DraftBatteriesTests
{
    private static readonly RigDraft Three = Drafting.Small.With("battery",
        new DraftThing { Role = RigRole.Battery, Part = "brick-98wh" }) with
    {
        BatteryCount = 3, ChargerBays = 2, ChargerCurrent = ElectricCurrent.FromAmperes(2.5),
        PowerHours = new ClockRange(new(12, 0), new(14, 0)), SwapAt = Ratio.FromPercent(20),
    };

    [Fact]
    public void Nobody_asked_no_swaps_and_nothing_of_them_in_the_file()
    {
        var answer = Drafting.Answer(Drafting.Small);
        Assert.Single(answer.Answer!.Plan.Batteries);
        Assert.Empty(answer.Scenario!.Batteries);
        Assert.Empty(answer.Scenario.Chargers);
        Assert.Equal(new SwapPolicy(), answer.Scenario.Swaps);
    }

    [Fact]
    public void What_is_said_stands_in_the_file_and_comes_back()
    {
        var answer = Drafting.Answer(Three);
        Assert.Empty(answer.Problems);
        var (read, problems) = ScenarioFile.TryReadText(ScenarioFile.Text(answer.Scenario!), "mine.yaml");
        Assert.Empty(problems);
        Assert.Equal(["battery-1", "battery-2", "battery-3"], read!.Batteries.Keys);
        Assert.Equal(3, read.Kit["battery"].Count);
        Assert.Equal(new DayCharger(ElectricCurrent.FromAmperes(2.5)) { Bays = 2,
            PowerHours = [new ClockRange(new(12, 0), new(14, 0))] }, read.Chargers["charger"]);
        Assert.Equal(20, read.Swaps.Reserve!.Value.Percent, 9);
        var again = RigDraft.Of(read, "rig", "day");
        Assert.Equal((Three.BatteryCount, Three.ChargerBays, Three.PowerHours),
            (again.BatteryCount, again.ChargerBays, again.PowerHours));
        Assert.Equal(ScenarioFile.Text(read), ScenarioFile.Text(again.ApplyTo(read, Drafting.Library, "rig", "day")));
        // The answer is that of the file.
        var ofFile = RigAnswer.Of(read, "rig", ["day"], cancellation: TestContext.Current.CancellationToken);
        Assert.Equal(AnswerSentences.Headline(ofFile), answer.Sentence);
        Assert.Equal(ofFile.Simulation.Swaps, answer.Answer!.Simulation.Swaps);
    }

    [Fact]
    public void More_batteries_lose_less_work_and_one_says_what_is_taken_for_swaps()
    {
        static double Lost(int count) =>
            Drafting.Answer(Three with { BatteryCount = count, ChargerBays = null }).Answer!.Simulation.DownTimes
            .Where(down => !down.IsPlanned).Sum(down => (down.End - down.Start).Seconds);
        Assert.True(Lost(1) > Lost(2));
        Assert.Equal(0, Lost(4));
        var scenario = Drafting.Answer(Drafting.Small with { BatteryCount = 2 }).Scenario!;
        Assert.Equal(Ratio.FromPercent(15), scenario.Swaps.Reserve);
    }

    [Fact]
    public void While_it_rolls_nothing_is_swapped()
    {
        var rolling = Three with { BatteryCount = 4, ChargerBays = null,
            Blocks = new OrderedMap<DayBlock>(Three.Blocks.Select(block => KeyValuePair.Create(block.Key,
            block.Value with { Rolling = block.Value.StateOf("camera") == PowerState.Record }))) };
        var result = Drafting.Answer(rolling).Answer!.Simulation;
        Assert.NotEmpty(result.Swaps);
        // A swap that is not forced falls into no block that rolls.
        Each.Of(result.Swaps.Where(swap => !swap.Forced && swap.Block.Length > 0),
            swap => Assert.False(rolling.Blocks[swap.Block].Rolling));
        Assert.True(Drafting.Answer(rolling).Scenario!.Days["day"].Blocks["early-takes"].Rolling);
        Assert.NotEqual(result.Swaps.Select(swap => swap.Time),
            Drafting.Answer(Three with { BatteryCount = 4, ChargerBays = null }).Answer!.Simulation.Swaps
            .Select(swap => swap.Time));
    }

    [Fact]
    public void Fewer_or_more_than_in_the_file_leave_the_others_as_they_are()
    {
        var before = Drafting.Answer(Three).Scenario!;
        before = before with
        {
            Batteries = before.Batteries.With("battery-1",
                before.Batteries["battery-1"] with { CapacityLeft = Ratio.FromPercent(80) }),
            Chargers = before.Chargers.With("charger", before.Chargers["charger"] with { WallLimit = Power.FromWatts(90) })
                .With("van", new DayCharger(ElectricCurrent.FromAmperes(1))),
        };
        var draft = RigDraft.Of(before, "rig", "day");
        var fewer = (draft with { BatteryCount = 2, ChargerBays = 1 }).ApplyTo(before, Drafting.Library, "rig", "day");
        Assert.Equal(before.Batteries.Take(2), fewer.Batteries);
        Assert.Equal((1, 90.0), (fewer.Chargers["charger"].Bays, (double)fewer.Chargers["charger"].WallLimit!.Value.Watts));
        Assert.Equal(before.Chargers["van"], fewer.Chargers["van"]);
        Assert.Equal(2, fewer.Kit["battery"].Count);
        var more = (draft with { BatteryCount = 5 }).ApplyTo(before, Drafting.Library, "rig", "day");
        Assert.Equal(5, more.Batteries.Count);
        Assert.Equal(before.Batteries, new OrderedMap<BatteryAtStart>(more.Batteries.Take(3)));
        var none = (draft with { BatteryCount = null, ChargerBays = null }).ApplyTo(before, Drafting.Library, "rig", "day");
        Assert.Empty(none.Batteries);
        Assert.Equal(["van"], none.Chargers.Keys);
    }

    [Fact]
    public void Another_battery_on_the_rig_is_another_to_swap()
    {
        var before = Drafting.Answer(Three).Scenario!;
        var draft = RigDraft.Of(before, "rig", "day").Without("battery")
            .With("brick", new DraftThing { Role = RigRole.Battery, Part = "brick-190wh" });
        var after = draft.ApplyTo(before, Drafting.Library, "rig", "day");
        Each.Of(after.Batteries.Values, battery => Assert.Equal("brick", battery.Item));
        Assert.Equal(3, after.Batteries.Count);
        Assert.DoesNotContain("battery", after.Kit.Keys);
        Assert.Equal(3, after.Kit["brick"].Count);
    }
}
