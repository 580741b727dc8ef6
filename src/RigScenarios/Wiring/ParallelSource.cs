using RigScenarios.Batteries;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Wiring;

/// <summary>A pack behind a diode, one of several that feed the same terminals.</summary>
/// <remarks>Each value is checked when it is set; one outside its range throws an <see cref="ArgumentOutOfRangeException"/>.</remarks>
public sealed record ParallelSource
{
    /// <param name="pack">The pack.</param>
    /// <param name="start">Its state at the start.</param>
    public ParallelSource(Pack pack, DischargeStart start) => (Pack, Start) = (pack, start);

    /// <summary>The pack.</summary>
    public Pack Pack { get; init; }

    /// <summary>Its state at the start; where in a demand it stands does not matter.</summary>
    public DischargeStart Start { get; init; }

    /// <summary>Voltage that is lost over the diode; 0 (an ideal diode) or more.</summary>
    public ElectricPotential ForwardDrop
    {
        get;
        init
        {
            Require.NotNegative(value.Volts, "V");
            field = value;
        }
    } = ElectricPotential.Zero;

    /// <summary>Resistance of the diode and its leads; 0 or more.</summary>
    public ElectricResistance Resistance
    {
        get;
        init
        {
            Require.NotNegative(value.Ohms, "Ω");
            field = value;
        }
    } = ElectricResistance.Zero;
}

/// <summary>One of the sources at one moment.</summary>
/// <param name="Time">From the start.</param>
/// <param name="Bus">Voltage of the common terminals.</param>
/// <param name="Currents">Current of each source, in their order; 0 where its diode blocks.</param>
/// <param name="Charges">Charge of each source.</param>
public sealed record ParallelPoint(Duration Time, ElectricPotential Bus, IReadOnlyList<ElectricCurrent> Currents, IReadOnlyList<Ratio> Charges);

/// <summary>How one of the sources ended.</summary>
/// <param name="FinalState">Its state at the end.</param>
/// <param name="Delivered">Energy out of its terminals, before the diode.</param>
/// <param name="ChargeOut">Charge out of its terminals.</param>
/// <param name="Ended">When it ended itself; null if it could go on.</param>
/// <param name="Cause">Why; null if it could go on.</param>
public sealed record ParallelSourceResult(DischargeStart FinalState, Energy Delivered, ElectricCharge ChargeOut, Duration? Ended, EndCause? Cause);

/// <summary>How packs in parallel went.</summary>
/// <param name="EndTime">From the start to the end.</param>
/// <param name="EndedBy">The element of the wiring that ran short of voltage first; null if none did.</param>
/// <param name="Cause">The cause of the last source, a power limit, or the time limit; null if an element ran short first.</param>
/// <param name="Sources">The sources, in their order.</param>
/// <param name="Delivered">Energy into the wiring.</param>
/// <param name="Series">The course.</param>
public sealed record ParallelResult(
    Duration EndTime, string? EndedBy, EndCause? Cause, IReadOnlyList<ParallelSourceResult> Sources, Energy Delivered, IReadOnlyList<ParallelPoint> Series);
