using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Batteries;

/// <summary>
/// What the pack's terminals must deliver for a stretch of time: I = Ic + g·V + P/V. All three parts at zero is a rest.
/// </summary>
/// <remarks>Each value is checked when it is set; one outside its range throws an
/// <see cref="ArgumentOutOfRangeException"/>.</remarks>
public sealed record DemandSegment
{
    /// <param name="length">How long it lasts; above 0.</param>
    /// <param name="constantPower">Part that draws the same power at any voltage, as regulated loads do; 0 or more.</param>
    /// <param name="constantCurrent">Part that draws the same current at any voltage; 0 or more.</param>
    /// <param name="conductance">Part that draws as a resistor does; 0 or more.</param>
    public DemandSegment(Duration length, Power constantPower, ElectricCurrent constantCurrent, ElectricConductance conductance)
    {
        Length = length;
        ConstantPower = constantPower;
        ConstantCurrent = constantCurrent;
        Conductance = conductance;
    }

    /// <summary>How long it lasts; above 0.</summary>
    public Duration Length
    {
        get;
        init
        {
            Require.Positive(value.Seconds, "s");
            field = value;
        }
    }

    /// <summary>Part that draws the same power at any voltage; 0 or more.</summary>
    public Power ConstantPower
    {
        get;
        init
        {
            Require.NotNegative((double)value.Watts, "W");
            field = value;
        }
    }

    /// <summary>Part that draws the same current at any voltage; 0 or more.</summary>
    public ElectricCurrent ConstantCurrent
    {
        get;
        init
        {
            Require.NotNegative(value.Amperes, "A");
            field = value;
        }
    }

    /// <summary>Part that draws as a resistor does; 0 or more.</summary>
    public ElectricConductance Conductance
    {
        get;
        init
        {
            Require.NotNegative(value.Siemens, "S");
            field = value;
        }
    }
}
