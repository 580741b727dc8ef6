using UnitsNet;

namespace RigScenarios.Parts;

/// <summary>What rods are made of.</summary>
public enum RodMaterialKind
{
    /// <summary>An alloy of aluminium.</summary>
    Aluminium,

    /// <summary>Stainless steel.</summary>
    StainlessSteel,

    /// <summary>Carbon fibre.</summary>
    CarbonFibre,
}

/// <summary>A pair of rods.</summary>
/// <param name="Diameter">Outer diameter of one.</param>
/// <param name="Bore">Inner diameter; 0 for solid rods.</param>
/// <param name="Material">What they are made of.</param>
public sealed record RodData(Length Diameter, Length Bore, RodMaterialKind Material);
