using RigScenarios.Cells;
using RigScenarios.Fits;
using RigScenarios.Fits.Logs;

namespace RigScenarios.Tests.Fits.Logs;

/// <summary>Who measures more often knows no more of a battery: the model's error stays the same for minutes.</summary>
public class ManyRowsTests
{
    [Fact]
    public void A_million_rows_of_a_discharge_are_no_more_certain_than_a_hundred()
    {
        var many = InventedLog.Of(1_000_000, 1);
        var few = InventedLog.Thinned(many, 10_000);

        var (manyFit, fewFit) = (Fit(many), Fit(few));

        Assert.Equal(101, few.Count);
        Each.Of([UnknownKind.Capacity, UnknownKind.Resistance], kind =>
        {
            var (one, other) = (manyFit[kind], fewFit[kind]);
            Assert.InRange(one.StandardError / other.StandardError, 0.95, 1.05);
            Assert.InRange(Math.Abs(one.Log - other.Log), 0, 0.5 * one.StandardError);
        });
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
        [new PowerLog { Id = "log", Rows = rows, Ambient = InventedLog.Air }], options: FitOptions.Default with { ChecksIntervals = false }));
}
