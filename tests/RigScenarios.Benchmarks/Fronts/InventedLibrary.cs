using RigScenarios.Search.Choices;

namespace RigScenarios.Benchmarks.Fronts;

/// <summary>
/// A library like a rig's, invented and drawn from a seed: batteries, things that draw power and things that only weigh. Of
/// each the dearer parts are mostly lighter or hold more. How long it runs is no sum (current heats, and a cold battery gives
/// less of a large current), nor is the margin of the joint under it all. A tenth of the pairs of neighbours don't fit.
/// </summary>
internal sealed class InventedLibrary : IChoiceModel
{
    private const double PayloadKilograms = 14;
    private readonly double[][] joules;
    private readonly double[][] watts;
    private readonly double[][] kilograms;
    private readonly double[][] carries;
    private readonly HashSet<(int, int, int, int)> apart = [];

    public InventedLibrary(int slots, int candidates, int seed)
    {
        var random = new Random(seed);
        double Around(double middle, double spread) => middle * (1 + (spread * ((2 * random.NextDouble()) - 1)));
        Slots = [.. Enumerable.Range(0, slots).Select(s => new ChoiceSlot($"slot {s + 1}",
            [.. Enumerable.Range(0, candidates).Select(c => $"part {s + 1}.{c + 1}")]))];
        // One slot in six holds batteries, half of the others draw power, one carries.
        double[][] Table(Func<int, int, double> figure) => [.. Enumerable.Range(0, slots).Select(s =>
            Enumerable.Range(0, candidates).Select(c => figure(s, (c + 1)) ).ToArray())];
        joules = Table((s, c) => s % 6 == 0 ? 3600 * Math.Round(Around(40 + (25 * c), 0.15)) : 0);
        watts = Table((s, c) => s % 6 != 0 && s % 2 == 0 ? Math.Round(Around(14 - (0.6 * c), 0.3), 1) : 0);
        kilograms = Table((s, c) => Math.Round(s % 6 == 0 ? Around(0.3 + (0.12 * c), 0.1) : Around(1.1 - (0.06 * c), 0.2), 3));
        carries = Table((s, c) => s == 1 ? Around(6 + c, 0.1) : PayloadKilograms);
        var prices = Table((s, c) => Math.Round(Around(60 + (s % 6 == 0 ? 55 : 40) * c, 0.25)));
        foreach (var s in Enumerable.Range(0, slots - 1))
        {
            foreach (var (i, j) in Enumerable.Range(0, candidates).SelectMany(i => Enumerable.Range(0, candidates)
                .Select(j => (i, j))).Where(_ => random.Next(10) == 0))
            {
                apart.Add((s, i, s + 1, j));
            }
        }
        Goals =
        [
            new("price") { Sum = Sum(prices) }, new("mass, kg") { Sum = Sum(kilograms) },
            new("minus hours") { DependsOn = [.. Enumerable.Range(0, slots).Where(s => s % 2 == 0)] },
        ];
        Musts =
        [
            new("price at most") { Sum = Sum(prices), AtMost = slots * 300 },
            new("two hours") { DependsOn = Goals[2].DependsOn }, new("joint carries it"),
        ];
    }

    public IReadOnlyList<ChoiceSlot> Slots { get; }

    public IReadOnlyList<ChoiceGoal> Goals { get; }

    public IReadOnlyList<ChoiceMust> Musts { get; }

    public bool IsCompatible(int slotA, int candidateA, int slotB, int candidateB) =>
        !apart.Contains((slotA, candidateA, slotB, candidateB));

    public ChoiceBounds? Bounds(ChoiceBox box)
    {
        var hours = Hours(Sum(joules, box, Enumerable.Max), Sum(watts, box, Enumerable.Min));
        return new([0, 0, -hours], [true, hours >= 2,
            Margin(Sum(kilograms, box, Enumerable.Min), box.Possible(1).Max(c => carries[1][c])) >= 0]);
    }

    public ChoiceFigures Evaluate(Choice choice, CancellationToken cancellation)
    {
        cancellation.ThrowIfCancellationRequested();
        double Of(double[][] table) => choice.Index().Sum(item => table[item.Index][item.Item]);
        var hours = Hours(Of(joules), Of(watts));
        return new([double.NaN, double.NaN, -hours], [null, hours >= 2, Margin(Of(kilograms), carries[1][choice[1]]) >= 0]);
    }

    // To a minute, as clock times are told; what is lost grows with the square of the draw.
    private static double Hours(double joules, double watts) =>
        Math.Floor(60 * joules / 3600 / (watts * (1 + (0.1 * watts / 60 * watts / 60)))) / 60;

    private static double Margin(double kilograms, double carries) => carries - (kilograms * (1 + (kilograms / 100)));

    private static double Sum(double[][] table, ChoiceBox box, Func<IEnumerable<double>, double> best) =>
        Enumerable.Range(0, box.Slots).Sum(slot => best(box.Possible(slot).Select(c => table[slot][c])));

    private static ChoiceSum Sum(double[][] table) => new([.. table.Select(slot =>
        (IReadOnlyList<decimal?>)[.. slot.Select(one => (decimal?)one)])]);
}
