using RigScenarios.Answers;
using RigScenarios.Travel;
using UnitsNet;

namespace RigScenarios.Checks.Travel;

/// <summary>The rules for air cargo, case by case. The source stands above each case.</summary>
public class CargoRuleChecks
{
    private static Ratio Percent(double percent) => Ratio.FromPercent(percent);

    // United Nations, list of dangerous goods; read in "Lithium Batteries 2024", p. 114 and 122, for UN 3480 and 3481. UN 3090
    // and 3091 are named together with them in
    // packing instruction P903 (International Maritime Dangerous Goods Code, read); which of the two is which, from memory.
    [Theory]
    [InlineData(LithiumKind.Ion, CargoForm.Loose, 3480)]
    [InlineData(LithiumKind.Ion, CargoForm.PackedWithEquipment, 3481)]
    [InlineData(LithiumKind.Ion, CargoForm.InEquipment, 3481)]
    [InlineData(LithiumKind.Metal, CargoForm.Loose, 3090)]
    [InlineData(LithiumKind.Metal, CargoForm.PackedWithEquipment, 3091)]
    [InlineData(LithiumKind.Metal, CargoForm.InEquipment, 3091)]
    public void Entries_of_the_list(LithiumKind kind, CargoForm form, int number) =>
        Assert.Equal(number, UnEntry.Of(kind, form).Number);

    // 84 FR 8006 (6 March 2019) and 87 FR 77995 (21 December 2022) (read): loose batteries at most at 30 % of rated capacity, on
    // cargo aircraft only.
    [Theory]
    [InlineData(30, false)]
    [InlineData(30.5, true)]
    [InlineData(100, true)]
    public void Loose_ones_fly_at_30_percent_on_cargo_aircraft_only(double charge, bool stopped)
    {
        foreach (var date in (DateOnly[])[Batteries.December2025, Batteries.January2026, Batteries.Addendum])
        {
            var check = Batteries.Ship(date, Batteries.Spare(98) with { Charge = Percent(charge) });
            Assert.Equal((3480, stopped), (check.Entry.Number, check.StoppedBy is not null));
            Assert.Equal(30 - charge, check.ChargeMargin!.Value.Percent, 1e-9);
            Assert.StartsWith("cargo aircraft only", check.Rule.Aircraft.Value, StringComparison.Ordinal);
        }
    }

    // International Air Transport Association, Dangerous Goods Regulations, 67th edition, packing instruction 966 (read in two
    // freight companies' summaries): from 1 January 2026
    // cells and batteries above 2.7 Wh packed with equipment at most at 30 %.
    [Theory]
    [InlineData("2025-12-31", 98, 60, false)]
    [InlineData("2026-01-01", 98, 60, true)]
    [InlineData("2026-01-01", 98, 30, false)]
    [InlineData("2026-01-01", 2.7, 60, false)]
    [InlineData("2026-01-01", 2.8, 60, true)]
    public void Packed_with_equipment_since_2026(string date, double wattHours, double charge, bool stopped)
    {
        var check = Batteries.Ship(DateOnly.Parse(date, null),
            Batteries.Spare(wattHours) with { WithEquipment = true, Charge = Percent(charge) });
        Assert.Equal((3481, 966, stopped), (check.Entry.Number, check.Rule.PackingInstruction, check.StoppedBy is not null));
    }

    // The same summaries: contained in equipment, at most 30 % is advice and no duty.
    [Fact]
    public void In_equipment_the_charge_is_advice()
    {
        var check = Batteries.Ship(Batteries.January2026, Batteries.Spare(98) with { Installed = true, Charge = Percent(80) });
        Assert.Equal((3481, 967, false), (check.Entry.Number, check.Rule.PackingInstruction, check.StoppedBy is not null));
        Assert.StartsWith("advice, no duty", check.ChargeWords, StringComparison.Ordinal);
    }

    // 49 CFR 173.185(c)(1)(i) (second-hand): small is up to 100 Wh a battery.
    [Theory]
    [InlineData(100, true)]
    [InlineData(101, false)]
    public void Small_batteries(double wattHours, bool small) =>
        Assert.Equal(small, Batteries.Ship(Batteries.January2026, Batteries.Spare(wattHours)).Small);

    // dg-packaging.nl, UN 3480, packing instruction 965 section IB (read): 10 kg net a package; forbidden on passenger aircraft.
    [Fact]
    public void Ten_kilograms_a_package_for_small_loose_ones() =>
        Assert.Contains("at most 10 kg", TravelWords.Of(Batteries.Ship(Batteries.January2026, Batteries.Spare(98))),
            StringComparison.Ordinal);

    [Fact]
    public void Without_a_charge_the_limit_is_told_and_nothing_is_claimed()
    {
        var check = Batteries.Ship(Batteries.January2026, Batteries.Spare(98));
        Assert.Null(check.ChargeMargin);
        Assert.Equal("at most 30 % charge; its charge is not given", check.ChargeWords);
    }
}
