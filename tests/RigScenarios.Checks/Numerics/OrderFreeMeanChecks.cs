using RigScenarios.Numerics;

namespace RigScenarios.Checks.Numerics;

/// <summary>The order-free mean against published values of games: it is the Shapley value.</summary>
public class OrderFreeMeanChecks
{
    // Runways for four types of aircraft cost 8, 11, 13, 18; a set of types needs the longest of theirs.
    [Fact]
    [Source(SourceKind.Paper, "S. C. Littlechild and G. Owen, A Simple Expression for the Shapley Value in a Special Case, "
        + "Management Science 20 (3), 1973, pp. 370-372: the airport game; the table of costs 8, 11, 13, 18 second-hand, in the "
        + "encyclopaedia article Airport problem, read there")]
    public void Landing_charges_of_the_airport_game()
    {
        int[] runways = [8, 11, 13, 18];

        Same([2, 3, 4, 9], OrderFreeMean.Of(4, set => runways.Where((_, type) =>
            (set & (1 << type)) != 0).DefaultIfEmpty(0).Max()));
    }

    // Four heirs claim a whole, a half, a third and a quarter of 120; a set of heirs is worth the largest of its claims.
    [Fact]
    [Source(SourceKind.ReferenceLibrary,
        "CoopGame 0.2.2 for R, documentation of shapleyValue, example Aumann2010Example with its "
        + "printed result 80.83333, 20.83333, 10.83333, 7.50000, which is from R. J. Aumann, Some non-superadditive games, and "
        + "their Shapley values, in the Talmud, Int. Journal of Game Theory 39, 2010, pp. 3-10; the documentation was read")]
    public void The_heirs_of_a_game_that_is_not_superadditive()
    {
        // In the order of the package: alone, pairs, threes, all.
        int[] worths = [120, 60, 40, 30, 120, 120, 120, 60, 60, 40, 120, 120, 120, 60, 120];
        int[] sets = [0b0001, 0b0010, 0b0100, 0b1000, 0b0011, 0b0101, 0b1001, 0b0110, 0b1010, 0b1100, 0b0111, 0b1011, 0b1101,
            0b1110, 0b1111];

        Same([80.83333, 20.83333, 10.83333, 7.5], OrderFreeMean.Of(4, set => set == 0 ? 0 : worths[Array.IndexOf(sets, set)]));
    }

    [Fact]
    [Source(SourceKind.ReferenceLibrary,
        "coopProductGame 2.0 for R, documentation of shapleyValue: game 68, 102, 0, 170, 710, 762, "
        + "992 with its printed result 229, 272, 491; read")]
    public void A_production_game_of_three()
    {
        // In the order of the package: 1, 2, 3, 12, 13, 23, 123.
        int[] worths = [0, 68, 102, 170, 0, 710, 762, 992];

        Same([229, 272, 491], OrderFreeMean.Of(3, set => worths[set]), 0.5);
    }

    private static void Same(double[] expected, IReadOnlyList<double> found, double within = 0.000005)
    {
        Assert.Equal(expected.Length, found.Count);
        foreach (var (one, other) in expected.Zip(found))
            Assert.Equal(one, other, within);
    }
}
