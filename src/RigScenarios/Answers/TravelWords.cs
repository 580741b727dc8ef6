using RigScenarios.Cells;
using RigScenarios.Travel;

namespace RigScenarios.Answers;

/// <summary>A travel answer in sentences for people.</summary>
public static class TravelWords
{
    /// <summary>The answer in one or two sentences.</summary>
    public static string Headline(TravelAnswer answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        var all = answer.Journey.Batteries.Sum(battery => battery.Count);
        var sentences = new List<string>();
        if (answer.Journey.Legs.Contains(Leg.Flight))
        {
            var staying = answer.Left.Sum(left => left.Count);
            sentences.Add(staying == 0
                ? $"Nothing in the rules held here keeps {(all == 1 ? "the battery" : $"the {all} batteries")} out of the "
                    + (answer.Journey.Travellers.Count == 1 ? "traveller's" : $"{answer.Journey.Travellers.Count} travellers'")
                    + " baggage, packed as listed."
                : $"{staying} of {all} {(all == 1 ? "battery" : "batteries")} can't fly with "
                    + $"{(answer.Journey.Travellers.Count == 1 ? "the traveller" : "the travellers")}: "
                        + string.Join("; ", answer.Left.Select(left => $"{left.Count} × {left.Battery.Title} ({left.Margin})"))
                        + ".");
            var approvals = answer.Approvals.Sum(item => item.Line.Count);
            if (approvals > 0)
                sentences.Add($"{approvals} need{(approvals == 1 ? "s" : "")} the airline's approval before the journey.");
        }
        if (answer.Journey.Legs.Contains(Leg.Cargo))
        {
            var stopped = answer.Consignment.Where(line => line.StoppedBy is not null).Sum(line => line.Count);
            sentences.Add(stopped == 0
                ? "As air cargo nothing that is given stops them; a trained shipper must see to the rest."
                : $"As air cargo {stopped} of {all} can't be handed over as {(stopped == 1 ? "it is" : "they are")}.");
        }
        if (answer.Journey.Legs.Contains(Leg.Road))
        {
            var large = answer.Road.Where(line => !line.Small).Sum(line => line.Count);
            sentences.Add(large == 0 ? "By road special provision 188 holds for all of them."
                : $"By road {large} of {all} {(large == 1 ? "is" : "are")} dangerous goods of class 9.");
        }
        return string.Join(' ', sentences);
    }

    /// <summary>The edition in one line, with the days on which it is held to be in force.</summary>
    public static string Edition(TransportRules rules)
    {
        ArgumentNullException.ThrowIfNull(rules);
        return $"{rules.Name} (held here for {RuleEditions.Day(rules.From)} to {RuleEditions.Day(rules.Until)})";
    }

    /// <summary>A day in words: "3 December 2026".</summary>
    public static string Day(DateOnly date) => RuleEditions.Day(date);

    /// <summary>A leg in words.</summary>
    public static string Of(Leg leg) => leg switch
    {
        Leg.Flight => "passenger flight",
        Leg.Cargo => "air cargo",
        _ => "road",
    };

    /// <summary>What batteries are as air cargo, in one line.</summary>
    public static string Of(CargoCheck check)
    {
        ArgumentNullException.ThrowIfNull(check);
        var package = !check.Small ? $"; above 100 Wh, so all rules for dangerous goods of class 9 hold: {Large(check)}"
            : check.Rule.Package is { } rule ? $"; {rule.Value}" : "";
        return $"{check.Entry} ({check.Entry.ShippingName}), packing instruction {check.Rule.PackingInstruction}; "
            + $"{check.Rule.Aircraft.Value}; {check.ChargeWords}{package}";
    }

    /// <summary>What batteries are by road, in one line.</summary>
    /// <param name="check">The batteries.</param>
    /// <param name="rules">The rules.</param>
    public static string Of(RoadCheck check, RoadRules rules)
    {
        ArgumentNullException.ThrowIfNull(check);
        ArgumentNullException.ThrowIfNull(rules);
        var asked = check.Battery.Installed ? rules.AskedOfDevices : rules.AskedOfSmall;
        return $"{check.Entry} ({check.Entry.ShippingName}); " + (check.Small
            ? $"up to {rules.Small.Value.WattHours:0} Wh, special provision 188: {asked.Value}"
            : $"above {rules.Small.Value.WattHours:0} Wh, {rules.AskedOfLarge.Value}; rules for vehicle and driver only above "
                + $"{rules.InOneVehicle.Value.Kilograms:0} kg");
    }

