using RigScenarios.Cells;
using UnitsNet;

namespace RigScenarios.Travel;

/// <summary>What a lithium battery is.</summary>
public enum LithiumKind
{
    /// <summary>Rechargeable.</summary>
    Ion,

    /// <summary>Not rechargeable.</summary>
    Metal,
}

/// <summary>How batteries lie in a consignment.</summary>
public enum CargoForm
{
    /// <summary>On their own.</summary>
    Loose,

    /// <summary>In one package with the equipment that they power, but not in it.</summary>
    PackedWithEquipment,

    /// <summary>In the equipment.</summary>
    InEquipment,
}

/// <summary>An entry of the United Nations' list of dangerous goods.</summary>
/// <param name="Number">The number, without its letters.</param>
/// <param name="ShippingName">The proper shipping name, in lower case.</param>
public sealed record UnEntry(int Number, string ShippingName)
{
    /// <summary>Where the entries stand.</summary>
    public static Citation Source { get; } = new("United Nations",
        "Recommendations on the Transport of Dangerous Goods, list of dangerous goods", null,
        "UN 3090, 3091, 3480, 3481; read in the handbook \"Lithium Batteries\" (2024), p. 114 and 122", Standing.SecondHand);

    /// <summary>The entry of a kind of battery in a form of package.</summary>
    public static UnEntry Of(LithiumKind kind, CargoForm form)
    {
        var what = kind == LithiumKind.Ion ? "lithium ion batteries" : "lithium metal batteries";
        var loose = kind == LithiumKind.Ion ? 3480 : 3090;
        return form switch
        {
            CargoForm.Loose => new UnEntry(loose, what),
            CargoForm.PackedWithEquipment => new UnEntry(loose + 1, $"{what} packed with equipment"),
            _ => new UnEntry(loose + 1, $"{what} contained in equipment"),
        };
    }

    /// <summary>"UN 3480".</summary>
    public override string ToString() => $"UN {Number}";
}

/// <summary>What an edition says of one form of package in air cargo.</summary>
/// <param name="PackingInstruction">The number of the packing instruction for lithium ion batteries.</param>
/// <param name="Charge">Greatest state of charge; null where the edition as held here sets none.</param>
/// <param name="ChargeFrom">Rated energy above which that limit binds; null where it binds all.</param>
/// <param name="ChargeBinds">Whether the limit is a duty; else it is advice.</param>
/// <param name="Aircraft">On which aircraft.</param>
/// <param name="Package">What a package of small batteries may hold; null where nothing of it is held.</param>
/// <param name="LargePackage">What a package of larger ones may hold.</param>
public sealed record CargoFormRule(
    int PackingInstruction,
    Sourced<Ratio>? Charge, Sourced<Energy>? ChargeFrom, bool ChargeBinds, Sourced<string> Aircraft, Sourced<string>? Package,
    Sourced<PackageMass> LargePackage);

/// <summary>The most that the batteries in one package of air cargo may weigh, without the equipment.</summary>
/// <param name="Section">The section of the packing instruction.</param>
/// <param name="Passenger">On passenger aircraft; null where none flies there.</param>
/// <param name="Cargo">On cargo aircraft.</param>
public sealed record PackageMass(string Section, Mass? Passenger, Mass Cargo);

/// <summary>What an edition of the rules says of rechargeable lithium batteries as air cargo.</summary>
public sealed record CargoRules
{
    /// <summary>Batteries on their own.</summary>
    public required CargoFormRule Loose { get; init; }

    /// <summary>Batteries packed with equipment.</summary>
    public required CargoFormRule PackedWithEquipment { get; init; }

    /// <summary>Batteries in equipment.</summary>
    public required CargoFormRule InEquipment { get; init; }

    /// <summary>Up to and including this a battery counts as small, with fewer duties on marks and papers.</summary>
    public required Sourced<Energy> SmallBattery { get; init; }

    /// <summary>What else a shipper must see to, each with its source.</summary>
    public required IReadOnlyList<Sourced<string>> Duties { get; init; }

    /// <summary>The rule of a form.</summary>
    public CargoFormRule Of(CargoForm form) => form switch
    {
        CargoForm.Loose => Loose,
        CargoForm.PackedWithEquipment => PackedWithEquipment,
        _ => InEquipment,
    };
}
