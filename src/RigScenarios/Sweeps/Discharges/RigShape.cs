using RigScenarios.Parts;
using RigScenarios.Simulation;

namespace RigScenarios.Sweeps.Discharges;

/// <summary>What of a rig says which device is wanted when, and what it hangs on: its days as segments and its tree, without what
/// anything draws. Scenarios whose loads differ share it. Immutable.</summary>
internal sealed class RigShape
{
    private readonly bool[][] wanted;
    private readonly bool[][] hangs;
    private readonly string[] names;

    /// <param name="days">The days of a scenario.</param>
    /// <param name="rig">Their rig.</param>
    public RigShape(SweptDays days, SimulatedRig rig)
    {
        var found = new List<OrderedMap<string>>();
        Days = [.. days.Plan.Days.Select(day => DayShape.Of(day, rig, found))];
        States = [.. found];
        RigDevice[] essential = [.. rig.Devices.Where(device => device.Essential)];
        Essential = essential.Length;
        wanted = [.. States.Select(state => essential.Select(device => rig.Wants(device, state)).ToArray())];
        names = [.. rig.Network.Elements.Select(element => element.Name)];
        hangs = [.. essential.Select(device => HangsOn(device, rig))];
    }

    /// <summary>The days.</summary>
    public DayShape[] Days { get; }

    /// <summary>The states of the rig that occur in them.</summary>
    public OrderedMap<string>[] States { get; }

    /// <summary>How many devices the rig is of no use without.</summary>
    public int Essential { get; }

    /// <summary>Whether an essential device is wanted in a state.</summary>
    /// <param name="device">The number of the device among the essential ones.</param>
    /// <param name="state">The state.</param>
    public bool Wants(int device, int state) => wanted[state][device];

    /// <summary>Whether an essential device is dead when an element has stopped.</summary>
    /// <param name="device">The number of the device among the essential ones.</param>
    /// <param name="element">The element; below 0 for the battery.</param>
    public bool Hangs(int device, int element) => element < 0 || hangs[device][element];

    /// <summary>The name of an element of the wiring.</summary>
    /// <param name="element">The element.</param>
    public string NameOf(int element) => names[element];

    /// <summary>Whether two are the same.</summary>
    /// <param name="other">The other one.</param>
    public bool SameAs(RigShape other) => Days.Length == other.Days.Length
        && States.AsSpan().SequenceEqual(other.States) && names.AsSpan().SequenceEqual(other.names)
        && Days.Zip(other.Days).All(pair => pair.First.SameAs(pair.Second))
        && Same(wanted, other.wanted) && Same(hangs, other.hangs);

    private static bool Same(bool[][] some, bool[][] others) =>
        some.Length == others.Length && some.Zip(others).All(pair => pair.First.AsSpan().SequenceEqual(pair.Second));

    private static bool[] HangsOn(RigDevice device, SimulatedRig rig)
    {
        var on = new bool[rig.Network.Count];
        for (var at = device.Number; at >= 0; at = rig.Network.ParentOf(at))
            on[at] = true;
        return on;
    }
}