    /// <summary>Where a line of a packing list goes, and on what condition.</summary>
    /// <param name="line">The line.</param>
    /// <param name="rules">The edition's passenger rules.</param>
    public static string Place(PackingLine line, PassengerRules rules)
    {
        ArgumentNullException.ThrowIfNull(line);
        ArgumentNullException.ThrowIfNull(rules);
        return line.Battery.Installed ? rules.DevicesPlace.Value : "cabin bag, contacts covered";
    }

    /// <summary>Where a device with its battery goes: "best in the cabin; …".</summary>
    internal static string DevicesPlace(PassengerRules rules) => rules.DevicesPlace.Value["in its device, ".Length..];

    /// <summary>What to mind, the most general last.</summary>
    public static IReadOnlyList<string> Cautions(TravelAnswer answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        var cautions = new List<string>();
        var (passengers, cargo, road) = (answer.Rules.Rules.Passengers, answer.Rules.Rules.Cargo, answer.Rules.Rules.Road);
        cautions.AddRange(Doubts(answer, _ => true));
        if (answer.Journey.Legs.Contains(Leg.Flight))
        {
            if (MayBePowerBanks(answer))
                cautions.Add(passengers.Outlets.Value);
            cautions.AddRange(passengers.Conduct.Select(rule => rule.Value));
            cautions.Add($"The {passengers.Spares.Value} spare batteries a person are of any kind: AA and NiMH cells, phone "
                + "batteries and private power banks count with those of the lists, which hold only this scenario's. Phones "
                    + "and laptops count as devices.");
            cautions.Add("The watt-hours must be readable on each battery. If one gets hot, smells or swells on board, tell "
                + "the crew at once.");
        }
        if (Cargo(answer).Any())
            cautions.AddRange(cargo.Duties.Select(rule => $"As cargo: {char.ToLowerInvariant(rule.Value[0])}{rule.Value[1..]}"));
        if (ByRoad(answer))
            cautions.AddRange(road.Besides.Select(rule => rule.Value));
        cautions.Add("This is no permission. Rules change; states and carriers may be stricter. Ask each airline and look up "
            + "each state you fly from, through and to, before you travel. Their answer counts, and so do the maker's "
                + "instructions.");
        return cautions;
    }

    /// <summary>The rules that the answer rests on, each with its source.</summary>
    public static IReadOnlyList<(string Rule, Citation Source)> Sources(TravelAnswer answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        var used = new List<(string, Citation)>();
        var (passengers, cargo, road) = (answer.Rules.Rules.Passengers, answer.Rules.Rules.Cargo, answer.Rules.Rules.Road);
        if (answer.Journey.Legs.Contains(Leg.Flight))
        {
            used.Add((passengers.WithoutApproval.Why, passengers.WithoutApproval.Source));
            used.Add((passengers.WithApproval.Why, passengers.WithApproval.Source));
            used.Add((passengers.Contacts.Value, passengers.Contacts.Source));
            used.Add((passengers.SparesPlace.Value, passengers.SparesPlace.Source));
            used.AddRange(answer.Lists.SelectMany(list => list.Numbers)
                .Select(number => (number.Limit.Why, number.Limit.Source)));
            if (answer.Lists.Any(list => list.Lines.Any(line => line.Battery.Installed)))
                used.Add(($"A device with its battery travels {DevicesPlace(passengers)}.",
                    passengers.DevicesPlace.Source));
            if (MayBePowerBanks(answer))
                used.Add((passengers.Outlets.Value, passengers.Outlets.Source));
            used.AddRange(answer.Left.Select(left => (left.StoppedBy.Value, left.StoppedBy.Source)));
            used.AddRange(passengers.Conduct.Select(rule => (rule.Value, rule.Source)));
        }
        foreach (var check in Cargo(answer))
        {
            used.Add(($"{check.Entry}: {check.Entry.ShippingName}.", UnEntry.Source));
            used.Add(($"{check.Entry}, packing instruction {check.Rule.PackingInstruction}: {check.Rule.Aircraft.Value}.",
                check.Rule.Aircraft.Source));
            if (check.ChargeLimit is { } limit)
                used.Add((limit.Why, limit.Source));
            if (check.Rule.Package is { } package && check.Small)
                used.Add(($"Packing instruction {check.Rule.PackingInstruction}: {package.Value}.", package.Source));
            if (!check.Small)
                used.Add(($"Packing instruction {check.Rule.PackingInstruction}, {Lower(check.Rule.LargePackage.Why)}",
                    check.Rule.LargePackage.Source));
        }
        if (Cargo(answer).Any())
        {
            used.Add((cargo.SmallBattery.Why, cargo.SmallBattery.Source));
            used.AddRange(cargo.Duties.Select(rule => (rule.Value, rule.Source)));
        }
        if (ByRoad(answer))
        {
            used.Add((road.Small.Why, road.Small.Source));
            used.Add(($"Above it {road.AskedOfLarge.Value}.", road.AskedOfLarge.Source));
            used.Add(($"By road up to {road.InOneVehicle.Value.Kilograms:0} kg without the rules for vehicle and driver: "
                + Lower(road.InOneVehicle.Why), road.InOneVehicle.Source));
            used.AddRange(road.Besides.Select(rule => (rule.Value, rule.Source)));
        }
        return [.. used.Distinct()];
    }

