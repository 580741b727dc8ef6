using RigScenarios.Simulation;
using RigScenarios.Wiring;
using UnitsNet;

namespace RigScenarios.Sweeps.Discharges;

/// <summary>
/// The wiring of a rig in the states of its days, ready to be reduced to formulas at the battery's terminals. It does not hang on
/// battery and air, so that scenarios which differ in these alone share it.
/// </summary>
/// <remarks>One instance serves one thread: the network is solved in its work space, and the last formulas are kept.</remarks>
internal sealed class ReducedRig
{
    // The end of a discharge is to be right to a thousandth. A formula that is off by so much at some voltages, too high at some
    // and too low at others, moves it by less than a tenth of that.
    private const double MostError = 5e-4;

    private readonly WiringNetwork network;
    private readonly WiringDraw[] draws;
    private (double Lowest, double Highest, double Kelvin) range;
    private ReducedDraw[]? formulas;
    private (double Highest, bool TooHigh) voltage;

    /// <param name="days">The days of a scenario.</param>
    /// <param name="shape">Their shape, where it is known; null to make it.</param>
    public ReducedRig(SweptDays days, RigShape? shape = null)
    {
        var rig = SimulatedRig.Of(days.Powered, null);
        network = rig.Network;
        Shape = shape ?? new(days, rig);
        draws = [.. Shape.States.Select(state => new WiringDraw(network, network.StateOf(state), new bool[network.Count]))];
    }

    /// <summary>Which device is wanted when, and what it hangs on.</summary>
    public RigShape Shape { get; }

    /// <summary>The largest error of a formula since the rig was made, as a share of the current.</summary>
    public double LargestError { get; private set; }

    /// <summary>The formula of each state; null where one of them is none, or is too far from the network.</summary>
    /// <param name="lowest">The lowest voltage of the terminals, V.</param>
    /// <param name="highest">The highest, V.</param>
    /// <param name="airKelvin">Temperature of the air, K.</param>
    public ReducedDraw[]? Reduce(double lowest, double highest, double airKelvin)
    {
        if (formulas is not null && range == (lowest, highest, airKelvin))
            return formulas;
        if (voltage.Highest != highest)
            voltage = (highest, network.OverVoltages(ElectricPotential.FromVolts(highest)).Count > 0);
        if (voltage.TooHigh)
            return null;
        var made = new ReducedDraw[draws.Length];
        for (var i = 0; i < made.Length; i++)
        {
            if (ReducedDraw.Of(draws[i], network, lowest, highest, airKelvin) is not { Error: <= MostError } formula)
                return null;
            made[i] = formula;
            LargestError = Math.Max(LargestError, formula.Error);
        }
        (range, formulas) = ((lowest, highest, airKelvin), made);
        return made;
    }

    /// <summary>Whether two have the same wiring, whatever their days.</summary>
    /// <param name="other">The other one.</param>
    public bool HasWiringOf(ReducedRig other) => network.Elements.SequenceEqual(other.network.Elements);

    /// <summary>Whether two are the same: wiring, states and segments.</summary>
    /// <param name="other">The other one.</param>
    public bool SameAs(ReducedRig other) => HasWiringOf(other) && Shape.SameAs(other.Shape);
}
