using CsCheck;
using RigScenarios.Batteries;
using RigScenarios.Batteries.Batch;
using RigScenarios.Cells;
using UnitsNet;

namespace RigScenarios.Tests.Batteries.Batch;

/// <summary>A batch says of each of its scenarios what the single run says, whatever stands beside it.</summary>
public class BatchDischargeTests
{
    private const double Trifle = 1e-4;

    [Fact]
    public void Ends_as_the_single_run_does()
    {
        DrawnScenarios.Any.Holds(
            (one, looked) =>
            {
                var exact = one.Single();
                var seconds = exact.EndTime.Seconds;
                var moves = new[] { Trifle, -Trifle }.Max(part => Math.Abs(one.Single(part).EndTime.Seconds - seconds));
                if (moves > 1e-3 * seconds)
                    return;
                looked.One();
                var end = Run([one])[0];
                Assert.Equal(seconds, end.EndTime.Seconds, 5e-3 * seconds);
                if (end.Cause != exact.Cause)
                    Assert.Equal(seconds, end.EndTime.Seconds, 1e-3 * seconds);
                else
                    Assert.Equal(exact.AtStep, end.AtStep);
                Assert.Equal(exact.EndTemperature.Kelvins, end.Temperature.Kelvins, 0.3);
                Assert.Equal(exact.Energies.Delivered.Joules, end.Delivered.Joules, (6e-3 * exact.Energies.Delivered.Joules) + 1);
                Assert.True(end.LowestTemperature <= end.Temperature);
            },
            cases: 150, atLeast: 110);
    }

    [Fact]
    public void Most_ends_are_within_a_thousandth()
    {
        DrawnScenarios.Any.Array[200].Holds(
            some =>
            {
                var ends = Run(some);
                var close = some.Zip(ends).Count(pair =>
                {
                    var seconds = pair.First.Single().EndTime.Seconds;
                    return Math.Abs(pair.Second.EndTime.Seconds - seconds) <= 1e-3 * seconds;
                });
                Assert.True(close >= 197, $"{close} of 200 are within 0.1 %");
            },
            cases: 1);
    }

    [Fact]
    public void A_scenario_ends_the_same_whatever_stands_beside_it()
    {
        DrawnScenarios.Any.Array[40].Holds(
            some =>
            {
                var ends = Run(some);
                Assert.Equal(ends.Reverse(), Run([.. some.Reverse()]));
                Each.Of(some.Index(), one => Assert.Equal(ends[one.Index], Run([one.Item])[0]));
            },
            cases: 3);
    }

    [Theory]
    [InlineData("One")]
    [InlineData("Four")]
    [InlineData("Eight")]
    public void Any_number_side_by_side_gives_the_same_causes(string width)
    {
        DrawnScenarios.Any.Array[60].Holds(
            some =>
            {
                var ends = Run(some);
                var others = InPlainNumbers(some, Enum.Parse<LaneWidth>(width));
                Each.Of(ends.Zip(others), pair =>
                {
                    if (pair.First.GrazesLimit)
                        return;
                    Assert.Equal(pair.First.Cause, pair.Second.Cause);
                    Assert.Equal(pair.First.EndTime.Seconds, pair.Second.Seconds, 1e-4 * (1 + pair.Second.Seconds));
                });
            },
            cases: 2);
    }

    [Fact]
    public void Parts_of_a_batch_give_what_the_whole_gives()
    {
        DrawnScenarios.Any.Array[30].Holds(
            some =>
            {
                var whole = InPlainNumbers(some, LaneWidths.Widest);
                var parts = InPlainNumbers(some[..11], LaneWidths.Widest).Concat(InPlainNumbers(some[11..], LaneWidths.Widest));
                Assert.Equal(whole.Select(end => BatchEnd.Of(end)), parts.Select(end => BatchEnd.Of(end)));
            },
            cases: 2);
    }

    [Fact]
    public void A_limit_that_is_only_just_missed_is_told()
    {
        // The heaviest block of the third repetition ends so close above the cut-off.
        var pack = Packs.Default;
        var demand = Packs.Takes;
        var course = pack.Run(5, demand, options: new DischargeOptions { TimeLimit = 2 * demand.Period });
        var lowest = course.Series.Min(point => point.Voltage.Volts);
        var grazed = new BatchScenario
        {
            Pack = pack with { CutoffVoltage = ElectricPotential.FromVolts(lowest - 1e-5) },
            Ambient = Temperature.FromDegreesCelsius(5), Demand = demand, TimeLimit = 2 * demand.Period,
        };
        var passed = grazed with { Pack = pack with { CutoffVoltage = ElectricPotential.FromVolts(lowest - 0.5) } };

        var ends = Run([grazed, passed]);

        Assert.Equal([true, false], ends.Select(end => end.GrazesLimit));
    }

    [Fact]
    public void Equal_tables_are_shared()
    {
        var shared = new SharedCurves();
        var pack = Packs.Default;
        var points = pack.OpenCircuitVoltage.Points;

        var same = shared.Of(pack with { OpenCircuitVoltage = new OpenCircuitVoltage(points) });
        var other = shared.Of(pack with { OpenCircuitVoltage = new OpenCircuitVoltage(points.Where((_, i) => i != 3)) });

        Assert.Same(shared.Of(pack), same);
        Assert.NotSame(same, other);
    }

    [Fact]
    public void Nothing_gives_nothing_and_cancelling_ends_the_work()
    {
        using var cancelled = new CancellationTokenSource();
        cancelled.Cancel();
        var one = new BatchScenario
        {
            Pack = Packs.Default, Ambient = Temperature.FromDegreesCelsius(5), Demand = Packs.Takes,
        };

        Assert.Empty(Run([]));
        Assert.ThrowsAny<OperationCanceledException>(() => BatchDischarge.Run([one], cancelled.Token).ToArray());
    }

    private static BatchEnd[] Run(BatchScenario[] some) =>
        [.. BatchDischarge.Run(some, TestContext.Current.CancellationToken)];

    private static BatchCaseEnd[] InPlainNumbers(BatchScenario[] some, LaneWidth width)
    {
        var shared = new SharedCurves();
        var ends = new BatchCaseEnd[some.Length];
        BatchDischarge.Run(0, some.Length,
            (first, cases) =>
            {
                for (var i = 0; i < cases.Length; i++)
                    cases[i] = BatchDischarge.CaseOf(some[first + i], shared);
            },
            (first, found) => found.CopyTo(ends.AsSpan((int)first)), TestContext.Current.CancellationToken, width);
        return ends;
    }
}