    /// <summary>What is, or may have to be, handed over as air cargo.</summary>
    private static IEnumerable<CargoCheck> Cargo(TravelAnswer answer) =>
        answer.Consignment.Concat(answer.Left.Select(left => left.AsCargo).OfType<CargoCheck>());

    /// <summary>What speaks against the watt-hours of a battery, in one or two sentences; null if nothing does.</summary>
    /// <param name="rated">The watt-hours.</param>
    /// <param name="rules">The edition's passenger rules.</param>
    public static string? Doubt(RatedEnergy rated, PassengerRules rules)
    {
        ArgumentNullException.ThrowIfNull(rated);
        ArgumentNullException.ThrowIfNull(rules);
        if (rated.Basis == WattHourBasis.Assumed)
            return $"Nobody read the {rated.Energy.WattHours:0.##} Wh on a label. Read the label before you pack.";
        var says = $"The label says {rated.Energy.WattHours:0.##} Wh, but V × Ah gives {rated.Computed?.WattHours:0.##} Wh";
        return rated.Between(rules) is { } limit
            ? $"{says}: on the other side of {limit.WattHours:0} Wh. The label counts, but an inspector may compute: ask the "
                + "airline about it by both figures."
            : rated.Disagrees ? $"{says}. The label counts; an inspector may compute." : null;
    }

    /// <summary>Doubts about batteries that stand on two sides of a limit: told in every answer with a journey.</summary>
    /// <param name="answer">The answer.</param>
    internal static IEnumerable<string> LimitDoubts(TravelAnswer answer) =>
        Doubts(answer, battery => battery.Rated.Between(answer.Rules.Rules.Passengers) is not null);

    private static IEnumerable<string> Doubts(TravelAnswer answer, Func<PackedBattery, bool> which) =>
        answer.Journey.Batteries.Where(which).Select(battery =>
            Doubt(battery.Rated, answer.Rules.Rules.Passengers) is { } doubt ? $"{battery.Title}: {doubt}" : null)
            .OfType<string>().Distinct();

    private static bool ByRoad(TravelAnswer answer) =>
        answer.Journey.Legs.Contains(Leg.Road) || answer.Left.Any(left => left.AsCargo is not null);

    /// <summary>Whether it would matter if an airline took spare batteries for power banks: more than one a person, or one above
    /// what needs no approval.</summary>
    private static bool MayBePowerBanks(TravelAnswer answer) => answer.Lists.Any(list => list.Lines
        .Where(line => line.Check.Kind is BaggageKind.SmallSpare or BaggageKind.LargeSpare).ToList() is var spares
            && (spares.Sum(line => line.Count) > 1 || spares.Exists(line => line.Check.Kind == BaggageKind.LargeSpare)));

    private static string Large(CargoCheck check)
    {
        var most = check.Rule.LargePackage.Value;
        var words = $"section {most.Section}, at most " + (most.Passenger is { } passenger
            ? $"{passenger.Kilograms:0} kg of batteries a package on passenger aircraft, {most.Cargo.Kilograms:0} kg on cargo "
                + "aircraft"
            : $"{most.Cargo.Kilograms:0} kg of batteries a package on cargo aircraft");
        if (check.NetMass is not { } mass)
            return $"{words}; their mass is not given";
        var over = mass > most.Cargo ? ", too much for one package"
            : mass > most.Passenger ? ", so several packages or a cargo aircraft" : "";
        return $"{words}; these weigh {mass.Kilograms:0.0} kg{over}";
    }

    private static string Lower(string text) => $"{char.ToLowerInvariant(text[0])}{text[1..]}";
}
