using RigScenarios.Travel;
using static RigScenarios.Tests.Travel.TravelCases;

namespace RigScenarios.Tests.Travel;

/// <summary>What flies, and on whom, is the best of all choices: all are tried, in small cases drawn at random.</summary>
public sealed class TravelSearchTests
{
    [Fact]
    public void What_flies_is_the_best_of_all_choices_in_small_random_cases()
    {
        Drawn.Cases(firstSeed: 20261203, cases: 300, atLeast: 100, (random, looked) =>
        {
            var travellers = random.Next(1, 3);
            var batteries = RandomBatteries(random, random.Next(1, 5), 4);
            var answer = TravelPlan.For(Flight(travellers, batteries), TestContext.Current.CancellationToken);
            var flown = answer.Lists.Sum(list => list.Energy.WattHours);
            Assert.Equal(BestByTryingAll(batteries, travellers), flown, 1e-6);
            Assert.Equal(batteries.Sum(battery => battery.Count),
                answer.Left.Sum(left => left.Count) + answer.Lists.Sum(list => list.Lines.Sum(line => line.Count)));
            AssertWithinLimits(answer);
            if (answer.Left.Count > 0 && flown > 0)
                looked.One();
        });
    }

    [Fact]
    public void What_flies_is_the_best_of_all_choices_where_the_number_of_all_spare_ones_binds()
    {
        var bound = 0;
        Drawn.Cases(firstSeed: 20, cases: 200, random =>
        {
            var batteries = RandomBatteries(random, random.Next(2, 5), 24);
            var answer = TravelPlan.For(Flight(1, batteries), TestContext.Current.CancellationToken);
            Assert.Equal(BestByTryingAll(batteries, 1), answer.Lists.Sum(list => list.Energy.WattHours), 1e-6);
            AssertWithinLimits(answer);
            bound += answer.Lists.SelectMany(list => list.Numbers)
                .Any(number => number is { What: "spare batteries of any kind", Left: 0 }) ? 1 : 0;
        });
        Assert.True(bound > 20, $"The number of spare batteries bound in {bound} cases: too few to show anything.");
    }

    [Fact]
    public void The_share_is_the_most_even_of_all_shares_in_small_random_cases()
    {
        var uneven = 0;
        Drawn.Cases(firstSeed: 7, cases: 200, atLeast: 150, (random, looked) =>
        {
            var travellers = random.Next(2, 4);
            var answer = TravelPlan.For(Flight(travellers, RandomBatteries(random, random.Next(1, 4), 2)),
                TestContext.Current.CancellationToken);
            Assert.True(answer.ShareProven);
            var flying = answer.Lists.SelectMany(list => list.Lines)
                .SelectMany(line => Enumerable.Repeat(line, line.Count)).ToList();
            if (flying.Count == 0)
                return;
            looked.One();
            var largest = answer.Lists.Max(list => list.Energy.WattHours);
            Assert.Equal(MostEvenByTryingAll(flying, travellers), largest, 1e-6);
            if (largest > answer.Lists.Sum(list => list.Energy.WattHours) / travellers * 1.05)
                uneven++;
        });
        Assert.True(uneven > 20, "The cases are too easy to show anything.");
    }

    [Fact]
    public void A_crew_with_many_batteries_gets_the_same_lists_every_time_within_the_limits()
    {
        var batteries = RandomBatteries(new Random(3), 12, 30);
        var first = TravelPlan.For(Flight(20, batteries), TestContext.Current.CancellationToken);
        var second = TravelPlan.For(Flight(20, batteries), TestContext.Current.CancellationToken);
        AssertWithinLimits(first);
        Assert.Equal(Lines(first), Lines(second));
        static IEnumerable<string> Lines(TravelAnswer answer) =>
            answer.Lists.SelectMany(list => list.Lines.Select(line => $"{list.Traveller} {line.Count} {line.Battery.Name}"));
    }

    private static bool WithinLimits(IEnumerable<(double WattHours, bool Installed, bool Bank)> carried)
    {
        var all = carried.ToList();
        return all.Count(item => item.Installed) <= 15
            && all.Count(item => !item.Installed) <= 20
            && all.Count(item => !item.Installed && item.WattHours > 100) <= 2
            && all.Count(item => !item.Installed && item.Bank) <= 2
            && all.All(item => item.WattHours <= 160);
    }

    private static void AssertWithinLimits(TravelAnswer answer) => Each.Of(answer.Lists, list => Assert.True(WithinLimits(
        list.Lines.SelectMany(line => Enumerable.Repeat((line.Battery.Rated.Energy.WattHours, line.Battery.Installed,
            line.Battery.PowerBank), line.Count)))), atLeast: 0);

    private static double BestByTryingAll(IReadOnlyList<PackedBattery> batteries, int travellers)
    {
        var units = batteries.Where(battery => battery.Installed || battery.ContactsCovered)
            .SelectMany(battery => Enumerable.Repeat((battery.Rated.Energy.WattHours, battery.Installed, battery.PowerBank),
                battery.Count)).ToList();
        // Every number of each kind on every person: limits are few enough that the state of a person is what it carries.
        var best = new Dictionary<string, double> { [string.Join(';', Enumerable.Repeat("0,0,0,0", travellers))] = 0 };
        foreach (var (wattHours, installed, bank) in units.Where(unit => unit.WattHours <= 160))
        {
            foreach (var (state, energy) in best.ToList())
            {
                var persons = state.Split(';');
                for (var who = 0; who < travellers; who++)
                {
                    var used = persons[who].Split(',').Select(number => int.Parse(number, null)).ToArray();
                    if (installed)
                        used[0]++;
                    if (!installed)
                        used[1]++;
                    if (!installed && wattHours > 100)
                        used[2]++;
                    if (!installed && bank)
                        used[3]++;
                    if (used[0] > 15 || used[1] > 20 || used[2] > 2 || used[3] > 2)
                        continue;
                    var next = string.Join(';', persons.Select((person, at) => at == who ? string.Join(',', used) : person)
                        .Order(StringComparer.Ordinal));
                    best[next] = Math.Max(best.GetValueOrDefault(next), energy + wattHours);
                }
            }
        }
        return best.Values.Max();
    }

    private static double MostEvenByTryingAll(List<PackingLine> flying, int travellers)
    {
        var best = double.PositiveInfinity;
        var carried = Enumerable.Range(0, travellers)
            .Select(_ => new List<(double WattHours, bool Installed, bool Bank)>()).ToList();
        Deal(0);
        return best;

        void Deal(int at)
        {
            if (at == flying.Count)
            {
                if (carried.All(WithinLimits))
                    best = Math.Min(best, carried.Max(person => person.Sum(item => item.WattHours)));
                return;
            }
            var battery = flying[at].Battery;
            foreach (var person in carried)
            {
                person.Add((battery.Rated.Energy.WattHours, battery.Installed, battery.PowerBank));
                Deal(at + 1);
                person.RemoveAt(person.Count - 1);
            }
        }
    }
}
