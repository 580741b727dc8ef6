using System.Runtime.Intrinsics;
using RigScenarios.Wiring;

namespace RigScenarios.Tests.Wiring;

/// <summary>A tree of resistances solved lane by lane, as in the browser, is what vectors give elsewhere.</summary>
public class PlainRadialPartTests
{
    // Sources of which the last two cannot deliver: 30 W and 25 W behind 0.1 to 0.4 Ω.
    private static readonly Vector512<double> Sources = Vector512.Create(16.8, 15, 15, 14.4, 12, 11, 5, 1);

    [Fact]
    public void Voltages_are_alike_and_so_is_where_there_are_none()
    {
        var (vectors, plain) = (Tree(), Tree());
        var resistance = Vector512.Create(0.1, 0.1, 0.1, 0.12, 0.15, 0.2, 0.4, 0.4);

        var solvable = vectors.Solve(Sources, resistance, out var pivot);
        var plainSolvable = plain.PlainSolve(Sources, resistance, out var plainPivot);

        Assert.Equal(solvable.AsInt64(), plainSolvable.AsInt64());
        Assert.Equal([-1, -1, -1, -1, -1, -1, 0, 0], Enumerable.Range(0, 8).Select(lane => solvable.AsInt64()[lane]));
        for (var lane = 0; lane < 6; lane++)
        {
            // It belongs to the voltages before the last change, and lanes side by side go on until the last of them is there.
            Assert.Equal(pivot[lane], plainPivot[lane], 1e-10);
            for (var node = 0; node < 4; node++)
                Assert.Equal(vectors.Volts(node)[lane], plain.Volts(node)[lane], 1e-12);
        }
    }

    [Fact]
    public void One_state_in_all_lanes_is_solved_once_and_stands_in_all()
    {
        var (vectors, plain) = (Tree(), Tree());
        vectors.Solve(Vector512.Create(14.0), Vector512.Create(0.1), out _);
        plain.PlainSolve(Vector512.Create(14.0), Vector512.Create(0.1), out _);

        Each.Of([0, 3, 7], lane => Assert.Equal(vectors.Volts(3)[lane], plain.Volts(3)[lane], 1e-12));
    }

    private static RadialPart Tree() => new(
    [
        new RadialNode(-1, 0) { Amperes = 0.2 },
        new RadialNode(0, 0.05) { Watts = 30 },
        new RadialNode(0, 0.02, 0.01) { Siemens = 0.03 },
        new RadialNode(2, 0.08) { Watts = 25, Siemens = 0.01 },
    ]);
}
