using System.Globalization;
using RigScenarios.Cells;

namespace RigScenarios.Travel;

/// <summary>Holds a journey against the transport rules of its day, and makes the packing lists.</summary>
public static class TravelPlan
{
    /// <summary>The answer for a journey.</summary>
    /// <param name="journey">The journey, with at least one leg.</param>
    /// <param name="cancellation">Stops the search for an even share.</param>
    /// <exception cref="ArgumentException">The journey has no leg, or a count is below 1.</exception>
    public static TravelAnswer For(Journey journey, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(journey);
        if (journey.Legs.Count == 0)
            throw new ArgumentException("A journey needs at least one leg.", nameof(journey));
        if (journey.Batteries.Any(battery => battery.Count < 1))
            throw new ArgumentException("Each group of batteries holds 1 or more.", nameof(journey));
        var rules = RuleEditions.On(journey.Date);
        var answer = new TravelAnswer { Journey = journey, Rules = rules };
        if (journey.Legs.Contains(Leg.Flight))
            answer = Fly(answer, cancellation);
        if (journey.Legs.Contains(Leg.Cargo))
            answer =
                answer with { Consignment =
                [.. journey.Batteries.Select(battery => CargoCheck.Of(battery, battery.Count, rules.Rules.Cargo))] };
        if (journey.Legs.Contains(Leg.Road))
            answer = answer with { Road = [.. journey.Batteries.Select(battery => RoadCheck.Of(battery, rules.Rules.Road))] };
        return answer;
    }

    private static TravelAnswer Fly(TravelAnswer answer, CancellationToken cancellation)
    {
        var (journey, rules) = (answer.Journey, answer.Rules.Rules);
        var checks = journey.Batteries.Select(battery => (Battery: battery, Check: FlightCheck.Of(battery, rules.Passengers)))
            .ToList();
        var fit = checks.Where(item => item.Check.StoppedBy is null).ToList();
        var flying = FlightSelection.Choose(fit, rules.Passengers, journey.Travellers.Count);
        var (shares, proven) = EvenShare.Of(fit, flying, rules.Passengers, journey.Travellers.Count, cancellation);
        var left = new List<LeftBehind>();
        foreach (var (battery, check) in checks)
        {
            var staying = check.StoppedBy is null
                ? battery.Count - flying[fit.FindIndex(item => ReferenceEquals(item.Battery, battery))] : battery.Count;
            if (staying > 0)
                left.Add(Stays(battery, check, staying, rules, journey.Travellers.Count, Flying));
        }
        int Flying(BaggageKind kind) => flying.Where((_, at) => fit[at].Check.Kind == kind).Sum();

        return answer with
        {
            ShareProven = proven,
            Left = left,
            Lists = [.. shares.Select((counts, who) => ListOf(journey.Travellers.Names[who], fit, counts, rules.Passengers))
                .Where(list => list.Lines.Count > 0)],
        };
    }

    private static LeftBehind Stays(PackedBattery battery, FlightCheck check, int staying, TransportRules rules, int travellers,
        Func<BaggageKind, int> flying)
    {
        var cargo = CargoCheck.Of(battery, staying, rules.Cargo);
        if (check.StoppedBy is { } rule)
        {
            var tooLarge = check.Margin.WattHours < 0;
            return new LeftBehind(battery, staying, rule, tooLarge ? check.MarginWords : "contacts open", check.Remedy!,
                tooLarge ? cargo : null);
        }
        var limit = FlightSelection.LimitOf(check.Kind, flying, rules.Passengers, travellers);
        var places = (limit.Value * travellers).ToString(CultureInfo.InvariantCulture);
        var remedy = limit == rules.Passengers.Spares || limit == rules.Passengers.Devices
            ? "Ask the airline whether it agrees to more; else another traveller, by road, or as air cargo."
            : "Another traveller, by road, or as air cargo.";
        return new LeftBehind(
            battery, staying, new Sourced<string>(limit.Why, "", limit.Source),
            $"{staying} over the number: {limit.Value} a person, {places} for "
                + $"{(travellers == 1 ? "one traveller" : $"{travellers} travellers")}", remedy, cargo);
    }

    private static PackingList ListOf(string who, List<(PackedBattery Battery, FlightCheck Check)> fit, int[] counts,
        PassengerRules rules)
    {
        var lines = fit.Select((item, at) => new PackingLine(item.Battery, item.Check, counts[at])).Where(line => line.Count > 0)
            .OrderByDescending(line => line.Battery.Rated.Energy.WattHours).ToList();
        var numbers = new List<NumberUsed>();
        Add("spare batteries of any kind", rules.Spares, BaggageKind.SmallSpare, BaggageKind.LargeSpare,
            BaggageKind.SmallPowerBank, BaggageKind.LargePowerBank);
        Add("spare batteries above 100 Wh", rules.LargeSpares, BaggageKind.LargeSpare, BaggageKind.LargePowerBank);
        if (rules.PowerBanks is { } banks)
            Add("power banks", banks, BaggageKind.SmallPowerBank, BaggageKind.LargePowerBank);
        Add("devices with a battery", rules.Devices, BaggageKind.Installed);
        return new PackingList(who, lines, numbers);

        void Add(string what, Sourced<int> limit, params BaggageKind[] kinds)
        {
            var used = lines.Where(line => kinds.Contains(line.Check.Kind)).Sum(line => line.Count);
            if (used > 0)
                numbers.Add(new NumberUsed(what, used, limit));
        }
    }
}
