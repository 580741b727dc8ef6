using RigScenarios.Search.Choices;

namespace RigScenarios.Tests.Search.Choices;

/// <summary>A small library by chance. Each candidate has a price, a mass, an energy and a draw, all small whole numbers so that
/// equals come up; how long a choice runs is no sum, and one figure is a product of two slots only. Some prices, some runtimes
/// and whether some choices fly are not known; some candidates don't fit.</summary>
internal sealed record DrawnModel : IChoiceModel
{
    private readonly int[][] energy;
    private readonly int[][] draw;
    private readonly HashSet<(int, int)> alone = [];
    private readonly HashSet<(int, int, int, int)> apart = [];
    private readonly (int First, int Second)? unknownPair;

    public DrawnModel(Random random)
    {
        var slots = random.Next(2, 6);
        Slots = [.. Enumerable.Range(0, slots).Select(s => new ChoiceSlot($"slot {s}",
            [.. Enumerable.Range(0, random.Next(2, slots > 4 ? 4 : 6)).Select(c => $"part {c}")]))];
        energy = Attribute(random, 4);
        draw = Attribute(random, 3);
        var price = Sum(Attribute(random, 3), random.Next(3) == 0 ? random : null, 0.5m);
        var mass = Sum(Attribute(random, 4), null, 1);
        foreach (var (slot, candidate) in Pairs().Where(_ => random.Next(12) == 0))
            alone.Add((slot, candidate));
        foreach (var (a, i) in Pairs())
        {
            foreach (var (b, j) in Pairs().Where(other => other.Slot > a && random.Next(10) == 0))
                apart.Add((a, i, b, j));
        }
        unknownPair = random.Next(3) == 0
            ? (random.Next(Slots[0].Candidates.Count), random.Next(Slots[1].Candidates.Count)) : null;
        HasBounds = random.Next(3) > 0;
        ChoiceGoal[] goals = [new("price") { Sum = price }, new("mass") { Sum = mass }, new("minus runtime"),
            new("product") { DependsOn = [0, 1] }];
        Goals = [.. goals.Where(_ => random.Next(5) > 0)];
        ChoiceMust[] musts = [new("mass at most") { Sum = mass, AtMost = random.Next(3, 14) },
            new("runs long enough") { DependsOn = [.. Enumerable.Range(0, slots)] }, new("flies") { DependsOn = [0, 1] }];
        Musts = [.. musts.Where(_ => random.Next(4) == 0)];
        LeastRuntime = random.Next(1, 4);
    }

    public IReadOnlyList<ChoiceSlot> Slots { get; }

    public IReadOnlyList<ChoiceGoal> Goals { get; init; }

    public IReadOnlyList<ChoiceMust> Musts { get; init; }

    public bool HasBounds { get; init; }

    public int LeastRuntime { get; init; }

    public bool IsCompatible(int slot, int candidate) => !alone.Contains((slot, candidate));

    public bool IsCompatible(int slotA, int candidateA, int slotB, int candidateB) =>
        !apart.Contains((slotA, candidateA, slotB, candidateB));

    public ChoiceBounds? Bounds(ChoiceBox box)
    {
        if (!HasBounds)
            return null;
        var isUnknown = unknownPair is { } pair && box.Possible(0).Contains(pair.First) && box.Possible(1).Contains(pair.Second);
        var most = Enumerable.Range(0, Slots.Count).Sum(s => box.Possible(s).Max(c => energy[s][c]));
        var least = Enumerable.Range(0, Slots.Count).Sum(s => box.Possible(s).Min(c => draw[s][c]));
        return new([.. Goals.Select(goal => goal.Name == "minus runtime" && !isUnknown ? -Runtime(most, least)
                : double.NegativeInfinity)],
            [.. Musts.Select(must => must.Name != "runs long enough" || Runtime(most, least) >= LeastRuntime)]);
    }

    public ChoiceFigures Evaluate(Choice choice, CancellationToken cancellation)
    {
        var isUnknown = unknownPair == (choice[0], choice[1]);
        var runtime = Runtime(choice.Index().Sum(item => energy[item.Index][item.Item]),
            choice.Index().Sum(item => draw[item.Index][item.Item]));
        var product = (energy[0][choice[0]] * energy[1][choice[1]]) - (3 * draw[0][choice[0]]);
        return new([.. Goals.Select(goal => goal.Name == "product" ? product : isUnknown ? double.NaN : -runtime)],
            [.. Musts.Select(must => must.Name == "flies" ? (choice[0] + choice[1] == 3 ? null : choice[0] != choice[1])
                : (bool?)(runtime >= LeastRuntime))]);
    }

    /// <summary>Whole hours and halves, with what it starts with.</summary>
    private static double Runtime(int energy, int draw) => Math.Floor(4.0 * energy / (1 + draw)) / 2;

    private int[][] Attribute(Random random, int most) =>
        [.. Slots.Select(slot => slot.Candidates.Select(_ => random.Next(0, most)).ToArray())];

    private IEnumerable<(int Slot, int Candidate)> Pairs() =>
        Slots.Index().SelectMany(slot => Enumerable.Range(0, slot.Item.Candidates.Count).Select(c => (slot.Index, c)));

    private static ChoiceSum Sum(int[][] attribute, Random? unknown, decimal unit) => new([.. attribute.Select(slot =>
        (IReadOnlyList<decimal?>)[.. slot.Select(one => unknown?.Next(6) == 0 ? (decimal?)null : one * unit)])], 0.25m);
}
