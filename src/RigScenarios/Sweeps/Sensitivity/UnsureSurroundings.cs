using RigScenarios.Answers;
using RigScenarios.Cells;
using RigScenarios.Sweeps.Sampling;
using UnitsNet;

namespace RigScenarios.Sweeps.Sensitivity;

/// <summary>What a forecast leaves open of the air.</summary>
internal static class UnsureSurroundings
{
    // 86.5 % within 2 K either way, of a normal error: 2 K over its 93.25 % point, 1.4947.
    private static readonly TemperatureDelta Forecast = TemperatureDelta.FromKelvins(1.34);

    private static readonly Citation Verification = new("Met Office", "Accuracy performance", null,
        "minimum temperature, first night of forecast: 86.5 % of 36 months within 2 °C, at 119 stations", Standing.Computed);

    /// <summary>The air of each day.</summary>
    public static IEnumerable<UnsureFigure> Air(RigAnswer answer)
    {
        var scenario = answer.Scenario;
        foreach (var name in answer.Days)
        {
            var day = scenario.Days[name];
            if (day.AmbientPoints.Count > 0)
                continue;
            var (path, air) = day.Ambient is { } own ? ($"days.{name}.ambient", own)
                : ("conditions.ambient", answer.Plan.Ambient);
            var when = day.Ambient is not null && answer.Days.Count > 1 ? $" of the day \"{LimitSentences.Element(name)}\"" : "";
            yield return new(new(path, Spread.Normal(air, Forecast)), $"air temperature{when}",
                $"read a thermometer where you shoot{when.Replace(" of", " on", StringComparison.Ordinal)}",
                "a forecast for the next night, at a weather station", Verification);
        }
    }

    /// <summary>What is left as it stands.</summary>
    public static IEnumerable<string> TakenAsGiven(RigAnswer answer)
    {
        yield return "The plan is taken as it stands: blocks end on time, nobody forgets to switch off.";
        if (answer.Days.Any(day => answer.Scenario.Days[day].AmbientPoints.Count > 0))
            yield return "The air's course through the day is taken as it stands.";
    }
}
