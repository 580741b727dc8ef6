using RigScenarios.Builds;
using RigScenarios.Parts;
using RigScenarios.Scenarios;
using UnitsNet;

namespace RigScenarios.Fits.Notes;

/// <summary>A scenario with what a fit found in the fields of its battery, so that every answer goes by it.</summary>
public static class FittedScenario
{
    // What the fields take.
    private const double LeastCapacityPercent = 1, MostCapacityPercent = 120;
    private const double LeastGrowth = 0.5, MostGrowth = 20;
    private const double LeastScale = 0.3, MostScale = 3;

    /// <summary>The scenario of the notes with the fitted values: in the build of the notes, and wherever else the same battery
    /// is
    /// meant, because the kit has only one of it.</summary>
    /// <param name="noted">The notes.</param>
    /// <param name="result">The fit.</param>
    /// <param name="knownTo">One standard deviation of the runtime that it leaves, as a share.</param>
    public static Scenario Of(NotedBattery noted, FitResult result, Ratio knownTo)
    {
        ArgumentNullException.ThrowIfNull(noted);
        ArgumentNullException.ThrowIfNull(result);
        var scenario = noted.Scenario;
        var item = scenario.Builds[noted.Build].Battery.Item;
        var isOnlyOne = scenario.Kit[item].Count == 1;
        var left = CapacityLeft(result);
        var growth = ResistanceGrowth(result);
        var known = Ratio.FromPercent(Math.Round(knownTo.Percent, 1));
        var from = From(result);
        return scenario with
        {
            Builds = new(scenario.Builds.Select(build => KeyValuePair.Create(build.Key,
                build.Value.Battery.Item == item && (isOnlyOne || build.Key == noted.Build || build.Key == noted.Planned)
                    ? Loads(noted, result, build.Value with
                    {
                        Battery = build.Value.Battery with
                        {
                            CapacityLeft = left, ResistanceGrowth = growth, RuntimeKnownTo = known, FittedFrom = from,
                        },
                    }) : build.Value))),
            Batteries = new(scenario.Batteries.Select(battery => KeyValuePair.Create(battery.Key,
                battery.Value.Item == item && isOnlyOne ? battery.Value with
                {
                    CapacityLeft = left, ResistanceGrowth = growth, RuntimeKnownTo = known, FittedFrom = from,
                } : battery.Value))),
        };
    }

    /// <summary>What the field of the capacity takes: to a tenth of a per cent, within what it may be.</summary>
    /// <param name="result">The fit.</param>
    public static Ratio CapacityLeft(FitResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        return Ratio.FromPercent(Math.Round(
            Math.Clamp(100 * result[UnknownKind.Capacity].Value, LeastCapacityPercent, MostCapacityPercent), 1));
    }

    /// <summary>What the field of the resistance takes: three decimals, within what it may be.</summary>
    /// <param name="result">The fit.</param>
    public static double ResistanceGrowth(FitResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        return Math.Round(Math.Clamp(result[UnknownKind.Resistance].Value, LeastGrowth, MostGrowth), 3);
    }

    /// <summary>What a fit rests on: "5 notes, 1 log and 1 test".</summary>
    /// <param name="result">The fit.</param>
    public static string From(FitResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        List<string> parts = [.. Count(result.Problem.Notes.Count - result.Outliers.Count, "note"),
            .. Count(result.Problem.Logs.Count, "log"), .. Count(result.Problem.Tests.Count, "test")];
        if (parts.Count == 0)
            return "no note";
        return parts.Count < 2 ? string.Concat(parts) : $"{string.Join(", ", parts.SkipLast(1))} and {parts[^1]}";
    }

    private static IEnumerable<string> Count(int count, string word)
    {
        if (count > 0)
            yield return $"{count} {word}{(count == 1 ? "" : "s")}";
    }

    // One factor for all stands in one field; where devices differ each gets its own figures.
    private static Build Loads(NotedBattery noted, FitResult result, Build build)
    {
        var isOne = noted.Notes is { Scales: LoadScales.Together, Known.Count: 0, Meters.Count: 0 };
        if (isOne)
            return build with
            {
                Battery = build.Battery with
                {
                    LoadScale = Math.Round(Math.Clamp(result[UnknownKind.Load].Value, LeastScale, MostScale), 3),
                },
            };
        return build with
        {
            Battery = build.Battery with { LoadScale = null },
            Devices = new(build.Devices.Select(device => KeyValuePair.Create(device.Key, Scaled(noted, result, device.Key,
                device.Value)))),
        };
    }

    private static DeviceInUse Scaled(NotedBattery noted, FitResult result, string name, DeviceInUse device)
    {
        if (noted.Scenario.PartOf(name)?.Power is not { } part)
            part = new PowerDraw();
        var draw = part.With(device.Power);
        var metered = noted.Notes.Scales == LoadScales.Together && noted.Notes.Meters.TryGetValue(name, out var read)
            ? MeterReading.Of(read, draw) : null;
        var factor = metered ?? result.Estimates.FirstOrDefault(estimate => estimate.Unknown.Kind == UnknownKind.Load
            && (estimate.Unknown.Of == name || (estimate.Unknown.Of is null && !noted.Notes.Known.Contains(name))))?.Value;
        if (factor is not { } times)
            return device;
        var scaled = draw.Times(times);
        return device with
        {
            Power = (device.Power ?? new PowerDraw()) with
            {
                Standby = Rounded(scaled.Standby), Record = Rounded(scaled.Record), Peak = Rounded(scaled.Peak),
            },
        };
    }

    private static Power? Rounded(Power? power) =>
        power is { } given ? Power.FromWatts(Math.Round((double)given.Watts, 2)) : null;
}
