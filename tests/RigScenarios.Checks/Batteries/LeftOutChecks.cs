using RigScenarios.Benchmarks.MeasuredCells;

namespace RigScenarios.Checks.Batteries;

/// <summary>Each temperature of the measured cell predicted by values that were fitted on the other five.</summary>
[Source(SourceKind.OpenData, MeasuredCell.Citation)]
public class LeftOutChecks
{
    private static readonly IReadOnlyList<LeftOut> Fits = LeftOut.Read(MeasuredCell.Folder);
    private static readonly OwnOpenCircuit Own = OwnOpenCircuit.Read(MeasuredCell.Folder);

    public static TheoryData<bool, double> All => new(Fits.Select(fit => (fit.IsOwn, fit.ChamberCelsius)));

    // What is claimed holds for a temperature that was not seen, but for the energy at C/2 and the deepest cold, which are
    // extrapolated: there the largest error stands in the page.
    [Theory]
    [MemberData(nameof(All))]
    public void A_temperature_that_was_not_seen_is_predicted_within_what_is_stated(bool own, double chamber)
    {
        var rows = Fits.Single(fit => fit.IsOwn == own && fit.ChamberCelsius == chamber).Predict(MeasuredCell.Discharges, Own);
        var most = chamber == -20 && !own ? 11 : 7;
        Assert.InRange(100 * rows.Max(row => row.Largest), 0, most);
    }

    // That the values are those of least squares: none of the six can be moved, either way, without the sum growing.
    [Theory]
    [InlineData(false, -20)]
    [InlineData(true, 10)]
    public void The_values_are_those_of_least_squares(bool own, double chamber)
    {
        var set = Fits.Single(fit => fit.IsOwn == own && fit.ChamberCelsius == chamber).Set;
        var fit = new LeftOutFit(MeasuredCell.Discharges, own ? Own : null);
        var least = fit.Squares(set, chamber);
        for (var value = 0; value < LeftOutFit.Free; value++)
        {
            Assert.True(fit.Squares(LeftOutFit.Moved(set, value, 1), chamber) > least);
            Assert.True(fit.Squares(LeftOutFit.Moved(set, value, -1), chamber) > least);
        }
    }

    [Fact]
    [Guard]
    public void Six_temperatures_are_left_out_with_either_voltage() => Assert.Equal(12, Fits.Count);
}
