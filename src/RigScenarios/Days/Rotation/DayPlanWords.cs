using UnitsNet;

namespace RigScenarios.Days.Rotation;

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
    public static string Answer(DayPlanResult result, DayPlan plan)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(plan);
        var what = result.Days.Count == 1 ? "The day" : $"All {result.Days.Count} days";
        var with = result.Batteries.Count == 1 ? "one battery" : $"{result.Batteries.Count} batteries";
        if (!result.Completes)
        {
            var lost = result.DownTimes.Where(down => down.Cause != DownCause.PlannedSwap).GroupBy(down => down.Device)
                .Max(group => group.Sum(down => (down.End - down.Start).Seconds));
            return $"{what} cannot be completed with {with}: {FirstBreak(result, plan)}. In all, {DayWords.Length(Duration.FromSeconds(lost))} of work are lost.";
        }
        var swaps = result.Swaps.Count switch { 0 => "no swap", 1 => "one swap", var count => $"{count} swaps" };
        var least = result.LeastChargeAtSwap is { } charge ? $", the emptiest battery coming off with {charge.Percent:0} %" : "";
        var verb = result.Days.Count == 1 ? "completes" : "complete";
        return $"{what} {verb} with {with}: {swaps}{least}. What is left at the end would last about {DayWords.Length(result.TimeLeft)} more.";
    }

    /// <summary>Where the days break first, as a clause; empty if they complete.</summary>
    public static string FirstBreak(DayPlanResult result, DayPlan plan)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(plan);
        var first = result.DownTimes.FirstOrDefault(down => down.Cause != DownCause.PlannedSwap);
        if (first is null)
            return "";
        var block = plan.Days[first.Day - 1].Blocks.TryGetValue(first.Block, out var found) ? found.Title ?? first.Block : first.Block;
        var take = first.InTake ? " in the middle of a take" : "";
        return $"{Clock(first.Start, result.Days.Count)}, in \"{block}\"{take}, {result.Devices[first.Device].Title} stops ({first.Because})";
    }

    /// <summary>A cause in words.</summary>
    public static string InWords(this DownCause cause) => cause switch
    {
        DownCause.PlannedSwap => "planned swap",
        DownCause.DropOut => "drop-out",
        DownCause.NothingLeft => "nothing left",
        DownCause.WaitingForCharge => "waiting for charge",
        _ => throw new ArgumentOutOfRangeException(nameof(cause), $"{cause} is no cause."),
    };

    /// <summary>The cautions that go with a plan and its answer.</summary>
    public static IReadOnlyList<string> Cautions(DayPlanResult result, DayPlan plan)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(plan);
        var cautions = new List<string>
        {
            $"The times are a prediction, good to about {result.ExpectedError.Share.Percent:0} % ({result.ExpectedError.Why}). Carry a reserve.",
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
