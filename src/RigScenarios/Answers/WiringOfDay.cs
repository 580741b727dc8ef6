using RigScenarios.Batteries;
using RigScenarios.Builds;
using RigScenarios.Days;
using RigScenarios.Limits;
using RigScenarios.Parts;
using RigScenarios.Simulation;
using RigScenarios.Wiring;
using UnitsNet;

namespace RigScenarios.Answers;

/// <summary>The wiring of a build through a planned day on one battery.</summary>
public sealed record WiringOfDay
{
    /// <summary>The build's short name.</summary>
    public required string BuildName { get; init; }

    /// <summary>The day's short name.</summary>
    public required string DayName { get; init; }

    /// <summary>The day.</summary>
    public required ShootingDay Day { get; init; }

    /// <summary>Temperature of the air, which the copper and the fuses have too.</summary>
    public required Temperature Ambient { get; init; }

    /// <summary>The build with its parts.</summary>
    public required PoweredBuild Powered { get; init; }

    /// <summary>The pack, with what was assumed of it.</summary>
    public required PackAssumptions Pack { get; init; }

    /// <summary>The wiring.</summary>
    public required WiringNetwork Network { get; init; }

    /// <summary>How the planned day went.</summary>
    public required WiringResult Run { get; init; }

    /// <summary>What the wiring did over the day.</summary>
    public required IReadOnlyList<WiringMoment> Moments { get; init; }

    /// <summary>Every limit of the wiring with what is left to it, least first.</summary>
    public IReadOnlyList<WiringFinding> Findings { get; init; } = [];

    /// <summary>Changes that would keep the wiring from failing, each run through the day; those that bring most first.</summary>
    public IReadOnlyList<WiringFix> Fixes { get; init; } = [];

    /// <summary>The build.</summary>
    public Build Build => Powered.Build;

    /// <summary>The drop-out that stops the first essential device, or the first one if none does; null if nothing drops out.</summary>
    public DropOut? Failure
    {
        get
        {
            var first = Run.Devices.Where(item => item.Value.Because is not null && Powered.Devices.TryGetValue(item.Key, out var device) && device.Essential)
                .OrderBy(item => item.Value.At.Seconds).Select(item => item.Value.Because).FirstOrDefault();
            return Run.DropOuts.FirstOrDefault(drop => drop.Element == first) ?? (Run.DropOuts.Count > 0 ? Run.DropOuts[0] : null);
        }
    }

    /// <summary>The last moment before the wiring fails, or the one with the least left to any limit: the one to draw. Null where nothing could ever be delivered.</summary>
    public WiringMoment? Worst
    {
        get
        {
            if (Moments.Count == 0)
                return null;
            if (Failure is { } failure)
                return Moments.LastOrDefault(moment => moment.At <= failure.At + Duration.FromMilliseconds(1) && !moment.Stopped.Contains(failure.Element)) ?? Moments[0];
            if (Run.PackEndCause == EndCause.PowerLimit)
                return Moments[^1];
            var at = Findings.FirstOrDefault(finding => finding.Case == LoadCase.Steady)?.At ?? Duration.Zero;
            return Moments.MinBy(moment => (Math.Abs((moment.At - at).Seconds), -(double)moment.Point.Power.Watts));
        }
    }

    /// <summary>The lowest voltage at an element's inlet while it drew anything, and when; null if it never did.</summary>
    /// <param name="element">Its name in the network.</param>
    public (ElectricPotential Inlet, Duration At)? LowestOf(string element)
    {
        if (Findings.FirstOrDefault(finding => finding.Element == element && finding is { IsVoltage: true, Case: Limits.LoadCase.Steady }) is { } known)
            return (ElectricPotential.FromVolts(double.Parse(known.Load[..^2], System.Globalization.CultureInfo.InvariantCulture)), known.At);
        var drawing = Moments.Where(moment => moment.Point.Elements[element].Current.Amperes > 0).ToList();
        return drawing.Count == 0 ? null : drawing.Select(moment => (moment.Point.Elements[element].Inlet, moment.At)).MinBy(moment => moment.Inlet.Volts);
    }

    /// <summary>The name of an element for people: names of the kit with spaces, cables by their own names.</summary>
    /// <param name="element">Its name in the network; <see cref="WiringFinding.Battery"/> is the battery.</param>
    public string NameOf(string element)
    {
        ArgumentNullException.ThrowIfNull(element);
        foreach (var (thing, link) in Powered.Links)
        {
            if (element == BuildWiring.CableName(thing))
                return Words(link.CableName is { } cable ? $"{cable} to {thing}" : $"plug of {thing}");
        }
        return Words(element);

        static string Words(string name) => name.Replace('-', ' ');
    }

    /// <summary>The states of the network's devices in a block.</summary>
    internal OrderedMap<string> StatesIn(int block) => BuildWiring.States(Powered, Day.Blocks.Values.ElementAt(block).StateOf);
}
