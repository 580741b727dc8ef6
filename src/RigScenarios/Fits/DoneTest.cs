using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Fits;

/// <summary>What a test on the bench measures.</summary>
public enum BenchQuantity
{
    /// <summary>The capacity, by a slow discharge.</summary>
    Capacity,

    /// <summary>The resistance, by a step of the load.</summary>
    Resistance,

    /// <summary>The power of a device, by a meter on its cable.</summary>
    DevicePower,
}

/// <summary>A test that was made and measured one unknown by itself.</summary>
/// <param name="Quantity">What was measured.</param>
/// <param name="Device">The device on the meter; null for a capacity, a resistance, or the one scale of all devices.</param>
/// <param name="Factor">Measured over assumed: the capacity over that of the label, the resistance over that of the pack as new,
/// the power over that of the data sheet. Above 0.</param>
/// <param name="Deviation">One standard deviation of the factor's natural logarithm; above 0.</param>
public sealed record DoneTest(BenchQuantity Quantity, string? Device, double Factor, double Deviation)
{
    /// <summary>Deviation of a capacity from a slow discharge, as a share.</summary>
    public const double CapacityDeviation = 0.015;

    /// <summary>Deviation of a resistance from a pulse at 0 °C or above, as a share.</summary>
    public const double PulseDeviation = 0.10;

    /// <summary>Deviation of a resistance from a pulse below 0 °C, as a share.</summary>
    public const double ColdPulseDeviation = 0.25;

    /// <summary>A capacity test: what it gave over the label's capacity.</summary>
    public static DoneTest OfCapacity(double factor) => new(BenchQuantity.Capacity, null, factor, CapacityDeviation);

    /// <summary>A pulse test at a temperature of the battery: its resistance over that of the pack as new.</summary>
    public static DoneTest OfPulse(double factor, Temperature temperature) => new(BenchQuantity.Resistance, null, factor,
        temperature.DegreesCelsius >= 0 ? PulseDeviation : ColdPulseDeviation);

    /// <summary>A power meter: what a device drew over what its data sheet says; null for all devices together.</summary>
    public static DoneTest OfMeter(string? device, double factor) =>
        new(BenchQuantity.DevicePower, device, factor, FitPriors.MeteredDeviation);
}

/// <summary>A test or run that could be made, of which the fit can tell what it would leave.</summary>
public abstract record CandidateTest
{
    private protected CandidateTest(string id) => Id = id;

    /// <summary>Its name.</summary>
    public string Id { get; }
}

/// <summary>Another run, noted like the others.</summary>
public sealed record CandidateRun : CandidateTest
{
    /// <param name="id">Its name.</param>
    /// <param name="run">Air, charge and draw.</param>
    public CandidateRun(string id, BatteryRun run) : base(id) => Run = run;

    /// <summary>Air, charge and draw.</summary>
    public BatteryRun Run { get; }

    /// <summary>One deviation of the time that will be noted; three minutes if not given. Above 0.</summary>
    public Duration ClockError
    {
        get;
        init
        {
            Require.Positive(value.Seconds, "s");
            field = value;
        }
    } = Duration.FromMinutes(3);
}

/// <summary>A test on the bench.</summary>
public sealed record CandidateBenchTest : CandidateTest
{
    /// <param name="id">Its name.</param>
    /// <param name="quantity">What it measures.</param>
    /// <param name="device">The device on the meter; null otherwise.</param>
    /// <param name="deviation">One standard deviation of the natural logarithm that it measures; above 0.</param>
    public CandidateBenchTest(string id, BenchQuantity quantity, string? device, double deviation) : base(id)
    {
        Require.Positive(deviation, "", nameof(deviation));
        (Quantity, Device, Deviation) = (quantity, device, deviation);
    }

    /// <summary>What it measures.</summary>
    public BenchQuantity Quantity { get; }

    /// <summary>The device on the meter; null for none.</summary>
    public string? Device { get; }

    /// <summary>One standard deviation of the natural logarithm that it measures.</summary>
    public double Deviation { get; }
}
