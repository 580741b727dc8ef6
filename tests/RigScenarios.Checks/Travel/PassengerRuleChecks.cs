using RigScenarios.Answers;
using RigScenarios.Travel;

namespace RigScenarios.Checks.Travel;

/// <summary>The passenger rules, case by case. The source stands above each case.</summary>
[Source(SourceKind.Regulation, "Federal Aviation Administration, \"Airline passengers and batteries\", with its pages on spare "
    + "batteries; read in the source; what rests on something else says so above the case")]
public class PassengerRuleChecks
{
    // Federal Aviation Administration, "Airline passengers and batteries" (read): up to 100 Wh without approval; 101 to 160 Wh
    // with the airline's approval; over 160 Wh forbidden.
    // The same limits hold for installed batteries (same page).
    [Theory]
    [InlineData(99, false, false, 1)]
    [InlineData(100, false, false, 0)]
    [InlineData(100.08, true, false, 59.92)]
    [InlineData(101, true, false, 59)]
    [InlineData(160, true, false, 0)]
    [InlineData(160.5, false, true, -0.5)]
    [InlineData(161, false, true, -1)]
    public void The_lines_at_100_and_160_watt_hours(double wattHours, bool approval, bool stopped, double margin)
    {
        foreach (var edition in RuleEditions.All)
        {
            foreach (var installed in (bool[])[false, true])
            {
                var check = FlightCheck.Of(Batteries.Spare(wattHours) with { Installed = installed }, edition.Passengers);
                Assert.Equal((approval, stopped), (check.NeedsApproval, check.StoppedBy is not null));
                Assert.Equal(margin, check.Margin.WattHours, 1e-9);
            }
        }
    }

    // Same page, and its copy of 2 January 2017 (read): up to two spare batteries of 101 to 160 Wh a person.
    [Theory]
    [InlineData(1, 2, 2)]
    [InlineData(1, 3, 2)]
    [InlineData(2, 3, 3)]
    [InlineData(2, 5, 4)]
    public void Two_large_spares_a_person(int travellers, int packed, int fly)
    {
        var answer = Batteries.Fly(Batteries.Addendum, travellers, Batteries.Spare(150, packed));
        Assert.Equal(fly, answer.Lists.Sum(list => list.Lines.Sum(line => line.Count)));
        Assert.Equal(packed - fly, answer.Left.Sum(left => left.Count));
        Assert.Equal(fly, answer.Approvals.Sum(item => item.Line.Count));
        Each.Of(answer.Lists, list => Assert.InRange(list.Lines.Sum(line => line.Count), 1, 2));
    }

    // Its page for passengers: "Each person is allowed a total of 20 spare batteries [or powerbanks] unless an airline has
    // approved the carriage of more. The 20 spare batteries can be all dry-cell batteries or all nickel-metal hydride batteries
    // or a combination of dry-cell, nickel-metal hydride, non-spillable and lithium batteries."
    [Source(SourceKind.Regulation, "Civil Aviation Authority of New Zealand, What can I bring: batteries, dry-cell and "
        + "nickel-metal hydride (aviation.govt.nz); read in the source")]
    [Theory]
    [InlineData(20, 0, 0, 0)]
    [InlineData(21, 0, 0, 1)]
    [InlineData(18, 2, 0, 0)]
    [InlineData(20, 2, 0, 2)]
    [InlineData(17, 1, 2, 0)]
    [InlineData(19, 1, 1, 1)]
    [InlineData(20, 2, 2, 4)]
    public void Twenty_spares_of_any_kind_a_person(int small, int large, int banks, int stay)
    {
        PackedBattery[] packed =
        [
            Batteries.Spare(98, small), Batteries.Spare(150, large) with { Name = "large" },
            Batteries.Spare(74, banks) with { Name = "bank", PowerBank = true },
        ];
        foreach (var date in (DateOnly[])[Batteries.January2026, Batteries.Addendum])
        {
            var answer = Batteries.Fly(date, 1, [.. packed.Where(battery => battery.Count > 0)]);
            Assert.Equal(stay, answer.Left.Sum(left => left.Count));
            Each.Of(answer.Left, left => Assert.Contains("Ask the airline", left.Remedy, StringComparison.Ordinal),
                atLeast: Math.Sign(stay));
        }
    }

