using RigScenarios.Travel;

namespace RigScenarios.Tests.Travel;

/// <summary>The newest rules with smaller numbers, so that each limit on number binds in cases small enough to try all
/// of.</summary>
internal static class TightLimits
{
    private static readonly double[] Sizes = [10, 40, 50, 80, 100, 110, 120, 150, 160];

    public static PassengerRules Rules(int devices, int spares, int large, int banks)
    {
        var newest = RuleEditions.All[^1].Passengers;
        return newest with
        {
            Devices = newest.Devices with { Value = devices }, Spares = newest.Spares with { Value = spares },
            LargeSpares = newest.LargeSpares with { Value = large }, PowerBanks = newest.PowerBanks! with { Value = banks },
        };
    }

    public static PassengerRules DrawnRules(Random random) =>
        Rules(random.Next(1, 3), random.Next(1, 4), random.Next(1, 3), random.Next(1, 3));

    public static List<(PackedBattery Battery, FlightCheck Check)> Groups(PassengerRules rules,
        params PackedBattery[] batteries) =>
        [.. batteries.Select(battery => (battery, FlightCheck.Of(battery, rules)))];

    /// <summary>Up to so many batteries in all, in groups.</summary>
    public static List<(PackedBattery Battery, FlightCheck Check)> DrawnGroups(Random random, PassengerRules rules, int most)
    {
        var batteries = new List<PackedBattery>();
        for (var left = most; left > 0;)
        {
            var count = random.Next(1, Math.Min(left, 3) + 1);
            var kind = random.Next(5);
            batteries.Add(TravelCases.Some($"b{left}", Sizes[random.Next(Sizes.Length)], count) with
            {
                Installed = kind == 0, PowerBank = kind is 1 or 2,
            });
            left -= count;
        }
        return Groups(rules, [.. batteries]);
    }

    /// <summary>Whether one person may carry these, by the words of the four limits on number.</summary>
    public static bool Within(IReadOnlyList<(PackedBattery Battery, FlightCheck Check)> groups, int[] counts,
        PassengerRules rules)
    {
        int Of(Func<PackedBattery, bool> counted) => groups.Select((group, at) => counted(group.Battery) ? counts[at] : 0).Sum();
        return Of(battery => battery.Installed) <= rules.Devices.Value
            && Of(battery => !battery.Installed) <= rules.Spares.Value
            && Of(battery => !battery.Installed && battery.Rated.Energy.WattHours > 100) <= rules.LargeSpares.Value
            && Of(battery => !battery.Installed && battery.PowerBank) <= rules.PowerBanks!.Value;
    }

    /// <summary>Watt-hours of so many of each group.</summary>
    public static double Load(IReadOnlyList<(PackedBattery Battery, FlightCheck Check)> groups, int[] counts) =>
        groups.Select((group, at) => counts[at] * group.Battery.Rated.Energy.WattHours).Sum();

    /// <summary>Every manner of dealing batteries out to people within the limits.</summary>
    /// <param name="groups">What is packed.</param>
    /// <param name="dealt">How many of each group there are to deal.</param>
    /// <param name="rules">The limits.</param>
    /// <param name="people">How many people.</param>
    /// <param name="mayStay">Whether a battery may stay behind.</param>
    /// <param name="found">Gets the counts for each person, which change after it returns.</param>
    public static void EveryDeal(IReadOnlyList<(PackedBattery Battery, FlightCheck Check)> groups, int[] dealt,
        PassengerRules rules, int people, bool mayStay, Action<int[][]> found)
    {
        var units = dealt.SelectMany((count, at) => Enumerable.Repeat(at, count)).ToList();
        var persons = Enumerable.Range(0, people).Select(_ => new int[groups.Count]).ToArray();
        Deal(0);

        void Deal(int at)
        {
            if (at == units.Count)
            {
                found(persons);
                return;
            }
            if (mayStay)
                Deal(at + 1);
            foreach (var person in persons)
            {
                person[units[at]]++;
                if (Within(groups, person, rules))
                    Deal(at + 1);
                person[units[at]]--;
            }
        }
    }
}
