using RigScenarios.Builds;
using RigScenarios.Files;
using RigScenarios.Scenarios;
using UnitsNet;

namespace RigScenarios.Answers.Classes;

/// <summary>What of a build and its days a class may be given to change, and the scenario with such changes.</summary>
public static class ClassControls
{
    private const double LeastAir = -30;

    private const double GreatestAir = 40;

    private const double LongestBlockMinutes = 24 * 60;

    private static readonly ControlChoice[] States =
        [new("off", "off"), new("standby", "standby"), new("record", "recording")];

    /// <summary>All controls of an answer's build and days, in the order in which they are told.</summary>
    /// <param name="answer">The answer for the rig as it is.</param>
    public static IReadOnlyList<ClassControl> Of(RigAnswer answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        return [.. new[] { AirOf(answer), BatteryControls.Of(answer), Blocks(answer), PartControls.Of(answer),
            BalanceControls.Of(answer) }.SelectMany(some => some).DistinctBy(control => control.Name)];
    }

    /// <summary>The scenario with controls set; those that stand where they begin change nothing.</summary>
    /// <param name="scenario">A scenario that was read or checked.</param>
    /// <param name="days">The days' short names, for the air.</param>
    /// <param name="open">The controls that may be set, with their bounds.</param>
    /// <param name="settings">Values by the names of controls.</param>
    /// <exception cref="ScenarioProblemsException">A control is not open or a value is not accepted; carries all
    /// problems.</exception>
    public static Scenario Apply(Scenario scenario, IReadOnlyList<string> days, IReadOnlyList<ClassControl> open,
        IReadOnlyDictionary<string, string> settings)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        ArgumentNullException.ThrowIfNull(days);
        ArgumentNullException.ThrowIfNull(open);
        ArgumentNullException.ThrowIfNull(settings);
        var known = open.ToDictionary(control => control.Name, StringComparer.Ordinal);
        var problems = settings.Select(setting => known.TryGetValue(setting.Key, out var control)
                ? Refused(setting.Key, control.Problem(setting.Value))
                : Refused(setting.Key, "This is locked."))
            .OfType<Diagnostic>().ToList();
        if (problems.Count > 0)
            throw new ScenarioProblemsException(problems);
        return Set(scenario, days, [.. settings.Where(setting => setting.Value != known[setting.Key].Start)
            .Select(setting => (known[setting.Key], setting.Value))]);
    }

    /// <summary>The scenario in which every control has a value of its own: those that the file leaves open stand where they
    /// begin.</summary>
    internal static Scenario Given(Scenario scenario, IReadOnlyList<string> days, IReadOnlyList<ClassControl> open) =>
        Set(scenario, days, [.. open.Where(control => !control.IsGiven).Select(control => (control, control.Start))]);

    private static Scenario Set(Scenario scenario, IReadOnlyList<string> days,
        IReadOnlyList<(ClassControl Control, string Value)> settings)
    {
        foreach (var (control, value) in settings.Where(one => one.Control.Name == ClassControl.Air))
            scenario = scenario.Warmer(TemperatureDelta.FromKelvins(
                ClassControl.Number(value)!.Value - ClassControl.Number(control.Start)!.Value), days);
        var fields = settings.Where(one => one.Control.Name != ClassControl.Air).ToList();
        return fields.Count == 0 ? scenario : ScenarioPath.SetAll(scenario, fields.Select(one => (one.Control.Name,
            one.Control.IsNumber ? one.Control.InWords(one.Value) : one.Value)));
    }

    private static Diagnostic? Refused(string name, string? why) =>
        why is null ? null : new Diagnostic(Severity.Error, "", TextPlace.None, name, why);

    private static IEnumerable<ClassControl> AirOf(RigAnswer answer)
    {
        var scenario = answer.Scenario;
        var days = scenario with { Days = new(scenario.Days.Where(day => answer.Days.Contains(day.Key))) };
        if (days.ColdestAir is { } air)
            yield return Figure(ClassControl.Air, "The day", "coldest air", "°C", air.DegreesCelsius, LeastAir, GreatestAir);
    }

    private static IEnumerable<ClassControl> Blocks(RigAnswer answer)
    {
        foreach (var name in answer.Days.Distinct())
        {
            var day = answer.Scenario.Days[name];
            var title = answer.Days.Count > 1 ? $"{day.Title ?? name}: " : "";
            foreach (var (at, block) in day.Blocks)
            {
                var path = $"days.{name}.blocks.{at}";
                var what = $"{title}{block.Title ?? at}";
                yield return Figure($"{path}.length", "Blocks of the day", $"{what}, length", "min", block.Length.Minutes, 1,
                    Math.Clamp(Math.Ceiling(block.Length.Minutes * 3), 60, LongestBlockMinutes));
                foreach (var device in answer.TheBuild.Devices.Keys)
                    yield return Choice($"{path}.states.{device}", "Blocks of the day",
                        $"{what}: {LimitSentences.Element(device)}", Word(block.StateOf(device)), States);
            }
        }
    }

    private static string Word(PowerState state) =>
        state switch { PowerState.Record => "record", PowerState.Standby => "standby", _ => "off" };

    /// <summary>A figure between bounds, widened so that it holds what the file says.</summary>
    internal static ClassControl Figure(string name, string group, string label, string unit, double start, double least,
        double greatest, bool isGiven = true) => new()
        {
            Name = name, Group = group, Label = label, Unit = unit, Start = ClassControl.Text(start), IsGiven = isGiven,
            Least = Math.Min(least, Math.Round(start, 3)), Greatest = Math.Max(greatest, Math.Round(start, 3)),
        };

    /// <summary>A choice of a few.</summary>
    internal static ClassControl Choice(string name, string group, string label, string start,
        IReadOnlyList<ControlChoice> choices) => new()
        {
            Name = name, Group = group, Label = label, Start = start, Choices = choices,
        };
}
