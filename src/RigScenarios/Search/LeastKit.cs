using MathNet.Numerics.Integration;
using RigScenarios.Answers;
using RigScenarios.Batteries;
using RigScenarios.Builds;
using RigScenarios.Days;
using RigScenarios.Parts;
using RigScenarios.Simulation;

namespace RigScenarios.Search;

/// <summary>
/// The least number of batteries, and then of bays, with which the days of a plan complete. No rule of thumb: every smaller
/// choice from the plan's own
/// batteries and bays is run and fails, or holds provably too little energy.
/// </summary>
public static class LeastKit
{
    /// <summary>More batteries than this are not searched: there would be more than a hundred thousand choices.</summary>
    public const int MostBatteries = 16;

    /// <summary>Searches.</summary>
    /// <param name="powered">The build.</param>
    /// <param name="plan">The plan, with all batteries and bays that may be taken.</param>
    /// <param name="wish">What shall be left over.</param>
    /// <param name="progress">Told of each kit; null for nobody.</param>
    /// <param name="cancellation">Stops the search.</param>
    /// <exception cref="ArgumentException">As for <see cref="DaySimulation.Run"/>; or the plan has more than
    /// <see cref="MostBatteries"/> batteries.</exception>
    /// <exception cref="OperationCanceledException">The search was stopped.</exception>
    public static LeastKitResult Find(
        PoweredBuild powered, DayPlan plan, KitWish wish, IProgress<LeastKitProgress>? progress = null,
        CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(powered);
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(wish);
        if (plan.Batteries.Count > MostBatteries)
            throw new ArgumentException($"The plan has {plan.Batteries.Count} batteries; accepted: up to {MostBatteries}.",
                nameof(plan));
        var bound = new EnergyBound(powered, plan);
        var choices = Choices(plan.Batteries);
        var bays = BayChoices(plan.Chargers);
        var tried = new List<KitTrial>();
        foreach (var size in choices.GroupBy(choice => choice.Count).OrderBy(group => group.Key))
        {
            foreach (var bay in bays)
            {
                foreach (var names in size)
                {
                    cancellation.ThrowIfCancellationRequested();
                    // A kit without bays is not charged elsewhere because of that.
                    var kit = plan with
                    {
                        ChargedElsewhere = plan.DaysBeginAsTheFirst,
                        Batteries = new(names.Select(name => KeyValuePair.Create(name, plan.Batteries[name]))),
                        Chargers = new(plan.Chargers.Select(item => KeyValuePair.Create(item.Key,
                            item.Value with { Bays = bay[item.Key] }))),
                    };
                    var result = bound.Refutes(kit) is { } proof
                        ? null : DaySimulation.Run(powered, kit,
                        wish.TimeLeft is null ? SimulationOptions.DaysOnly : SimulationOptions.EndOnly, null, cancellation);
                    var where = result is null ? bound.Refutes(kit)! : WhereItFails(kit, result, wish);
                    var trial = new KitTrial(names, bay, result is not null, where.Length == 0, where);
                    tried.Add(trial);
                    progress?.Report(new LeastKitProgress(tried.Count, (long)choices.Count * bays.Count, trial));
                    if (trial.Survives)
                        return new LeastKitResult(trial, result, tried);
                }
            }
        }
        return new LeastKitResult(null, null, tried);
    }

    private static string WhereItFails(DayPlan plan, SimulationResult result, KitWish wish)
    {
        if (!result.Completes)
            return DayPlanWords.FirstBreak(result, plan);
        if (wish.LeastAtSwap is { } least && result.LeastChargeAtSwap is { } found && found < least)
            return $"a battery comes off with {found.Percent:0.0} % instead of {least.Percent:0.0} %";
        if (wish.TimeLeft is { } time && result.Reserve.Time < time)
        {
            return $"what is left at the end lasts {AnswerTimes.Length(result.Reserve.Time)} instead of "
                + AnswerTimes.Length(time);
        }
        return "";
    }

    // Of batteries that are equal in everything it does not matter which are taken, only where they stand in the list.
    private static List<IReadOnlyList<string>> Choices(OrderedMap<KitBattery> batteries)
    {
        var names = batteries.Keys.ToList();
        var kinds = batteries.Values.Distinct().ToList();
        var seen = new HashSet<string>(StringComparer.Ordinal);
        var choices = new List<IReadOnlyList<string>>();
        for (var bits = 1; bits < 1 << names.Count; bits++)
        {
            var chosen = names.Where((_, i) => (bits >> i & 1) == 1).ToList();
            if (seen.Add(string.Join(' ', chosen.Select(name => kinds.IndexOf(batteries[name])))))
                choices.Add(chosen);
        }
        return choices;
    }

    private static List<OrderedMap<int>> BayChoices(OrderedMap<DayCharger> chargers)
    {
        IEnumerable<IEnumerable<KeyValuePair<string, int>>> all = [[]];
        foreach (var (name, charger) in chargers)
            all = [.. all.SelectMany(_ => Enumerable.Range(0, charger.Bays + 1),
                (before, bays) => before.Append(KeyValuePair.Create(name, bays)))];
        return [.. all.Select(choice => new OrderedMap<int>(choice)).OrderBy(choice => choice.Values.Sum())];
    }

    /// <summary>
    /// An upper bound of what batteries can give against a lower bound of what the essential devices take. It holds only where
    /// nothing is charged, and each
    /// battery that comes off in a swap is spent, so that there are no more swaps than batteries.
    /// </summary>
    private sealed class EnergyBound
    {
        private readonly double leastJoules;
        private readonly double mostWatts;
        private readonly bool holds;

        public EnergyBound(PoweredBuild powered, DayPlan plan)
        {
            holds = plan is { HotSwap: null, Internal.Count: 0, Swaps.AtBlockEnds: false };
            var schedule = new DaySchedule(plan);
            foreach (var stretch in plan.Days.SelectMany((day, i) => DaySchedule.Stretches(day, i, schedule.Days[i].Start)))
            {
                var watts = powered.Devices.Where(device => device.Value.Essential)
                    .Sum(device => (double)device.Value.DrawIn(stretch.StateOf(device.Key)).Watts);
                leastJoules += watts * (stretch.End - stretch.Start);
                mostWatts = Math.Max(mostWatts, watts);
            }
        }

        public string? Refutes(DayPlan kit)
        {
            if (!holds || kit.Chargers.Values.Any(charger => charger.Bays > 0))
                return null;
            var times = kit.DaysBeginAsTheFirst ? kit.Days.Count : 1;
            var most = times * kit.Batteries.Values.Sum(MostJoules);
            var swapSeconds = times * kit.Batteries.Count * (kit.Swaps.SwapTime.Seconds + kit.Swaps.Restart.Seconds);
            var least = leastJoules - (swapSeconds * mostWatts);
            return most < least ? $"the batteries hold {most / 3600:0} Wh at most, the essential devices take "
                + $"{least / 3600:0} Wh at least" : null;
        }

        private static double MostJoules(KitBattery battery)
        {
            var pack = battery.MakePack().Pack;
            var parameters = new PackParameters(pack);
            return parameters.Groups * parameters.ChargePerUnit * pack.UsableCapacity.Points
                .Max(point => point.Fraction.DecimalFractions)
                * GaussLegendreRule.Integrate(parameters.OpenCircuit.At, 0, battery.Charge.DecimalFractions, 64) * 1.001;
        }
    }
}
