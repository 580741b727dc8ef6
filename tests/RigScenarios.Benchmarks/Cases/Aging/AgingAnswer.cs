using System.Text.Json.Nodes;
using RigScenarios.Cells.Aging;

namespace RigScenarios.Benchmarks.Cases.Aging;

/// <summary>What the library says of a case, with the fields of the result files (docs/aging.md, "Case files").</summary>
internal static class AgingAnswer
{
    public static JsonObject Of(AgingCase one)
    {
        var life = BatteryLife.After(one.Set, one.Assumed, one.Phases);
        var answer = new JsonObject
        {
            ["id"] = one.Id,
            ["phases"] = new JsonArray([.. life.Phases.Select(PhaseOf)]),
        };
        if (one.InWords)
        {
            answer["model"] = one.Assumed ? "unknown" : one.Set.Name;
            answer["converted"] = new JsonArray([.. one.Phases.Select(Converted)]);
        }

        if (one.TimeTo80)
            answer["daysTo80"] = life.TimeTo(LifeResult.Replaced)?.Days;
        if (one.Band)
        {
            var band = AgingBand.Of(one.Set, one.Phases);
            answer["bandAQ"] = new JsonArray(band.Least.DecimalFractions, band.Greatest.DecimalFractions);
        }

        return answer;
    }

    private static JsonObject PhaseOf(AgedPhase phase)
    {
        var fields = new JsonObject
        {
            ["aQ"] = phase.Age.CapacityLeft.DecimalFractions,
            ["aR"] = phase.Age.ResistanceFactor,
            ["lossCalendar"] = phase.LossCalendar.DecimalFractions,
            ["lossCycle"] = phase.LossCycle.DecimalFractions,
            ["growthCalendar"] = phase.GrowthCalendar,
            ["growthCycle"] = phase.GrowthCycle,
            ["pace"] = phase.Pace,
            ["paceResistance"] = phase.ResistancePace,
            ["warnings"] = new JsonArray([.. phase.Warnings.Select(one => JsonValue.Create(one.Name()))]),
        };
        if (phase.Day is { } day)
        {
            fields["day"] = new JsonObject
            {
                ["cycles"] = new JsonArray([.. day.Cycles.Select(cycle => new JsonObject
                {
                    ["depth"] = cycle.Depth.DecimalFractions,
                    ["meanSoc"] = cycle.MeanCharge.DecimalFractions,
                    ["count"] = cycle.Count,
                })]),
                ["fullCycles"] = day.FullCycles,
                ["cRate"] = day.RatePerHour,
                ["temperatureC"] = day.Temperature?.DegreesCelsius,
            };
        }

        return fields;
    }

    private static JsonObject Converted(LifePhase phase) => phase switch
    {
        Shooting shooting => new JsonObject
        {
            ["kind"] = "shooting",
            ["days"] = shooting.Length.Days,
            ["temperatureC"] = shooting.ShelfTemperature.DegreesCelsius,
            ["soc"] = shooting.Charge.DecimalFractions,
            ["shootingDays"] = shooting.Days,
            ["depth"] = shooting.Depth?.DecimalFractions,
        },
        Measured measured => new JsonObject
        {
            ["kind"] = "measured",
            ["capacityFraction"] = measured.CapacityLeft.DecimalFractions,
            ["historyKnown"] = measured.HistoryKnown,
        },
        _ => throw new ArgumentException("Words become shooting and measured phases only.", nameof(phase)),
    };
}
