using RigScenarios.Answers;
using RigScenarios.Cells;
using RigScenarios.Travel;
using UnitsNet;
using static RigScenarios.Tests.Travel.TravelCases;

namespace RigScenarios.Tests.Travel;

public sealed class TravelPlanTests
{
    [Fact]
    public void Editions_follow_each_other_without_a_gap_and_each_rule_names_its_source()
    {
        foreach (var (one, next) in RuleEditions.All.Zip(RuleEditions.All.Skip(1)))
            Assert.Equal(one.Until.AddDays(1), next.From);
        foreach (var edition in RuleEditions.All)
        {
            var passengers = edition.Passengers;
            Citation[] sources =
            [
                passengers.WithoutApproval.Source, passengers.WithApproval.Source, passengers.Spares.Source,
                passengers.LargeSpares.Source, passengers.Outlets.Source, passengers.Devices.Source,
                passengers.Contacts.Source, passengers.SparesPlace.Source, passengers.DevicesPlace.Source,
                .. passengers.Conduct.Select(rule => rule.Source),
                edition.Cargo.SmallBattery.Source, .. edition.Cargo.Duties.Select(rule => rule.Source),
                .. Enum.GetValues<CargoForm>().Select(form => edition.Cargo.Of(form).LargePackage.Source),
                edition.Road.Small.Source, edition.Road.AskedOfSmall.Source, edition.Road.AskedOfDevices.Source,
                edition.Road.AskedOfLarge.Source,
                edition.Road.InOneVehicle.Source, .. edition.Road.Besides.Select(rule => rule.Source),
            ];
            Each.Of(sources,
                source =>
                Assert.True(source.Title.Length > 5 && (source.Where.Length > 5 || source.Year is not null
                || source.Standing == Standing.FromMemory), source.ToString()));
        }
    }

    [Theory]
    [InlineData("2023-12-31", false, 0)]
    [InlineData("2024-01-01", true, 0)]
    [InlineData("2024-12-31", true, 0)]
    [InlineData("2025-01-01", true, 1)]
    [InlineData("2026-03-26", true, 2)]
    [InlineData("2026-03-27", true, 3)]
    [InlineData("2026-12-31", true, 3)]
    [InlineData("2027-01-01", false, 3)]
    public void The_date_picks_the_edition_and_a_date_outside_is_told_loudly(string date, bool covered, int edition)
    {
        var rules = RuleEditions.On(DateOnly.Parse(date, null));
        Assert.Equal((covered, RuleEditions.All[edition]), (rules.Covered, rules.Rules));
        if (!covered)
            Assert.StartsWith("NO RULES ARE HELD FOR", rules.Warning, StringComparison.Ordinal);
    }

    [Fact]
    public void Twenty_spare_batteries_are_twenty_with_the_large_ones_and_the_power_banks_among_them()
    {
        var answer = TravelPlan.For(Flight(1, [Some("small", 98, 20), Some("large", 150, 2),
            Some("bank", 74, 2) with { PowerBank = true }]), TestContext.Current.CancellationToken);
        var lines = Assert.Single(answer.Lists).Lines.ToDictionary(line => line.Battery.Name, line => line.Count);
        Assert.Equal((18, 2, false), (lines["small"], lines["large"], lines.ContainsKey("bank")));
        Assert.Equal(4, answer.Left.Sum(left => left.Count));
        Each.Of(answer.Left, left => Assert.StartsWith($"{left.Count} over the number: 20 a person", left.Margin,
            StringComparison.Ordinal));
    }

    [Fact]
    public void Work_can_be_stopped()
    {
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        Assert.Throws<OperationCanceledException>(() =>
            TravelPlan.For(Flight(3, RandomBatteries(new Random(1), 5, 5)), stop.Token));
    }

