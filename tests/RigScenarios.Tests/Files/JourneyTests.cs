using RigScenarios.Files;
using RigScenarios.Scenarios;
using RigScenarios.Travel;

namespace RigScenarios.Tests.Files;

public sealed class JourneyTests
{
    private static readonly DateOnly Today = new(2026, 11, 25);

    private static string With(string journey, string kit = "") =>
        SmallScenario.Text().Replace("kit: {flat: {part: flat}", $"kit: {{flat: {{part: flat, count: 3}}{kit}",
            StringComparison.Ordinal) + $"\njourneys:\n  out: {journey}\n";

    private static TravelAnswer Answer(string journey) =>
        ScenarioTravel.Answer(SmallScenario.Read(With(journey)), "out", Today, TestContext.Current.CancellationToken);

    private static IReadOnlyList<Diagnostic> Problems(string journey)
    {
        using var folder = new TemporaryFolder();
        return ScenarioFile.TryRead(folder.Write("scenario.yaml", With(journey))).Problems;
    }

    [Fact]
    public void Left_empty_a_journey_is_a_flight_of_one_traveller_today_with_all_batteries()
    {
        var answer = Answer("{}");
        Assert.Equal((Today, 1), (answer.Journey.Date, answer.Journey.Travellers.Count));
        Assert.Equal([Leg.Flight], answer.Journey.Legs);
        var line = Assert.Single(Assert.Single(answer.Lists).Lines);
        Assert.Equal((3, 0.0, false), (line.Count, line.Check.Margin.WattHours, line.Battery.Installed));
    }

    [Fact]
    public void A_scenario_without_journeys_is_answered_for_a_plain_flight()
    {
        var answer = ScenarioTravel.PlainFlight(SmallScenario.Read(SmallScenario.Text()), Today,
            TestContext.Current.CancellationToken);
        Assert.Equal(Today, answer.Journey.Date);
        Assert.Equal(1, answer.Lists.Single().Lines.Single().Count);
    }

    [Fact]
    public void Some_of_a_kind_can_be_in_equipment_and_the_others_spare()
    {
        var answer = Answer("{date: 2026-12-03, travellers: [Ada, Ben], by: [road, flight], packed: {flat: {installed: 1}}}");
        Assert.Equal([(true, 1), (false, 2)], answer.Journey.Batteries.Select(battery => (battery.Installed, battery.Count)));
        Assert.Equal(["Ada", "Ben"], answer.Lists.Select(list => list.Traveller));
        Assert.Equal(new DateOnly(2026, 12, 3), answer.Journey.Date);
    }

    [Theory]
    [InlineData("{date: 3.12.26}", "journeys.out.date", "2026-12-03")]
    [InlineData("{date: 2026-02-30}", "journeys.out.date", "year-month-day")]
    [InlineData("{by: fligt}", "journeys.out.by", "Did you mean \"flight\"?")]
    [InlineData("{by: []}", "journeys.out.by", "flight, cargo, road")]
    [InlineData("{travellers: 0}", "journeys.out.travellers", "1 to 50")]
    [InlineData("{travellers: []}", "journeys.out.travellers", "1 to 50")]
    [InlineData("{travellers: [Ada, Ada]}", "journeys.out.travellers", "Two travellers are named \"Ada\"")]
    [InlineData("{batteries: [flatt]}", "journeys.out.batteries.1", "Did you mean \"flat\"?")]
    [InlineData("{batteries: [flat, flat]}", "journeys.out.batteries.2", "twice")]
    [InlineData("{batteries: [camera]}", "journeys.out.batteries.1", "is not a battery")]
    [InlineData("{packed: {flat: {installed: 4}}}", "journeys.out.packed.flat.installed", "only 3")]
    [InlineData("{packed: {light: {installed: 1}}}", "journeys.out.packed.light", "is not a battery")]
    [InlineData("{packed: {flat: {charge: 28}}}", "journeys.out.packed.flat.charge", "28 %")]
    [InlineData("{packed: {flat: {contacts: no}}}", "journeys.out.packed.flat.contacts", "contacts-covered")]
    public void Slips_are_told_with_their_place_and_what_is_accepted(string journey, string path, string words)
    {
        var problem = Assert.Single(Problems(journey));
        Assert.Equal((Severity.Error, path), (problem.Severity, problem.Path));
        Assert.True(problem.At.Line > 1);
        Assert.Contains(words, problem.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_written_scenario_reads_back_with_the_same_journeys()
    {
        var text = With("{title: Out, date: 2026-12-03, by: [road, flight], travellers: [Ada, Ben], batteries: [flat], "
            + "packed: {flat: {installed: 1, contacts-covered: no, power-bank: yes, with-equipment: yes, charge: 28 %}}}")
            + "  back: {travellers: 3, by: cargo}\n";
        var scenario = SmallScenario.Read(text);
        var written = ScenarioFile.Text(scenario);
        Assert.Equal(written, ScenarioFile.Text(SmallScenario.Read(written)));
        var back = SmallScenario.Read(written).Journeys;
        Assert.Equal(scenario.Journeys["out"].Packed, back["out"].Packed);
        Assert.Equal(new Travellers(["Ada", "Ben"], true), back["out"].Travellers);
        Assert.Equal(Travellers.Of(3), back["back"].Travellers);
        Assert.Equal([Leg.Road, Leg.Flight], back["out"].By);
        Assert.Equal([Leg.Cargo], back["back"].By);
        Assert.Equal(scenario.Journeys["out"].Date, back["out"].Date);
    }

    [Fact]
    public void What_if_by_path()
    {
        var scenario = ScenarioPath.SetAll(SmallScenario.Read(With("{travellers: 1, packed: {flat: {installed: 1}}}")),
            [("journeys.out.date", "2027-02-01"), ("journeys.out.by", "cargo"), ("journeys.out.travellers", "4"),
                ("journeys.out.packed.flat.charge", "40 %")]);
        var answer = ScenarioTravel.Answer(scenario, "out", Today, TestContext.Current.CancellationToken);
        Assert.False(answer.Rules.Covered);
        Assert.Equal(4, answer.Journey.Travellers.Count);
        Assert.Equal([-10.0, -10.0], answer.Consignment.Select(check => check.ChargeMargin!.Value.Percent));
    }

    [Fact]
    public void A_kit_without_a_battery_makes_no_journey()
    {
        using var folder = new TemporaryFolder();
        var text = With("{}").Replace("flat: {part: flat, count: 3}, ", "", StringComparison.Ordinal);
        Assert.Contains(ScenarioFile.TryRead(folder.Write("scenario.yaml", text)).Problems,
            problem => problem.Path == "journeys.out"
            && problem.Problem.Contains("No battery travels", StringComparison.Ordinal));
    }
}
