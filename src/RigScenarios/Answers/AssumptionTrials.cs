using System.Globalization;
using RigScenarios.Balance;
using RigScenarios.Batteries;
using RigScenarios.Cells;
using RigScenarios.Files;

namespace RigScenarios.Answers;

/// <summary>An assumed value with the two that are tried instead.</summary>
/// <param name="Value">The value.</param>
/// <param name="Path">The field that replaces it.</param>
/// <param name="Usual">The values that are tried.</param>
/// <param name="OnlyAtRest">Whether it has no part in the days, only in balance, tripod and joints.</param>
internal sealed record AssumptionTrial(AssumedValue Value, string Path, UsualRange Usual, bool OnlyAtRest)
{
    /// <summary>A field that is set beside it, so that the trial changes nothing else; null for none.</summary>
    public AssignedField? Beside { get; init; }
}

/// <summary>A field and its text.</summary>
/// <param name="Path">The field.</param>
/// <param name="Text">Its text.</param>
internal sealed record AssignedField(string Path, string Text);

/// <summary>
/// What is varied of an answer's assumptions, and how far: to the ends of what is usual where whoever assumed it knows them.
/// Else, by our choice, a voltage goes by a twentieth, a device's least voltage by a twelfth (a quarter of a volt for each group
/// of a battery), a label's energy or capacity by a tenth, a temperature by 10 °C, all else by a fifth.
/// </summary>
internal static class AssumptionTrials
{
    private const double Spread = 0.2;
    private const double LabelSpread = 0.1;
    private const double VoltageSpread = 0.05;
    private const double LeastVoltageSpread = 1 / 12.0;
    private const double KelvinSpread = 10;

    /// <summary>Each assumption once, those of the days first.</summary>
    public static IEnumerable<AssumptionTrial> Of(RigAnswer answer)
    {
        var told = new HashSet<string>(StringComparer.Ordinal);
        var values = answer.PartsAssumed.Select(value => (Value: value, Path: (string?)value.Field, AtRest: false))
            .Concat(OfBuild(answer))
            .Concat(answer.Simulation.Assumed.SelectMany(battery => battery.Value,
                (battery, value) => (Value: value, Path: PathOf(answer, battery.Key, value.Field), AtRest: false)))
            .Concat(AtRest(answer));
        foreach (var (value, path, atRest) in values.Where(one => one.Path is not null && told.Add(one.Path!)))
        {
            if ((value.Usual ?? Range(value)) is { } usual)
                yield return new(value, path!, usual, atRest) { Beside = Beside(answer, value, path!) };
        }
    }

    /// <summary>Figures that a build marks as assumed: those of chargers.</summary>
    private static IEnumerable<(AssumedValue Value, string? Path, bool AtRest)> OfBuild(RigAnswer answer)
    {
        foreach (var path in answer.TheBuild.Assumed)
        {
            if (path.Split('.') is ["chargers", var name, var field] && field is "current" or "ambient"
                && ScenarioPath.Find(answer.Scenario, path) is { } text)
                yield return (new AssumedValue(path, field == "current" ? $"charging current of {LimitSentences.Element(name)}"
                    : $"air where {LimitSentences.Element(name)} stands", text, "marked as assumed in the build",
                    Citation.CommonPractice("defaults of what is not given (docs/own-rig.md)")), path, false);
        }
    }

    /// <summary>What balance, tripod and joints rest on: assumed masses, sizes and figures of the head.</summary>
    private static IEnumerable<(AssumedValue Value, string? Path, bool AtRest)> AtRest(RigAnswer answer)
    {
        if (answer.Balance is not { } balance)
            yield break;
        var scenario = answer.Scenario;
        if (balance.Supports is { HeadName: { } head, Head: not null, IsFrictionKnown: false })
        {
            var friction = FluidHead.UsualFriction.NewtonMeters;
            var path = $"parts.{scenario.Kit[head].Part}.head.friction";
            yield return (new AssumedValue(
                path, $"{scenario.PartOf(head)!.Name}, friction at rest", Text(friction, " N·m"),
                "the head's parts file gives none", Citation.FromMemory("a middle fluid head, drag set low"))
            {
                Usual = new(Text(friction / 2, " N·m"), Text(friction * 2, " N·m")),
            }, path, true);
        }
        foreach (var id in answer.TheBuild.Things.Where(name => scenario.Kit.ContainsKey(name))
            .Select(name => scenario.Kit[name].Part).Distinct())
        {
            foreach (var value in PartAssumptions.Of(id, scenario.FindPart(id)!,
                field => field.Split('.')[0] is "mass" or "size" or "head" or "legs"))
                yield return (value, value.Field, true);
        }
    }

    /// <summary>The field that stands in for an assumption of a battery's model; null where there is none.</summary>
    private static string? PathOf(RigAnswer answer, string battery, string field)
    {
        var scenario = answer.Scenario;
        var planned = scenario.Batteries.TryGetValue(battery, out var turn);
        if (field is "capacity-left" or "resistance-growth")
            return planned ? $"batteries.{battery}.{field}" : $"builds.{answer.Build}.battery.{field}";
        var item = planned ? turn!.Item : answer.TheBuild.Battery.Item;
        return scenario.Kit.TryGetValue(item, out var thing) ? $"parts.{thing.Part}.battery.{field}" : null;
    }

    // A resistance of its own would take away the battery's second well, if the near share were not given beside it.
    private static AssignedField? Beside(RigAnswer answer, AssumedValue value, string path)
    {
        if (value.Field is not ("resistance-0" or "resistance-1" or "resistance-2"))
            return null;
        var values = answer.Simulation.Assumed.Values.First(one => one.Contains(value));
        return values.FirstOrDefault(one => one.Field == "near-share") is { Value: not "1" } share
            ? new(path.Replace(value.Field, share.Field, StringComparison.Ordinal), share.Value) : null;
    }

    private static UsualRange? Range(AssumedValue value)
    {
        var space = value.Value.IndexOf(' ', StringComparison.Ordinal);
        var (number, unit) = space < 0 ? (value.Value, "") : (value.Value[..space], value.Value[space..]);
        if (!double.TryParse(number, NumberStyles.Float, CultureInfo.InvariantCulture, out var figure)
            || unit.Contains(',', StringComparison.Ordinal) || unit.Contains("to", StringComparison.Ordinal))
            return null;
        if (unit == " °C")
            return new(Text(figure - KelvinSpread, unit), Text(figure + KelvinSpread, unit));
        var spread = value.Field.EndsWith("voltage.minimum", StringComparison.Ordinal) ? LeastVoltageSpread
            : unit == " V" ? VoltageSpread
            : value.Field is "capacity" || value.Field.EndsWith(".energy", StringComparison.Ordinal) ? LabelSpread : Spread;
        return new(Text(figure * (1 - spread), unit), Text(figure * (1 + spread), unit));
    }

    private static string Text(double figure, string unit) => string.Create(CultureInfo.InvariantCulture, $"{figure:G4}{unit}");
}
