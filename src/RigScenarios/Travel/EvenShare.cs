namespace RigScenarios.Travel;

/// <summary>
/// Who carries which battery: the one who carries most carries as few watt-hours as can be, within each person's limits on
/// number.
/// </summary>
/// <remarks>
/// Begins with the largest battery to the person who has least so far, then looks for a better share by branch and bound. Where
/// that search
/// ends, or meets the bound that no share can beat, the share is proven best.
/// </remarks>
internal sealed class EvenShare
{
    /// <summary>States times people to look at before the best share so far has to do; a fraction of a second.</summary>
    private const int MostWork = 200_000;

    /// <summary>Watt-hours in steps of 0.001, so that equal loads are equal.</summary>
    private const double Steps = 1000;

    private readonly (int Group, BaggageKind Kind, long Load)[] units;
    private readonly PassengerRules rules;
    private readonly int people;
    private readonly long[] remaining;
    private readonly HashSet<(int, string)> seen = [];
    private readonly CancellationToken cancellation;
    private readonly int mostStates;
    private int states;
    private int[] best = [];
    private long bestLargest = long.MaxValue;
    private long bound;

    private EvenShare(IReadOnlyList<(PackedBattery Battery, FlightCheck Check)> groups, int[] flying, PassengerRules rules,
        int people, CancellationToken cancellation)
    {
        this.rules = rules;
        this.people = people;
        this.cancellation = cancellation;
        mostStates = MostWork / people;
        // Large power banks first: they alone count against two limits, and dealt out first they leave room for all others. Then
        // small ones, which have a limit of their own within that on all spare batteries.
        units =
        [
            .. flying.SelectMany((count, at) => Enumerable.Repeat((at, groups[at].Check.Kind,
                (long)Math.Round(groups[at].Battery.Rated.Energy.WattHours * Steps)), count))
                .OrderByDescending(unit => unit.Kind == BaggageKind.LargePowerBank)
                    .ThenByDescending(unit => unit.Kind == BaggageKind.SmallPowerBank)
                    .ThenByDescending(unit => unit.Item3).ThenBy(unit => unit.at),
        ];
        remaining = new long[units.Length + 1];
        for (var at = units.Length - 1; at >= 0; at--)
            remaining[at] = remaining[at + 1] + units[at].Load;
    }

    /// <summary>Shares batteries out.</summary>
    /// <returns>For each person and group how many, and whether the share is proven best.</returns>
    public static (int[][] Counts, bool Proven) Of(
        IReadOnlyList<(PackedBattery Battery, FlightCheck Check)> groups, int[] flying, PassengerRules rules, int people,
        CancellationToken cancellation)
    {
        var share = new EvenShare(groups, flying, rules, people, cancellation);
        var proven = share.Solve();
        var counts = Enumerable.Range(0, people).Select(_ => new int[groups.Count]).ToArray();
        for (var at = 0; at < share.units.Length; at++)
            counts[share.best[at]][share.units[at].Group]++;
        // People are alike; the one who carries most comes first, so that the same question always gives the same list.
        return ([.. counts.OrderByDescending(person =>
            person.Select((count, at) => count * groups[at].Battery.Rated.Energy.WattHours).Sum())
            .ThenBy(person => string.Join(',', person.Select(count => 1000 - count)), StringComparer.Ordinal)], proven);
    }

    private bool Solve()
    {
        var largestUnit = units.Length == 0 ? 0 : units.Max(unit => unit.Load);
        bound = Math.Max(largestUnit, (remaining[0] + people - 1) / people);
        Search(0, new Person[people], new int[units.Length]);
        return states <= mostStates || bestLargest <= bound;
    }

    private void Search(int at, Person[] persons, int[] chosen)
    {
        if (at == units.Length)
        {
            var largest = persons.Max(person => person.Load);
            if (largest < bestLargest)
                (bestLargest, best) = (largest, [.. chosen]);
            return;
        }
        cancellation.ThrowIfCancellationRequested();
        // The first descent is the plain share and always ends: the limit on states waits for it.
        if (++states > mostStates && best.Length > 0)
            return;
        if (!seen.Add((at, string.Join(';', persons.Select(person => person.Key).Order(StringComparer.Ordinal)))))
            return;
        var tried = new HashSet<Person>();
        foreach (var who in Enumerable.Range(0, people).Where(who => HasRoom(persons[who], units[at].Kind))
            .OrderBy(who => persons[who].Load))
        {
            if (bestLargest <= bound)
                return;
            var after = persons[who].With(units[at]);
            if (after.Load >= bestLargest || !tried.Add(persons[who]))
                continue;
            var old = persons[who];
            persons[who] = after;
            chosen[at] = who;
            Search(at + 1, persons, chosen);
            persons[who] = old;
        }
    }

    private bool HasRoom(Person person, BaggageKind kind) => kind switch
    {
        BaggageKind.Installed => person.Devices < rules.Devices.Value,
        _ when person.Spares >= rules.Spares.Value => false,
        BaggageKind.SmallSpare => true,
        BaggageKind.LargeSpare => person.Large < rules.LargeSpares.Value,
        BaggageKind.SmallPowerBank => person.Banks < rules.PowerBanks!.Value,
        _ => person.Large < rules.LargeSpares.Value && person.Banks < rules.PowerBanks!.Value,
    };

    private readonly record struct Person(long Load, int Devices, int Spares, int Large, int Banks)
    {
        public string Key => $"{Load},{Devices},{Spares},{Large},{Banks}";

        public Person With((int Group, BaggageKind Kind, long Load) unit) => new(
            Load + unit.Load,
            Devices + (unit.Kind == BaggageKind.Installed ? 1 : 0),
            Spares + (unit.Kind == BaggageKind.Installed ? 0 : 1),
            Large + (unit.Kind is BaggageKind.LargeSpare or BaggageKind.LargePowerBank ? 1 : 0),
            Banks + (unit.Kind is BaggageKind.SmallPowerBank or BaggageKind.LargePowerBank ? 1 : 0));
    }
}
