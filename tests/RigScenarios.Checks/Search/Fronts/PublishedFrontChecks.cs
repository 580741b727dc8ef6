using System.Globalization;
using RigScenarios.Search.Choices;

namespace RigScenarios.Checks.Search.Fronts;

/// <summary>Fronts of problems whose efficient solutions were published. Each is searched twice: with all goals told as sums,
/// and with goals that only running a choice tells.</summary>
public class PublishedFrontChecks
{
    private static readonly string[] Things = File.ReadAllLines(
        Path.Combine(AppContext.BaseDirectory, "data", "fronts", "2KP50-11.txt")).Where(line => line[0] != '#').ToArray();

    // Three goals over ten things, and four over ten others.
    private static readonly int[][] Worths =
    [
        [566, 611, 506, 180, 817, 184, 585, 423, 26, 317], [62, 84, 977, 979, 874, 54, 269, 93, 881, 563],
        [664, 982, 962, 140, 224, 215, 12, 869, 332, 537], [557, 898, 148, 63, 78, 964, 246, 662, 386, 272],
    ];

    [Fact]
    [Source(SourceKind.Paper, "X. Gandibleux, A. Freville, Tabu search based procedure for solving the 0-1 multiobjective "
        + "knapsack problem: the two objectives case, Journal of Heuristics 6 (3), 2000, instance 2KP50-11: all 44 efficient "
        + "solutions of its 43 points; read in the open library of instances that carries it")]
    public void All_efficient_solutions_of_a_knapsack_of_fifty_things()
    {
        int[] Row(int line) => [.. Things[line].Split(' ').Select(text => int.Parse(text, CultureInfo.InvariantCulture))];
        var model = PublishedModel.Knapsack(Row(0)[0], Row(1), [Row(2), Row(3)]);

        var found = FrontSearch.Find(model, null, null, TestContext.Current.CancellationToken);

        Assert.True(found.IsComplete);
        Assert.Equal(43, found.Entries.Count);
        Assert.Equal(Things[4..].Order(StringComparer.Ordinal), found.Entries.SelectMany(entry => entry.Choices.Select(choice =>
            $"{-entry.Goals[0]}\t{-entry.Goals[1]}\t{string.Concat(choice)}")).Order(StringComparer.Ordinal));
    }

    [Theory]
    [InlineData]
    [InlineData(0, 2)]
    [Source(SourceKind.IndependentProgram, "MultiObjectiveAlgorithms.jl, test/problems.jl (open source, MPL 2.0): knapsack of "
        + "ten things with three goals, its seven nondominated points, which seven algorithms find")]
    public void A_knapsack_with_three_goals(params int[] hidden) =>
        AssertFront(PublishedModel.Knapsack(2137, [557, 898, 148, 63, 78, 964, 246, 662, 386, 272], Worths[..3], hidden), -1,
        [
            [2518, 3866, 3191], [2706, 3857, 3304], [2854, 3570, 3714], [2854, 4636, 3076], [2997, 3539, 3509],
            [3042, 4627, 3189], [3394, 3817, 3408],
        ]);

    [Theory]
    [InlineData]
    [InlineData(1, 3)]
    [Source(SourceKind.IndependentProgram, "MultiObjectiveAlgorithms.jl, test/problems.jl (open source, MPL 2.0): knapsack of "
        + "ten things with four goals, its ten nondominated points")]
    public void A_knapsack_with_four_goals(params int[] hidden) =>
        AssertFront(PublishedModel.Knapsack(2653, [979, 448, 355, 955, 426, 229, 9, 695, 322, 889], Worths, hidden), -1,
        [
            [1904, 3253, 2530, 2469], [2092, 3244, 2643, 2705], [2146, 1944, 2947, 3428], [2298, 4034, 1885, 1885],
            [2435, 3618, 2282, 2094], [2725, 4064, 2652, 1819], [2862, 3648, 3049, 2028], [2883, 3237, 2535, 2397],
            [3152, 3232, 3596, 3382], [3269, 2320, 3059, 2891],
        ]);

    [Theory]
    [InlineData]
    [InlineData(0)]
    [InlineData(0, 1, 2)]
    [Source(SourceKind.IndependentProgram, "MultiObjectiveAlgorithms.jl, test/problems.jl (open source, MPL 2.0): assignment of "
        + "five to five with three goals, its 21 nondominated points")]
    public void An_assignment_with_three_goals_where_candidates_exclude_each_other(params int[] hidden) =>
        AssertFront(PublishedModel.Assignment(
        [
            [[6, 1, 20, 2, 3], [2, 6, 9, 10, 18], [1, 6, 20, 5, 9], [6, 8, 6, 9, 6], [7, 10, 10, 6, 2]],
            [[17, 20, 8, 8, 20], [10, 13, 1, 10, 15], [4, 11, 1, 13, 1], [19, 13, 7, 18, 17], [15, 3, 5, 1, 11]],
            [[10, 7, 1, 19, 12], [2, 15, 12, 10, 3], [11, 20, 16, 12, 9], [10, 15, 20, 11, 7], [1, 9, 20, 7, 6]],
        ], hidden), 1,
        [
            [16, 61, 47], [17, 43, 71], [18, 47, 67], [20, 52, 54], [22, 37, 63], [22, 54, 47], [23, 43, 44], [24, 39, 45],
            [28, 33, 58], [28, 66, 39], [29, 29, 59], [34, 60, 42], [35, 38, 56], [35, 49, 39], [37, 55, 36], [38, 33, 53],
            [39, 43, 41], [40, 47, 37], [43, 51, 31], [45, 33, 34], [50, 40, 32],
        ]);

    private static void AssertFront(PublishedModel model, int sign, int[][] points)
    {
        var found = FrontSearch.Find(model, null, null, TestContext.Current.CancellationToken);
        Assert.True(found.IsComplete);
        Assert.Equal(points.Select(point => string.Join(' ', point)).Order(StringComparer.Ordinal),
            found.Entries.Select(entry => string.Join(' ', entry.Goals.Select(goal => sign * goal)))
                .Order(StringComparer.Ordinal));
    }
}
