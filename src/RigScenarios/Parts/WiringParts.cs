using System.Globalization;
using UnitsNet;

namespace RigScenarios.Parts;

/// <summary>The gauge of one conductor: an American gauge number, or a metric cross-section.</summary>
/// <param name="Awg">Number of the American gauge; null for a metric one.</param>
/// <param name="Area">Nominal cross-section of a metric conductor; null for an American gauge.</param>
public readonly record struct WireGauge(int? Awg, Area? Area)
{
    /// <summary>The gauge of an American gauge number.</summary>
    public static WireGauge American(int number) => new(number, null);

    /// <summary>The gauge of a metric cross-section.</summary>
    public static WireGauge Metric(double squareMillimetres) => new(null, UnitsNet.Area.FromSquareMillimeters(squareMillimetres));

    /// <summary>As it stands in a file: <c>AWG 20</c>, <c>0.5 mm²</c>.</summary>
    public override string ToString() => Awg is { } number
        ? string.Create(CultureInfo.InvariantCulture, $"AWG {number}")
        : string.Create(CultureInfo.InvariantCulture, $"{Area?.SquareMillimeters ?? 0:0.####} mm²");
}

/// <summary>An outlet of a plate or a splitter.</summary>
public sealed record OutletData
{
    /// <summary>The greatest current out of it; null if not known.</summary>
    public ElectricCurrent? MaximumCurrent { get; init; }

    /// <summary>Its fuse; null if it has none, or nobody knows.</summary>
    public FuseData? Fuse { get; init; }

    /// <summary>The voltage that it holds; null where the battery's own voltage passes through.</summary>
    public ElectricPotential? Voltage { get; init; }

    /// <summary>Power out over power in of an outlet that holds a voltage; null for 90 %.</summary>
    public Ratio? Efficiency { get; init; }

    /// <summary>Below this voltage at its inlet an outlet that holds a voltage stops; null if not known.</summary>
    public ElectricPotential? InputMinimum { get; init; }

    /// <summary>Resistance of each socket's contacts, there and back; null for none.</summary>
    public ElectricResistance? ContactResistance { get; init; }

    /// <summary>How many plugs fit in; they share its limit.</summary>
    public int Sockets { get; init; } = 1;
}

/// <summary>A power cable of two equal conductors.</summary>
/// <param name="Gauge">The gauge of each.</param>
/// <param name="Length">From plug to plug, one way.</param>
public sealed record CableData(WireGauge Gauge, Length Length)
{
    /// <summary>Two contacts of 5 mΩ, in the middle of what new ones have [from memory of the trade].</summary>
    public static readonly ElectricResistance UsualConnector = ElectricResistance.FromMilliohms(10);

    /// <summary>Resistance of the connector at each end, both its contacts together; null for
    /// <see cref="UsualConnector"/>.</summary>
    public ElectricResistance? ConnectorResistance { get; init; }

    /// <summary>The greatest current that its maker allows; null if not known.</summary>
    public ElectricCurrent? RatedCurrent { get; init; }

    /// <summary>A fuse in it; null if it has none.</summary>
    public FuseData? Fuse { get; init; }
}

/// <summary>A box with several outlets and nothing else.</summary>
public sealed record SplitterData
{
    /// <summary>What it draws itself, its lamp for one.</summary>
    public Power? OwnDraw { get; init; }

    /// <summary>The greatest current into it.</summary>
    public ElectricCurrent? MaximumCurrent { get; init; }

    /// <summary>The fuse at its inlet.</summary>
    public FuseData? Fuse { get; init; }

    /// <summary>Its outlets.</summary>
    public OrderedMap<OutletData> Outlets { get; init; } = OrderedMap<OutletData>.Empty;
}

/// <summary>How the draw of a device goes with the voltage at its inlet.</summary>
public enum LoadKind
{
    /// <summary>The same power at any voltage, as devices with a regulator inside.</summary>
    Power,

    /// <summary>The same current at any voltage.</summary>
    Current,

    /// <summary>As a resistor: lamps, heaters.</summary>
    Resistance,
}

/// <summary>What a device draws for a moment when it is switched on.</summary>
/// <param name="Power">The most that it draws then.</param>
/// <param name="Time">How long.</param>
public sealed record StartUpDraw(Power Power, Duration Time);
