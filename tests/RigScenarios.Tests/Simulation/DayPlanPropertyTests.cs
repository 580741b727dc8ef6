using RigScenarios.Answers;
using RigScenarios.Days;
using RigScenarios.Limits;
using RigScenarios.Parts;
using RigScenarios.Simulation;
using UnitsNet;

namespace RigScenarios.Tests.Simulation;

/// <summary>What holds for any plan, on plans drawn at random from a seed.</summary>
public sealed class DayPlanPropertyTests
{
    // Its charge is plain current times time, at any temperature.
    private static readonly Part Plain = Plans.Brick98 with
    {
        Battery =
            Plans.Brick98.Battery! with { UsableCapacity = [new UsableCapacityPoint(Plans.Celsius(25), Ratio.FromPercent(100))] },
    };

    private static readonly double Coulombs = 3600 * 98 / 14.4;

    private const int Cases = 12;

    [Fact]
    public void Charge_is_conserved_battery_by_battery()
    {
        var (used, charged, rested) = (new LookedAt(), new LookedAt(), new LookedAt());
        Drawn.Cases(firstSeed: 1, Cases, random =>
        {
            var plan = Draw(random, Plain);
            var charger = plan.Chargers["charger"];

            // A battery that waits its turn may be in a bay or before it: there both are one place.
            if (charger.Order == BayOrder.InTurn)
            {
                plan = plan with
                {
                    Batteries = new(plan.Batteries.Select(item => KeyValuePair.Create(item.Key,
                        item.Value with { Rests = new RestingPlace(charger.Ambient) }))),
                };
            }

            var result = plan.Run(random.Next(2) == 0 ? Plans.CabledRig : Plans.Rig);
            foreach (var (name, battery) in result.Batteries)
            {
                var aged = Coulombs * (plan.Batteries[name].CapacityLeft?.DecimalFractions ?? 1);
                // Worked out apart from the library; what the result says of it is held against it, and not taken from it.
                var lost = RestLoss.Of(plan, plan.Batteries[name], battery);
                var expected = plan.Batteries[name].Charge.DecimalFractions - (battery.ChargeOut.Coulombs / aged)
                    + (0.998 * battery.ChargeIn.Coulombs / aged) - lost;
                Assert.Equal(expected, battery.ChargeLeft.DecimalFractions, 1e-5);
                Assert.Equal(lost, battery.SelfDischarge.DecimalFractions, 1e-5);
                Count(used, battery.ChargeOut.Coulombs > 0);
                Count(charged, battery.ChargeIn.Coulombs > 0);
                Count(rested, lost > 1e-4);
            }
        });
        Each.Of([used, charged, rested], seen => seen.AtLeast(Seeds.Wanted is null ? 6 : 0));
    }

    [Fact]
    public void Energy_in_is_energy_out_and_losses_and_what_is_stored()
    {
        var (used, charged) = (new LookedAt(), new LookedAt());
        Drawn.Cases(firstSeed: 1, Cases, random =>
        {
            var result = Draw(random, Plans.Brick98).Run();
            foreach (var battery in result.Batteries.Values)
            {
                var moved = battery.Charged.Joules + battery.Delivered.Joules + 1;
                Assert.Equal(0, (battery.Charged - battery.Delivered - battery.Heat - battery.Stored).Joules / moved, 1e-5);
                Assert.True(battery.FromWall >= battery.Charged);
                Count(used, battery.Delivered.Joules > 0);
                Count(charged, battery.Charged.Joules > 0);
            }
            Assert.Equal(result.FromPacks.Joules, result.Batteries.Values.Sum(battery => battery.Delivered.Joules), 1e-3);
        });
        Each.Of([used, charged], seen => seen.AtLeast(Seeds.Wanted is null ? 6 : 0));
    }

    [Fact]
    public void Each_battery_is_at_one_place_at_a_time_and_one_is_on_the_rig()
    {
        var (moves, bays) = (new LookedAt(), new LookedAt());
        Drawn.Cases(firstSeed: 1, Cases, random =>
        {
            var plan = Draw(random, Plans.Brick98);
            var result = plan.Run();
            var (start, end) = (result.Days[0].Start.Seconds, result.Days[^1].End.Seconds);
            foreach (var battery in result.Batteries.Values)
            {
                Assert.Equal(start, battery.Spans[0].Start.Seconds, 1e-6);
                Assert.Equal(end, battery.Spans[^1].End.Seconds, 1e-6);
                Each.Step(battery.Spans, (one, next) =>
                {
                    Assert.Equal((one.End, one.ChargeAtEnd), (next.Start, next.ChargeAtStart));
                    moves.One();
                }, atLeast: 0);
            }
            Alone(result, BatteryPlace.OnRig, 1, atLeast: 1);
            var charging = Alone(result, BatteryPlace.Charging, plan.Chargers.Values.Sum(charger => charger.Bays), atLeast: 0);
            Count(bays, charging > 1);
        });
        moves.AtLeast(Seeds.Wanted is null ? 40 : 0);
        bays.AtLeast(Seeds.Wanted is null ? 4 : 0);
    }

