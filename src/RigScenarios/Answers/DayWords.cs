using RigScenarios.Batteries;
using RigScenarios.Builds;
using UnitsNet;

namespace RigScenarios.Answers;

/// <summary>Says in plain words how a day went.</summary>
public static class DayWords
{
    /// <summary>A length of time as people say it: <c>8 h 31 min</c>, <c>45 min</c>.</summary>
    public static string Length(Duration time)
    {
        var minutes = (long)Math.Round(Math.Abs(time.Minutes), MidpointRounding.AwayFromZero);
        var sign = time.Minutes < 0 && minutes > 0 ? "-" : "";
        return (minutes / 60, minutes % 60) switch
        {
            (0, var rest) => $"{sign}{rest} min",
            (var hours, 0) => $"{sign}{hours} h",
            var (hours, rest) => $"{sign}{hours} h {rest} min",
        };
    }

    /// <summary>The answer in one sentence: does the build run through the day, and by what margin.</summary>
    public static string Answer(DayResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        var doubt = Duration.FromSeconds((result.ExpectedError.Share?.DecimalFractions ?? 0) * result.Runtime.Seconds);
        if (!result.ReachesEnd)
        {
            var close = -result.Margin.Seconds < doubt.Seconds ? " That is closer than the figures are sure of: it may just reach." : "";
            return $"It runs {Length(result.Runtime)} of the planned {Length(result.Planned)}: {Length(-result.Margin)} short.{close}";
        }
        if (result.RuntimeIsLowerBound)
            return $"It runs through the planned {Length(result.Planned)} with {result.ChargeLeft.Percent:0} % of the charge left.";
        var tight = result.Margin.Seconds < doubt.Seconds ? " That is closer than the figures are sure of: it may stop before." : "";
        return $"It runs through the planned {Length(result.Planned)} with {result.ChargeLeft.Percent:0} % of the charge left, enough for about {Length(result.Margin)} more.{tight}";
    }

    /// <summary>Why and when it ends, in one sentence.</summary>
    /// <param name="result">The result.</param>
    /// <param name="starts">When the first block begins; null tells the time from the start of the day.</param>
    public static string Ending(DayResult result, TimeOnly? starts)
    {
        ArgumentNullException.ThrowIfNull(result);
        if (result.RuntimeIsLowerBound)
            return "Nothing ended the run; it was given up after many such days.";
        var block = result.Blocks.FirstOrDefault(span => span.Block == result.EndBlock)?.Title ?? result.EndBlock;
        var when = !result.ReachesEnd
            ? $"{(starts is { } clock ? $"At {clock.Add(TimeSpan.FromMinutes(Math.Round(result.Runtime.Minutes))):HH:mm}" : $"After {Length(result.Runtime)}")}, in \"{block}\", "
            : "After that ";
        return when + Cause(result) + ".";
    }

    /// <summary>What ended it, as a clause.</summary>
    public static string Cause(DayResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        return result.PackEndCause switch
        {
            EndCause.VoltageCutoff => "the battery's voltage falls to its cut-off and its protection switches off",
            EndCause.Empty => "the battery is empty",
            EndCause.PowerLimit => "the battery can no longer deliver the power that is asked of it",
            EndCause.OverCurrent => "the current reaches the battery's limit and its protection switches off",
            EndCause.OverTemperature => "the battery reaches its temperature limit",
            _ => result.Devices.FirstOrDefault(device => device.Essential) is { } device
                ? $"the voltage falls too low ({device.Cause}) while the battery still holds charge"
                : result.EndCause,
        };
    }

    /// <summary>The energy that the rest of the day still needs from the battery's terminals; zero if the day is reached.</summary>
    public static Energy StillNeeded(DayResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        var joules = result.Blocks.Sum(span => (double)span.Demand.Watts * Math.Max(0, span.End.Seconds - Math.Max(span.Start.Seconds, result.Runtime.Seconds)));
        return Energy.FromWattHours(joules / 3600);
    }

    /// <summary>The cautions that go with an answer.</summary>
    /// <param name="result">The result.</param>
    /// <param name="battery">The battery's state as the build gives it.</param>
    /// <param name="ambient">Temperature of the air.</param>
    public static IReadOnlyList<string> Cautions(DayResult result, BatteryInUse battery, Temperature ambient)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(battery);
        var cautions = new List<string>
        {
            $"Predicted, not measured: expect the runtime {PredictionWords.Of(result.ExpectedError)}. Carry a reserve.",
        };
        if (battery.CapacityLeft is null && battery.ResistanceGrowth is null)
            cautions.Add("The battery's age is not given, so it is taken as new. A worn battery runs shorter in proportion to the capacity it has lost, and in the cold shorter still. Measure it once and set capacity-left.");
        if (ambient.DegreesCelsius < 5)
            cautions.Add("Cold: charging a lithium battery at or below 0 °C can damage it and make it dangerous later; warm it first. The maker's temperature limits go before these figures.");
        if (ambient.DegreesCelsius > 40)
            cautions.Add("Heat: keep batteries out of the sun. The maker's temperature limits go before these figures.");
        cautions.AddRange(result.Margins.Where(margin => margin.Margin.Percent < 10).Select(margin =>
            $"Close to a limit: {margin.Limit} reaches {margin.Worst} of {margin.Allowed} ({margin.Source})."));
        cautions.Add("Lithium batteries can burn. Do not use one that is swollen, damaged or wet, and never bridge its contacts. Follow the maker's instructions and local rules.");
        return cautions;
    }
}
