using RigScenarios.Cells;
using RigScenarios.Fits;
using RigScenarios.Fits.Logs;

namespace RigScenarios.Tests.Fits.Logs;

/// <summary>Who measures more often knows no more of a battery: the model's error stays the same for minutes.</summary>
public class ManyRowsTests
{
    [Fact]
    public void A_million_rows_of_a_discharge_are_no_more_certain_than_a_few_hundred()
    {
        var many = InventedLog.Of(1_000_000, 1);
        var manyFit = Fit(many);

        Each.Of([1_000, 5_000], every =>
        {
            var fewFit = Fit(InventedLog.Thinned(many, every));
            Each.Of([UnknownKind.Capacity, UnknownKind.Resistance], kind =>
            {
                var (one, other) = (manyFit[kind], fewFit[kind]);
                Assert.InRange(one.StandardError / other.StandardError, 0.98, 1.02);
                Assert.InRange(Math.Abs(one.Log - other.Log), 0, 0.2 * one.StandardError);
            }, atLeast: 2);
        }, atLeast: 2);
    }

    [Fact]
    public void A_hundred_rows_may_lose_the_last_block_and_no_more()
    {
        var many = InventedLog.Of(1_000_000, 1);
        var (manyFit, fewFit) = (Fit(many), Fit(InventedLog.Thinned(many, 10_000)));

        // Rows of two minutes: the last half block, where the battery ends, falls below what is compared.
        Assert.Equal(1, manyFit.Logs[0].Blocks - fewFit.Logs[0].Blocks);
        Each.Of([UnknownKind.Capacity, UnknownKind.Resistance], kind =>
            Assert.InRange(manyFit[kind].StandardError / fewFit[kind].StandardError, 0.88, 1.02), atLeast: 2);
    }

    [Fact]
    public void The_truth_lies_in_the_interval_as_often_as_promised()
    {
        var (inside, all) = (0, 0);
        Drawn.Cases(1, 40, random =>
        {
            var fit = Fit(InventedLog.Of(300, random.Next()));
            inside += Holds(fit[UnknownKind.Capacity], InventedLog.TrueCapacity)
                + Holds(fit[UnknownKind.Resistance], InventedLog.TrueResistance);
            all += 2;
        });

        // 95 % of 80, less three deviations of a binomial count; a single seed repeated alone says little.
        if (all == 80)
            Assert.InRange(inside, 70, 80);
    }

    private static int Holds(FitEstimate found, double truth) => truth >= found.Low && truth <= found.High ? 1 : 0;

    private static FitResult Fit(LogRows rows) => BatteryFit.Find(new FitProblem(InventedLog.Battery,
        FitPriors.Of(Age.New) with { Load = null }, [],
        [new PowerLog { Id = "log", Rows = rows, Ambient = InventedLog.Air }],
        options: FitOptions.Default with { ChecksIntervals = false }));
}
