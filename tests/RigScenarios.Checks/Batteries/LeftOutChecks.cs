using RigScenarios.Benchmarks.MeasuredCells;

namespace RigScenarios.Checks.Batteries;

/// <summary>Each temperature of the measured cell predicted by values that were fitted on the other five.</summary>
[Source(SourceKind.OpenData, MeasuredCell.Citation)]
public class LeftOutChecks
{
    private static readonly IReadOnlyList<LeftOut> Fits = LeftOut.Read(MeasuredCell.Folder);
    private static readonly OwnOpenCircuit Own = OwnOpenCircuit.Read(MeasuredCell.Folder);

    // Largest error of charge or energy, %; with the project's open-circuit voltage, then with the cell's own. 0.15 points: the
    // digit of the page and a bit.
    [Theory]
    [InlineData(40, 4.3, 3.6)]
    [InlineData(25, 1.5, 0.6)]
    [InlineData(10, 2.8, 2.1)]
    [InlineData(0, 2.4, 5.5)]
    [InlineData(-10, 6.2, 2.3)]
    [InlineData(-20, 13.2, 7.1)]
    public void A_temperature_that_was_not_seen_is_off_by_what_is_stated(double chamber, double percent, double withOwn)
    {
        var fit = Fits.Single(one => one.ChamberCelsius == chamber);
        Assert.Equal(percent, 100 * fit.Predict(MeasuredCell.Discharges, null).Max(row => row.Largest), 0.15);
        Assert.Equal(withOwn, 100 * fit.Predict(MeasuredCell.Discharges, Own).Max(row => row.Largest), 0.15);
    }

    // An independent program, which weighed the same discharges otherwise, finds 10.5 % with the default voltage (2C at -20 °C,
    // all else within 6.6 %) and 4.9 % with the cell's own: of the same size, so three points.
    [Theory]
    [Source(SourceKind.IndependentProgram,
        "independent fit of the same equations to the same discharges, one temperature left out; figures read in its output")]
    [InlineData(false, 10.5)]
    [InlineData(true, 4.9)]
    public void The_worst_is_of_the_size_that_another_program_finds(bool own, double percent) =>
        Assert.Equal(percent, 100 * Fits.SelectMany(fit => fit.Predict(MeasuredCell.Discharges, own ? Own : null))
            .Max(row => row.Largest), 3.0);

    // That the values are those of least squares: none of the six can be moved, either way, without the sum growing.
    [Theory]
    [InlineData(-20)]
    [InlineData(10)]
    public void The_values_are_those_of_least_squares(double chamber)
    {
        var set = Fits.Single(one => one.ChamberCelsius == chamber).Set;
        var fit = new LeftOutFit(MeasuredCell.Discharges, MeasuredCell.Folder);
        var least = fit.Squares(set, chamber);
        for (var value = 0; value < LeftOutFit.Free; value++)
        {
            Assert.True(fit.Squares(LeftOutFit.Moved(set, value, 1), chamber) > least);
            Assert.True(fit.Squares(LeftOutFit.Moved(set, value, -1), chamber) > least);
        }
    }

    [Fact]
    [Guard]
    public void Each_of_six_temperatures_is_left_out_once() =>
        Assert.Equal([-20, -10, 0, 10, 25, 40], Fits.Select(fit => fit.ChamberCelsius).Order());
}
