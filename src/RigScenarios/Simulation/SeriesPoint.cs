using RigScenarios.Wiring;
using UnitsNet;

namespace RigScenarios.Simulation;

/// <summary>One moment of the days, at the terminals of the battery that feeds the rig, with all of the wiring behind
/// it.</summary>
/// <param name="Time">From midnight of the first day.</param>
/// <param name="Stretch">Number of its stretch in <see cref="SimulationResult.Stretches"/>: at a change the point before belongs
/// to the old one.</param>
/// <param name="AfterChange">Whether it is the moment right after a change of what is drawn.</param>
/// <param name="Battery">Name of the battery that feeds the rig.</param>
/// <param name="Voltage">Terminal voltage.</param>
/// <param name="Current">Terminal current.</param>
/// <param name="Power">Power out of the battery.</param>
/// <param name="StateOfCharge">Its charge.</param>
/// <param name="Temperature">Its temperature.</param>
public sealed record SeriesPoint(
    Duration Time, int Stretch, bool AfterChange, string Battery, ElectricPotential Voltage, ElectricCurrent Current, Power Power,
    Ratio StateOfCharge,
    Temperature Temperature)
{
    /// <summary>Voltages and currents everywhere in the wiring; what has stopped or is off shows 0. Null where nothing could be
    /// delivered.</summary>
    public OperatingPoint? Wiring => Figures is null ? null : new OperatingPoint(Network!, Terminals, Figures, AirKelvin);

    internal WiringNetwork? Network { get; init; }

    internal ElementFigures[]? Figures { get; init; }

    internal double Terminals { get; init; }

    internal double AirKelvin { get; init; }
}
