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
            sentences.Add("By road: no road rules are held here.");
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
        var package = !check.Small ? "; above 100 Wh, so all rules for dangerous goods of class 9 hold"
            : check.Rule.Package is { } rule ? $"; {rule.Value}" : "";
        return $"{check.Entry} ({check.Entry.ShippingName}), packing instruction {check.Rule.PackingInstruction}; "
            + $"{check.Rule.Aircraft.Value}; {check.ChargeWords}{package}";
    }

    /// <summary>Where a line of a packing list goes, and on what condition.</summary>
    public static string Place(PackingLine line)
    {
        ArgumentNullException.ThrowIfNull(line);
        return line.Battery.Installed ? "in its device, best in the cabin" : "cabin bag, contacts covered";
    }

    /// <summary>What to mind, the most general last.</summary>
    public static IReadOnlyList<string> Cautions(TravelAnswer answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        var cautions = new List<string>();
        foreach (var (title, doubt) in answer.Journey.Batteries.Where(battery => battery.Rated.Doubt is not null)
            .Select(battery => (battery.Title, battery.Rated.Doubt)).Distinct())
            cautions.Add($"{title}: {doubt}");
        if (answer.Journey.Legs.Contains(Leg.Flight))
        {
            if (answer.Rules.Rules.Passengers.PowerBanks is { } banks && Bricks(answer) > banks.Value)
                cautions.Add($"A brick with power outlets may be taken for a power bank by some airlines, and then "
                    + $"{banks.Value} a person is the number. The fullest list here has {Bricks(answer)} spare batteries. Ask "
                        + "before you rely on it.");
            cautions.AddRange(answer.Rules.Rules.Passengers.Conduct
                .Where(rule => !rule.Value.Contains("with power outlets", StringComparison.Ordinal)).Select(rule => rule.Value));
            cautions.Add("The lists count only the batteries of this scenario. Phones, laptops and private power banks come "
                + "on top.");
            cautions.Add("The watt-hours must be readable on each battery. If one gets hot, smells or swells on board, tell "
                + "the crew at once.");
        }
        if (Cargo(answer).Any())
            cautions.AddRange(answer.Rules.Rules.Cargo.Duties
                .Select(rule => $"As cargo: {char.ToLowerInvariant(rule.Value[0])}{rule.Value[1..]}"));
        if (answer.Journey.Legs.Contains(Leg.Road) || answer.Left.Any(left => left.AsCargo is not null))
            cautions.Add("By road (common practice, no source): contacts covered, nothing loose, out of the sun, never left "
                + "in a parked car in the heat. A business that carries many batteries may fall under rules on dangerous "
                    + "goods: ask.");
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
        var (passengers, cargo) = (answer.Rules.Rules.Passengers, answer.Rules.Rules.Cargo);
        if (answer.Journey.Legs.Contains(Leg.Flight))
        {
            used.Add((passengers.WithoutApproval.Why, passengers.WithoutApproval.Source));
            used.Add((passengers.WithApproval.Why, passengers.WithApproval.Source));
            used.Add((passengers.Contacts.Value, passengers.Contacts.Source));
            used.Add((passengers.SparesPlace.Value, passengers.SparesPlace.Source));
            used.AddRange(answer.Lists.SelectMany(list => list.Numbers)
                .Select(number => (number.Limit.Why, number.Limit.Source)));
            if (answer.Lists.Any(list => list.Lines.Any(line => line.Battery.Installed)))
                used.Add((passengers.DevicesPlace.Value, passengers.DevicesPlace.Source));
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
        }
        if (Cargo(answer).Any())
        {
            used.Add((cargo.SmallBattery.Why, cargo.SmallBattery.Source));
            used.AddRange(cargo.Duties.Select(rule => (rule.Value, rule.Source)));
        }
        return [.. used.Distinct()];
    }

    /// <summary>What is, or may have to be, handed over as air cargo.</summary>
    private static IEnumerable<CargoCheck> Cargo(TravelAnswer answer) =>
        answer.Consignment.Concat(answer.Left.Select(left => left.AsCargo).OfType<CargoCheck>());

    /// <summary>Spare batteries, other than power banks, of the person with most.</summary>
    private static int Bricks(TravelAnswer answer) =>
        answer.Lists.Select(list => list.Lines.Where(line => line.Check.Kind is BaggageKind.SmallSpare or BaggageKind.LargeSpare)
            .Sum(line => line.Count)).DefaultIfEmpty().Max();
}
