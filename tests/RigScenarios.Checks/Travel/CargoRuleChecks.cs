using RigScenarios.Answers;
using RigScenarios.Travel;
using UnitsNet;

namespace RigScenarios.Checks.Travel;

/// <summary>The rules for air cargo, case by case. The source stands above each case.</summary>
[Source(SourceKind.Regulation, "International Air Transport Association, Dangerous Goods Regulations, packing instructions 965 "
    + "to 967; second-hand, what was read stands above each case")]
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
    [InlineData("2024-12-31", 98, 60, false)]
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

    // A training company's summary of 21 October 2024: in 2025 at most 30 % is recommended for what is packed with equipment and
    // for what is in it, and nothing is said for 2024.
    [Source(SourceKind.Regulation, "International Air Transport Association, Dangerous Goods Regulations, 66th edition (2025), "
        + "packing instructions 966 and 967; second-hand, read at lion.com")]
    [Theory]
    [InlineData("2024-12-31", false, "no limit on charge")]
    [InlineData("2024-12-31", true, "no limit on charge")]
    [InlineData("2025-01-01", false, "advice, no duty: at most 30 % charge; 30 points over it")]
    [InlineData("2025-12-31", true, "advice, no duty: at most 30 % charge; 30 points over it")]
    [InlineData("2026-01-01", true, "advice, no duty: at most 30 % charge; 30 points over it")]
    [InlineData("2026-01-01", false, "at most 30 % charge; 30 points over it")]
    public void Thirty_percent_is_advice_in_2025(string date, bool installed, string words)
    {
        var check = Batteries.Ship(DateOnly.Parse(date, null),
            Batteries.Spare(150) with { WithEquipment = !installed, Installed = installed, Charge = Percent(60) });
        Assert.StartsWith(words, check.ChargeWords, StringComparison.Ordinal);
        Assert.Equal(check.Rule.ChargeBinds, check.StoppedBy is not null);
    }

    // dg-packaging.nl, UN 3481, packing instructions 966 and 967, section I (read): 5 kg of batteries a package on passenger
    // aircraft, 35 kg on cargo aircraft. Its page on 965 forbids passenger aircraft; 35 kg there is from memory.
    [Theory]
    [InlineData(false, false, 965, null, 35)]
    [InlineData(true, false, 966, 5.0, 35)]
    [InlineData(false, true, 967, 5.0, 35)]
    public void Kilograms_a_package_above_100_watt_hours(bool withEquipment, bool installed, int instruction, double? passenger,
        double cargo)
    {
        var rule = Batteries.Ship(Batteries.Addendum,
            Batteries.Spare(190) with { WithEquipment = withEquipment, Installed = installed }).Rule;
        Assert.Equal((instruction, passenger, cargo), (rule.PackingInstruction, rule.LargePackage.Value.Passenger?.Kilograms,
            rule.LargePackage.Value.Cargo.Kilograms));
    }

    // The letter's example: four devices, each with a battery of up to 5 kg. On passenger aircraft a package holds at most 5 kg
    // net, on cargo aircraft 35 kg; so 20 kg can't go in one package on a passenger aircraft, and 40 kg in none.
    [Source(SourceKind.Regulation, "Research and Special Programs Administration, interpretation response 98-0544, 11 June 1998; "
        + "read in the source")]
    [Theory]
    [InlineData(1, "these weigh 5.0 kg")]
    [InlineData(4, "these weigh 20.0 kg, so several packages or a cargo aircraft")]
    [InlineData(7, "these weigh 35.0 kg, so several packages or a cargo aircraft")]
    [InlineData(8, "these weigh 40.0 kg, too much for one package")]
    public void Twenty_kilograms_are_too_much_for_a_package_on_a_passenger_aircraft(int count, string words) =>
        Assert.EndsWith(words, TravelWords.Of(Batteries.Ship(Batteries.January2026,
            Batteries.Spare(190, count) with { WithEquipment = true, Mass = Mass.FromKilograms(5) })), StringComparison.Ordinal);

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
