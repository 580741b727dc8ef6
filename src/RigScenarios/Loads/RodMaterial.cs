using RigScenarios.Cells;
using UnitsNet;

namespace RigScenarios.Loads;

/// <summary>What a rod is made of. The values are typical ones of data sheets, not minima that a design may count on.</summary>
/// <param name="Name">The material.</param>
/// <param name="ElasticModulus">E.</param>
/// <param name="YieldStrength">Where it begins to stay bent; null where that is no figure for it.</param>
/// <param name="Source">Where the figures come from.</param>
public sealed record RodMaterial(string Name, Pressure ElasticModulus, Pressure? YieldStrength, Citation Source)
{
    /// <summary>Aluminium alloy 6061-T6: 68.9 GPa, 276 MPa.</summary>
    public static RodMaterial Aluminium6061 { get; } = new("aluminium 6061-T6", Pressure.FromGigapascals(68.9),
        Pressure.FromMegapascals(276),
        new Citation("", "6061-T6 data sheet, Aluminum Association typical values", null, "", Standing.ReadInSource));

    /// <summary>Stainless steel 304, annealed: 193 GPa, 205 MPa at least.</summary>
    public static RodMaterial Stainless304 { get; } = new("stainless steel 304", Pressure.FromGigapascals(193),
        Pressure.FromMegapascals(205),
        new Citation("ASTM", "A213, minimum yield strength; modulus from memory", null, "", Standing.SecondHand));

    /// <summary>
    /// Carbon fibre, standard cloth, half fibre and half resin, woven along and across the rod: 70 GPa along it. The same table
    /// has 135 GPa for straight fibres all along (60 % fibre), and a rod wound at an angle has less than cloth: replace it with
    /// the maker's figure.
    /// </summary>
    public static RodMaterial WovenCarbon { get; } = new("carbon fibre taken as woven cloth, 70 GPa (straight fibres have about "
        + "135)", Pressure.FromGigapascals(70), null,
        new Citation("", "Mechanical properties of carbon fibre composite materials, fibre / epoxy resin: standard fabric, 50 % "
            + "fibre", null, "performance-composites.com, table of mechanical properties", Standing.ReadInSource));
}