    [Fact]
    public void No_sentence_gives_permission()
    {
        string[] promises = ["allowed", "permitted", "you may ", "safe ", "safely", "no problem", "is fine"];
        Drawn.Cases(firstSeed: 11, cases: 40, random =>
        {
            var journey = Flight(2, RandomBatteries(random, 4, 3)) with { Legs = [Leg.Road, Leg.Flight, Leg.Cargo],
                Date = Date.AddDays(-200 * random.Next(5)) };
            var answer = TravelPlan.For(journey, TestContext.Current.CancellationToken);
            var words = string.Join('\n', [TravelWords.Headline(answer), .. TravelWords.Cautions(answer),
                .. answer.Left.Select(left => left.Remedy + left.StoppedBy.Value), .. answer.Consignment.Select(TravelWords.Of),
                .. answer.Road.Select(check => TravelWords.Of(check, answer.Rules.Rules.Road))]);
            Each.Of(promises, promise => Assert.DoesNotContain(promise, words, StringComparison.OrdinalIgnoreCase));
            Assert.Contains("This is no permission.", words, StringComparison.Ordinal);
            Assert.Contains("stricter", words, StringComparison.Ordinal);
        });
    }

    [Theory]
    [InlineData(98, 2, true)]
    [InlineData(98, 1, false)]
    [InlineData(150, 1, true)]
    public void Batteries_that_an_airline_may_take_for_power_banks_are_flagged_where_it_would_matter(double wattHours, int count,
        bool flagged) => Assert.Equal(flagged, Cautions(Flight(1, [Some("brick", wattHours, count)]))
            .Any(caution => caution.Contains("if its main function is to give portable power", StringComparison.Ordinal)));