    // How many were looked at.
    private static int Alone(SimulationResult result, BatteryPlace place, int most, int atLeast)
    {
        var spans = result.Batteries.Values.SelectMany(battery => battery.Spans).Where(span => span.Place == place).ToList();
        Each.Of(spans,
            span => Assert.True(spans.Count(other => other.Start <= span.Start && other.End > span.Start) <= most,
            $"{place} at {span.Start.Hours}"), atLeast);
        return spans.Count;
    }

    private static void Count(LookedAt seen, bool isSo)
    {
        if (isSo)
            seen.One();
    }

    [Fact]
    public void More_batteries_bays_or_capacity_break_no_day_that_completes()
    {
        var broken = Breaks(new Random(20), plans: 120, lowestWarning: 12.6, out var completed);
        Assert.True(completed >= 30, $"only {completed} of the plans complete");
        Assert.True(broken.Count == 0, string.Join("\n\n", broken.Select(one => DayPlanWords.FirstBreak(one.Result, one.Plan))));
    }

    /// <summary>
    /// What the rule above does not cover, told in docs/days.md: a warning so close to what the camera needs that the charge
    /// between does not last a take.
    /// More charge then moves the warning from a reset into a take, and the rig stops before the take is over.
    /// </summary>
    [Fact]
    public void A_warning_too_close_to_the_drop_out_does_break_days_but_only_in_a_take()
    {
        var broken = Breaks(new Random(20), plans: 60, lowestWarning: 11.6, out _);
        Assert.NotEmpty(broken);
        Each.Of(broken, one => Assert.True(
            one.Result.DownTimes.First(down => !down.IsPlanned) is { Reason.Kind: StopKind.ShortOfVoltage, InTake: true }));
    }

    private static List<(DayPlan Plan, SimulationResult Result)> Breaks(Random random, int plans, double lowestWarning,
        out int completed)
    {
        var broken = new List<(DayPlan, SimulationResult)>();
        completed = 0;
        for (var i = 0; i < plans; i++)
        {
            var plan = Draw(random, Plans.Brick98, lowestWarning);
            if (!plan.Run().Completes)
                continue;
            completed++;
            var battery = plan with { Batteries = plan.Batteries.With("more", new KitBattery(Plans.Brick98)) };
            var bay =
                plan with { Chargers = new(plan.Chargers.Select(item => KeyValuePair.Create(item.Key,
                item.Value with { Bays = item.Value.Bays + 1 }))) };
            var capacity = plan with
            {
                Batteries =
                    new(plan.Batteries.Select(item => KeyValuePair.Create(item.Key,
                    item.Value with { CapacityLeft = Ratio.FromDecimalFractions(Math.Min(1,
                    item.Value.CapacityLeft!.Value.DecimalFractions * 1.05)) }))),
            };
            broken.AddRange(new[] { battery, bay, capacity }.Select(more => (more, more.Run()))
                .Where(one => !one.Item2.Completes));
        }
        return broken;
    }

    private static DayPlan Draw(Random random, Part part, double lowestWarning = 12.6)
    {
        double Between(double low, double high) => low + (random.NextDouble() * (high - low));
        var batteries = Enumerable.Range(0, random.Next(1, 5)).Select(_ => new KitBattery(part)
        {
            Charge = Ratio.FromDecimalFractions(random.Next(3) == 0 ? Between(0.3, 1) : 1),
            CapacityLeft = Ratio.FromDecimalFractions(Between(0.75, 1)),
            ResistanceGrowth = Between(1, 1.6),
            Rests = random.Next(2) == 0 ? RestingPlace.Open : new RestingPlace(Plans.Celsius(22), 0.7),
        }).ToArray();
        return new DayPlan
        {
            ChargedElsewhere = false,
            Days = [.. Enumerable.Range(0, random.Next(1, 3)).Select(_ => Plans.Takes(Between(2, 8)) with
            {
                AmbientPoints = [new(new TimeOnly(8, 30), Plans.Celsius(Between(-8, 15))),
                    new(new TimeOnly(13, 0), Plans.Celsius(Between(5, 30)))],
            })],
            Batteries = Plans.Kit(batteries),
            Chargers = Plans.One(new DayCharger(ElectricCurrent.FromAmperes(Between(1.5, 4)))
            {
                Bays = random.Next(0, 3),
                Order = random.Next(2) == 0 ? BayOrder.Shared : BayOrder.InTurn,
                WallLimit = random.Next(2) == 0 ? Plans.Watts(Between(30, 90)) : null,
                PowerHours = random.Next(2) == 0 ? [] : [new(new TimeOnly(12, 0), new TimeOnly(13, 30)),
                    new(new TimeOnly(20, 0), new TimeOnly(6, 0))],
                Ambient = random.Next(2) == 0 ? null : Plans.Celsius(20),
            }),
            Swaps = new SwapPolicy { WarningVoltage = Plans.Volts(Between(lowestWarning, lowestWarning + 0.8)) },
        };
    }
}