    // "Lithium Batteries 2024" (handbook), p. 35 (read): up to 15 devices a person.
    [Source(SourceKind.Handbook, "Lithium Batteries 2024 (handbook of transport rules), p. 35: up to 15 devices; read in the "
        + "source")]
    [Theory]
    [InlineData(15, 0)]
    [InlineData(16, 1)]
    public void Fifteen_devices_a_person(int packed, int stay) =>
        Assert.Equal(stay, Batteries.Fly(Batteries.January2026, 1,
            Batteries.Spare(16, packed) with { Installed = true }).Left.Sum(left => left.Count));

    // 49 CFR 175.10(a), edition of 1 October 2018, p. 832 (read): each spare battery protected against short circuit by
    // packaging, tape, or a bag or pouch of its own.
    [Source(SourceKind.Regulation, "United States, 49 CFR 175.10(a), edition of 1 October 2018, p. 832; read in the source")]
    [Fact]
    public void A_spare_battery_with_bare_contacts_stays_and_one_in_its_device_does_not()
    {
        var spare = Batteries.Fly(Batteries.Addendum, 1, Batteries.Spare(98) with { ContactsCovered = false });
        Assert.Equal("contacts open", Assert.Single(spare.Left).Margin);
        Assert.Empty(spare.Lists);
        Assert.Empty(Batteries.Fly(Batteries.Addendum, 1,
            Batteries.Spare(98) with { ContactsCovered = false, Installed = true }).Left);
    }

    // Federal Aviation Administration, pages on spare batteries (read): spare ones in the cabin only.
    [Fact]
    public void Spare_batteries_go_in_the_cabin_bag() =>
        Assert.StartsWith("cabin bag",
            TravelWords.Place(Batteries.Fly(Batteries.Addendum, 1, Batteries.Spare(98)).Lists[0].Lines[0],
                Batteries.Rules2026.Passengers),
            StringComparison.Ordinal);

    // P. 35: "if devices are carried in checked baggage: (a) measures must be taken to protect the device from damage and to
    // prevent unintentional activation; (b) ..." completely switched off, not in sleep or hibernation mode (from memory; a news
    // report of 12 March 2026 on the 67th edition has "completely switched off").
    [Source(SourceKind.Handbook, "Lithium Batteries 2023 (handbook of transport rules), p. 35, devices in checked baggage; read "
        + "in the source; \"completely switched off\" second-hand")]
    [Theory]
    [InlineData("fully off")]
    [InlineData("protected from being switched on")]
    [InlineData("from damage")]
    public void A_device_in_the_hold(string words) => Assert.Contains(words, TravelWords.Place(
        Batteries.Fly(Batteries.Addendum, 1, Batteries.Spare(98) with { Installed = true }).Lists[0].Lines[0],
        Batteries.Rules2026.Passengers),
        StringComparison.Ordinal);

    // The letter: professional timekeepers carry devices and spare batteries up to 100 Wh for sporting events, not for resale. Is
    // that prohibited? "The answer is no."
    [Source(SourceKind.Regulation, "Pipeline and Hazardous Materials Safety Administration, interpretation response 23-0051, "
        + "17 August 2023; read in the source but for its end")]
    [Fact]
    public void Work_with_ones_own_devices_is_no_reason_to_stay()
    {
        foreach (var edition in RuleEditions.All)
            Assert.Contains(edition.Passengers.Conduct, rule => rule.Value.Contains("counts as personal use",
                StringComparison.Ordinal) && rule.Source.Title.Contains("23-0051", StringComparison.Ordinal));
    }

    // "If the battery's sole purpose is to provide power to another device, it must be treated as a spare battery": in the cabin.
    [Source(SourceKind.Regulation, "Pipeline and Hazardous Materials Safety Administration, interpretation response 17-0081, "
        + "2 August 2018; read in the source")]
    [Theory]
    [InlineData(98, BaggageKind.SmallSpare)]
    [InlineData(150, BaggageKind.LargeSpare)]
    public void A_battery_that_powers_other_devices_is_a_spare_one(double wattHours, BaggageKind kind) =>
        Assert.Equal(kind, FlightCheck.Of(Batteries.Spare(wattHours) with { PowerBank = true },
            RuleEditions.On(Batteries.December2025).Rules.Passengers).Kind);
}
