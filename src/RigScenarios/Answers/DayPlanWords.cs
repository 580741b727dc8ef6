using RigScenarios.Days;
using RigScenarios.Limits;
using RigScenarios.Simulation;
using UnitsNet;

namespace RigScenarios.Answers;

/// <summary>Says in plain words how the days of a plan went.</summary>
public static class DayPlanWords
{
    /// <summary>A time from midnight of the first day as people say it: <c>14:05</c>, with several days <c>day 2, 14:05</c>.</summary>
    public static string Clock(Duration time, int days)
    {
        var minutes = (long)Math.Floor((time.Seconds / 60) + 1e-6);
        var clock = $"{minutes / 60 % 24:00}:{minutes % 60:00}";
        return days > 1 ? $"day {(minutes / 1440) + 1}, {clock}" : clock;
    }

    /// <summary>The answer in one or two sentences: do the days complete, and what is left.</summary>
    public static string Answer(SimulationResult result, DayPlan plan)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(plan);
        var with = result.Batteries.Count == 1 ? "one battery" : $"{result.Batteries.Count} batteries";
        if (!result.Completes)
        {
            var lost = result.DownTimes.Where(down => !down.IsPlanned).GroupBy(down => down.Device)
                .Max(group => group.Sum(down => (down.End - down.Start).Seconds));
            return $"{(result.Days.Count == 1 ? "The day" : $"The {result.Days.Count} days")} cannot be completed with {with}: {FirstBreak(result, plan)}. In all, {AnswerTimes.Length(Duration.FromSeconds(lost))} of work are lost.";
        }
        var swaps = result.Swaps.Count switch { 0 => "no swap", 1 => "one swap", var count => $"{count} swaps" };
        var least = result.LeastChargeAtSwap is { } charge ? $", the emptiest battery coming off with {charge.Percent:0} %" : "";
        return $"{(result.Days.Count == 1 ? "The day completes" : $"All {result.Days.Count} days complete")} with {with}: {swaps}{least}. What is left at the end lasts {AnswerTimes.Length(result.Reserve.Time)} more.";
    }

    /// <summary>Where the days break first, as a clause; empty if they complete.</summary>
    public static string FirstBreak(SimulationResult result, DayPlan plan)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(plan);
        var first = result.DownTimes.FirstOrDefault(down => !down.IsPlanned);
        if (first is null)
            return "";
        return $"{Clock(first.Start, result.Days.Count)}, in {Moment(first, result, plan)}, {result.Devices[first.Device].Title} stops ({first.Reason})";
    }

    /// <summary>The block in which a device went down, and the take if the camera rolled: <c>take 4 of "Boats leaving"</c>.</summary>
    public static string Moment(DownTime down, SimulationResult result, DayPlan plan)
    {
        ArgumentNullException.ThrowIfNull(down);
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(plan);
        var begin = result.Days[down.Day - 1].Start.Seconds;
        foreach (var (name, block) in plan.Days[down.Day - 1].Blocks)
        {
            if (name == down.Block)
            {
                // A drop-out at the last moment of a take belongs to it.
                var take = block.Cycle is { } cycle ? (int)Math.Floor((down.Start.Seconds - begin - 1e-6) / (cycle.Take.Seconds + cycle.Reset.Seconds)) + 1 : 0;
                return !down.InTake ? $"\"{block.Title ?? name}\""
                    : take > 0 ? $"take {take} of \"{block.Title ?? name}\"" : $"\"{block.Title ?? name}\" while the camera rolls";
            }
            begin += block.Length.Seconds;
        }
        return $"\"{down.Block}\"";
    }

    /// <summary>The least kit in a sentence or two.</summary>
    /// <param name="least">What the search found.</param>
    /// <param name="wish">What was to be left over.</param>
    public static string Least(LeastKitResult least, KitWish wish)
    {
        ArgumentNullException.ThrowIfNull(least);
        ArgumentNullException.ThrowIfNull(wish);
        List<string> wishes = [];
        if (wish.LeastAtSwap is { } charge)
            wishes.Add($"each battery coming off with {charge.Percent:0.#} % or more");
        if (wish.TimeLeft is { } time)
            wishes.Add($"{AnswerTimes.Length(time)} left at the end");
        var wanted = wishes.Count > 0 ? $", {string.Join(" and ", wishes)}" : "";
        if (least.Least is not { } kit)
            return $"No kit from these batteries and bays completes the days{wanted}: {(least.Tried.Count == 1 ? "the only one fails" : $"all {least.Tried.Count} fail")}.";
        var smaller = least.Tried.Count - 1;
        var proof = smaller switch { 0 => "There is no smaller one.", 1 => "The one smaller kit was tried and fails.", _ => $"The {smaller} kits tried before it, smaller or of the same size, all fail." };
        var bays = kit.BayCount switch { 0 => "no charger", 1 => "one bay", var count => $"{count} bays" };
        var batteries = kit.Batteries.Count == 1 ? "One battery" : $"{kit.Batteries.Count} batteries";
        return $"{batteries} ({string.Join(", ", kit.Batteries)}) and {bays} complete the days{wanted}. {proof}";
    }

    /// <summary>What keeps a device down, in words: "planned swap", "drop-out", "nothing left", "waiting for charge".</summary>
    public static string CauseInWords(StopReason reason, StopKind? awaits)
    {
        ArgumentNullException.ThrowIfNull(reason);
        return awaits is { } kind ? new StopReason(kind).ToString() : reason.Kind is StopKind.PlannedSwap or StopKind.NothingLeft or StopKind.WaitingForCharge ? reason.ToString() : "drop-out";
    }

    /// <summary>How far off the times may be: the least that goes with any answer.</summary>
    public static string Prediction(SimulationResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        return $"Predicted, not measured: expect how long a battery lasts {PredictionWords.Of(result.ExpectedError)}. Carry a reserve.";
    }

    /// <summary>The cautions that go with a plan and its answer.</summary>
    public static IReadOnlyList<string> Cautions(SimulationResult result, DayPlan plan)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(plan);
        var cautions = new List<string>
        {
            Prediction(result),
        };
        if (plan.Chargers.Values.Any(charger => charger.Bays > 0))
        {
            cautions.Add("Charging: the makers' limits of battery and charger for current, voltage and temperature go before these figures. Never charge lithium batteries unattended or overnight on the word of this plan alone, nor near anything that burns, nor one that is swollen, damaged or wet.");
            cautions.Add("A charge below 0 °C can damage a lithium battery and make it dangerous later; the plan waits for the charger's lower temperature, you must too.");
        }
        foreach (var (name, battery) in plan.Batteries.Where(item => item.Value.MaximumChargeCurrent is null))
        {
            var rate = plan.Chargers.Values.Where(charger => charger.Bays > 0).Select(charger => charger.Current.Amperes).DefaultIfEmpty(0).Max()
                / (battery.Part.Battery!.Capacity?.AmpereHours ?? (battery.Part.Battery.Energy.WattHours / battery.Part.Battery.Voltage.Volts));
            if (rate > 0.7)
                cautions.Add($"{name} would be charged in little more than an hour ({rate:0.0} times its capacity in an hour), and what its maker allows is not given: look it up.");
        }
        if (plan.Batteries.Values.Any(battery => battery.CapacityLeft is null && battery.ResistanceGrowth is null))
            cautions.Add("The age of some batteries is not given, so they are taken as new. A worn battery holds less: measure it and set what is left.");
        cautions.Add("Lithium batteries can burn. Follow the makers' instructions and local rules.");
        return cautions;
    }
}
