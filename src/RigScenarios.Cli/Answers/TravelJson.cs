using System.Globalization;
using RigScenarios.Answers;
using RigScenarios.Limits;
using RigScenarios.Scenarios;
using RigScenarios.Travel;

namespace RigScenarios.Cli.Answers;

/// <summary>Travel answers for programs. The shape is documented in docs/json.md and held by a test; fields are added, never
/// changed.</summary>
internal static class TravelJson
{
    public static string Text(
        Scenario scenario, IReadOnlyList<(string Name, TravelAnswer Answer)> answers,
        IReadOnlyList<PlannedJourney> planned) => JsonText.Of(new
        {
            format = "rigscenarios travel 1",
            title = scenario.Title,
            verdict = planned.Count == 0 ? null : JourneySentences.Verdict(planned).InWords(),
            words = planned.Count == 0 ? null : JourneySentences.Line(planned),
            journeys = answers.Select(item => One(item.Name, item.Answer)),
        });

    private static object One(string name, TravelAnswer answer) => new
    {
        journey = name,
        title = answer.Journey.Title,
        date = Day(answer.Journey.Date),
        legs = answer.Journey.Legs.Select(TravelWords.Of),
        edition = answer.Rules.Rules.Name,
        edition_from = Day(answer.Rules.Rules.From),
        edition_until = Day(answer.Rules.Rules.Until),
        date_is_covered = answer.Rules.Covered,
        date_warning = answer.Rules.Warning,
        answer = TravelWords.Headline(answer),
        everything_goes = answer.EverythingGoes,
        share_is_proven = answer.ShareProven,
        travellers = answer.Lists.Select(list => new
        {
            traveller = list.Traveller,
            energy_Wh = JsonText.Round(list.Energy.WattHours),
            batteries = list.Lines.Select(line => new
            {
                battery = line.Battery.Name,
                title = line.Battery.Title,
                count = line.Count,
                energy_Wh = JsonText.Round(line.Battery.Rated.Energy.WattHours),
                energy_from = line.Battery.Rated.BasisWords,
                installed = line.Battery.Installed,
                place = TravelWords.Place(line, answer.Rules.Rules.Passengers),
                limit_Wh = JsonText.Round(line.Check.Limit.Value.WattHours),
                margin_Wh = JsonText.Round(line.Check.Margin.WattHours),
                needs_approval = line.Check.NeedsApproval,
                source = line.Check.Limit.Source.ToString(),
            }),
            numbers = list.Numbers.Select(number => new { what = number.What, used = number.Used, limit = number.Limit.Value,
                left = number.Left, source = number.Limit.Source.ToString() }),
        }),
        stays_behind = answer.Left.Select(left => new
        {
            battery = left.Battery.Name,
            title = left.Battery.Title,
            count = left.Count,
            margin = left.Margin,
            rule = left.StoppedBy.Value,
            source = left.StoppedBy.Source.ToString(),
            remedy = left.Remedy,
            as_cargo = left.AsCargo is { } cargo ? Cargo(cargo) : null,
        }),
        consignment = answer.Consignment.Select(Cargo),
        road = answer.Road.Select(check => new
        {
            battery = check.Battery.Name, count = check.Count, un = check.Entry.Number, shipping_name = check.Entry.ShippingName,
            small = check.Small, words = TravelWords.Of(check, answer.Rules.Rules.Road),
        }),
        cautions = TravelWords.Cautions(answer),
        sources = TravelWords.Sources(answer).Select(item => new { rule = item.Rule, source = item.Source.ToString() }),
    };

    private static object Cargo(CargoCheck check) => new
    {
        battery = check.Battery.Name,
        count = check.Count,
        un = check.Entry.Number,
        shipping_name = check.Entry.ShippingName,
        packing_instruction = check.Rule.PackingInstruction,
        aircraft = check.Rule.Aircraft.Value,
        charge_limit_percent = check.ChargeLimit is { } limit ? JsonText.Round(limit.Value.Percent) : (double?)null,
        charge_limit_binds = check.ChargeLimit is not null && check.Rule.ChargeBinds,
        charge_margin_percent = check.ChargeMargin is { } margin ? JsonText.Round(margin.Percent) : (double?)null,
        section = check.Small ? null : check.Rule.LargePackage.Value.Section,
        package_limit_passenger_kg = check.Small ? null : check.Rule.LargePackage.Value.Passenger?.Kilograms,
        package_limit_cargo_kg = check.Small ? (double?)null : check.Rule.LargePackage.Value.Cargo.Kilograms,
        net_mass_kg = check.NetMass is { } mass ? JsonText.Round(mass.Kilograms) : (double?)null,
        stopped_by = check.StoppedBy?.Value,
        remedy = check.Remedy,
    };

    private static string Day(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