    [Fact]
    public void A_label_that_disagrees_with_volts_and_ampere_hours_is_told()
    {
        var rated = Label(95, 14.4, 7.2);
        Assert.Contains("103.68 Wh", TravelWords.Doubt(rated, Passengers), StringComparison.Ordinal);
        Assert.Null(TravelWords.Doubt(Label(95, 14.4, 6.7), Passengers));
        Assert.Contains("an inspector may compute", TravelWords.Doubt(Label(95, 14.4, 6.3), Passengers),
            StringComparison.Ordinal);
        var battery = new RigScenarios.Parts.Battery { Energy = Energy.FromWattHours(95),
            Voltage = ElectricPotential.FromVolts(14.4) };
        Assert.Null(TravelWords.Doubt(RatedEnergy.Of(battery, []), Passengers));
        var assumed = RatedEnergy.Of(battery, ["battery.energy", "battery.voltage"]);
        Assert.Equal(WattHourBasis.Assumed, assumed.Basis);
        Assert.Contains("Read the label", TravelWords.Doubt(assumed, Passengers), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(98, 14.8, 6.8, "100")]
    [InlineData(101, 14.4, 6.9, "100")]
    [InlineData(160, 14.4, 11.2, "160")]
    [InlineData(100, 14.8, 6.756, null)]
    [InlineData(98, 14.4, 6.8, null)]
    public void A_label_on_another_side_of_a_limit_than_volts_times_ampere_hours_is_told_however_near(double label, double volts,
        double ampereHours, string? limit)
    {
        var doubt = TravelWords.Doubt(Label(label, volts, ampereHours), Passengers);
        if (limit is null)
            Assert.Null(doubt);
        else
            Assert.Contains($"on the other side of {limit} Wh", doubt, StringComparison.Ordinal);
        var packed = Some("brick", label, 1) with { Rated = Label(label, volts, ampereHours) };
        Assert.Equal(limit is not null, Cautions(Flight(1, [packed]))[0].StartsWith("brick: The label says",
            StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("10 Ah", false)]
    [InlineData("10.1 Ah", true)]
    public void Two_sides_of_a_limit_are_told_in_every_answer_with_a_journey(string capacity, bool told)
    {
        var text = SmallScenario.Text().Replace("capacity: 10 Ah", $"capacity: {capacity}", StringComparison.Ordinal)
            + "\njourneys: {out: {date: 2026-12-03}}\n";
        var answer = RigAnswer.Of(SmallScenario.Read(text), "one", [], cancellation: TestContext.Current.CancellationToken);
        Assert.Equal(told, AnswerCautions.Of(answer).Any(caution => caution.StartsWith(
            "Flat battery: The label says 100 Wh, but V × Ah gives 101 Wh: on the other side of 100 Wh",
            StringComparison.Ordinal)));
    }

    [Fact]
    public void A_device_in_the_hold_is_off_and_protected_in_the_answer_itself()
    {
        var answer = TravelPlan.For(Flight(1, [Some("brick", 98, 1) with { Installed = true }]),
            TestContext.Current.CancellationToken);
        var place = TravelWords.Place(answer.Lists[0].Lines[0], answer.Rules.Rules.Passengers);
        Each.Of((string[])["fully off", "not in standby", "being switched on", "from damage"],
            words => Assert.Contains(words, place, StringComparison.Ordinal));
    }

    [Fact]
    public void What_a_crew_must_know_of_numbers_work_and_power_banks_is_among_the_cautions()
    {
        var cautions = string.Join('\n', Cautions(Flight(2, [Some("brick", 98, 4)])));
        Each.Of((string[])["AA and NiMH cells", "crew's work with its own devices counts as personal use", "23-0051",
            "not in the overhead locker", "not charged on board", "CCC mark"],
            words => Assert.Contains(words, cautions, StringComparison.Ordinal));
    }

    [Fact]
    public void A_package_that_is_too_heavy_for_a_passenger_aircraft_is_told()
    {
        static string Words(int count, double? kilograms)
        {
            var mass = kilograms is { } known ? Mass.FromKilograms(known) : (Mass?)null;
            return TravelWords.Of(TravelPlan.For(Flight(1, [Some("brick", 190, count) with { WithEquipment = true, Mass = mass }])
                with { Legs = [Leg.Cargo] }).Consignment[0]);
        }

        Assert.Contains("these weigh 2.4 kg", Words(2, 1.2), StringComparison.Ordinal);
        Assert.EndsWith("these weigh 6.0 kg, so several packages or a cargo aircraft", Words(5, 1.2), StringComparison.Ordinal);
        Assert.EndsWith("these weigh 36.0 kg, too much for one package", Words(30, 1.2), StringComparison.Ordinal);
        Assert.EndsWith("their mass is not given", Words(1, null), StringComparison.Ordinal);
    }

    [Fact]
    public void By_road_what_is_above_100_watt_hours_is_told_apart()
    {
        var answer = TravelPlan.For(Flight(1, [Some("small", 98, 2), Some("large", 150, 1)]) with { Legs = [Leg.Road] },
            TestContext.Current.CancellationToken);
        Assert.Equal("By road 1 of 3 is dangerous goods of class 9.", TravelWords.Headline(answer));
        Assert.Contains("special provision 188", TravelWords.Of(answer.Road[0], answer.Rules.Rules.Road),
            StringComparison.Ordinal);
        Assert.Contains("P903", TravelWords.Of(answer.Road[1], answer.Rules.Rules.Road), StringComparison.Ordinal);
        Assert.Contains(TravelWords.Cautions(answer), caution => caution.StartsWith("By post", StringComparison.Ordinal));
        Each.HasNot(TravelWords.Cautions(answer), caution => caution.Contains("power bank", StringComparison.Ordinal));
    }

    [Fact]
    public void A_journey_without_a_leg_or_with_a_group_of_none_is_refused()
    {
        Assert.Throws<ArgumentException>(() => TravelPlan.For(Flight(1, [Some("brick", 98, 1)]) with { Legs = [] },
            TestContext.Current.CancellationToken));
        Assert.Throws<ArgumentException>(() => TravelPlan.For(Flight(1, [Some("brick", 98, 0)]),
            TestContext.Current.CancellationToken));
        Assert.Throws<ArgumentOutOfRangeException>(() => Travellers.Of(0));
    }

    private static PassengerRules Passengers => RuleEditions.On(Date).Rules.Passengers;

    private static IReadOnlyList<string> Cautions(Journey journey) => TravelWords.Cautions(TravelPlan.For(journey));

    private static RatedEnergy Label(double wattHours, double volts, double ampereHours) =>
        RatedEnergy.Of(new RigScenarios.Parts.Battery
        {
            Energy = Energy.FromWattHours(wattHours), Voltage = ElectricPotential.FromVolts(volts),
            Capacity = ElectricCharge.FromAmpereHours(ampereHours),
        }, []);
}
