using RigScenarios.Parts;
using RigScenarios.Simulation;
using RigScenarios.Wiring;
using UnitsNet;

namespace RigScenarios.Sweeps.Discharges;

/// <summary>
/// The wiring of a rig with the states and stretches of its days, ready to be reduced to formulas at the battery's terminals. It
/// does not hang on battery and air, so that scenarios which differ in these alone share it.
/// </summary>
/// <remarks>One instance serves one thread: the network is solved in its work space, and the last formulas are kept.</remarks>
internal sealed class ReducedRig
{
    // The end of a discharge is to be right to a thousandth. A formula that is off by so much at some voltages, too high at some
    // and too low at others, moves it by less than a tenth of that.
    private const double MostError = 5e-4;

    private readonly SimulatedRig rig;
    private readonly OrderedMap<string>[] states;
    private readonly WiringDraw[] draws;
    private readonly bool[][] wanted;
    private (double Lowest, double Highest, double Kelvin) range;
    private ReducedDraw[]? formulas;
    private (double Highest, bool TooHigh) voltage;

    /// <param name="days">The days of a scenario.</param>
    public ReducedRig(SweptDays days)
    {
        rig = SimulatedRig.Of(days.Powered, null);
        var found = new List<OrderedMap<string>>();
        Days = [.. days.Plan.Days.Select(day => DayShape.Of(day, rig, found))];
        states = [.. found];
        draws = [.. states.Select(one => new WiringDraw(rig.Network, rig.Network.StateOf(one), new bool[rig.Network.Count]))];
        Essential = [.. rig.Devices.Where(device => device.Essential)];
        wanted = [.. states.Select(one => Essential.Select(device => rig.Wants(device, one)).ToArray())];
    }

    /// <summary>The days.</summary>
    public DayShape[] Days { get; }

    /// <summary>The devices without which the rig is of no use.</summary>
    public RigDevice[] Essential { get; }

    /// <summary>The largest error of a formula since the rig was made, as a share of the current.</summary>
    public double LargestError { get; private set; }

    /// <summary>Whether a device is wanted in a state.</summary>
    /// <param name="device">The number of the device among <see cref="Essential"/>.</param>
    /// <param name="state">The state.</param>
    public bool Wants(int device, int state) => wanted[state][device];

    /// <summary>The name of an element.</summary>
    public string NameOf(int element) => rig.Network[element].Name;

    /// <summary>Whether a device is dead when an element has stopped.</summary>
    /// <param name="device">The number of the device among <see cref="Essential"/>.</param>
    /// <param name="element">The element.</param>
    public bool Hangs(int device, int element)
    {
        for (var at = Essential[device].Number; at >= 0; at = rig.Network.ParentOf(at))
        {
            if (at == element)
                return true;
        }
        return false;
    }

    /// <summary>The formula of each state; null where one of them is none, or is too far from the network.</summary>
    /// <param name="lowest">The lowest voltage of the terminals, V.</param>
    /// <param name="highest">The highest, V.</param>
    /// <param name="airKelvin">Temperature of the air, K.</param>
    public ReducedDraw[]? Reduce(double lowest, double highest, double airKelvin)
    {
        if (formulas is not null && range == (lowest, highest, airKelvin))
            return formulas;
        if (voltage.Highest != highest)
            voltage = (highest, rig.Network.OverVoltages(ElectricPotential.FromVolts(highest)).Count > 0);
        if (voltage.TooHigh)
            return null;
        var made = new ReducedDraw[draws.Length];
        for (var i = 0; i < made.Length; i++)
        {
            if (ReducedDraw.Of(draws[i], rig.Network, lowest, highest, airKelvin) is not { Error: <= MostError } formula)
                return null;
            made[i] = formula;
            LargestError = Math.Max(LargestError, formula.Error);
        }
        (range, formulas) = ((lowest, highest, airKelvin), made);
        return made;
    }

    /// <summary>Whether two are the same: wiring, states and stretches.</summary>
    /// <param name="other">The other one.</param>
    public bool SameAs(ReducedRig other) => rig.Network.Elements.SequenceEqual(other.rig.Network.Elements)
        && states.AsSpan().SequenceEqual(other.states) && Days.Length == other.Days.Length
        && Essential.AsSpan().SequenceEqual(other.Essential)
        && Days.Zip(other.Days).All(pair => pair.First.SameAs(pair.Second));
}
