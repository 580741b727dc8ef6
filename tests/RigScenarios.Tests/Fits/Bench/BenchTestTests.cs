using RigScenarios.Fits.Bench;
using RigScenarios.Fits.Logs;
using UnitsNet;

namespace RigScenarios.Tests.Fits.Bench;

public class BenchTestTests
{
    private static readonly ElectricResistance Resistance = ElectricResistance.FromOhms(0.1);

    [Fact]
    public void A_discharge_made_from_a_table_gives_the_table_back()
    {
        // 0.5 A from 10 Ah: 20 h, a row each minute; rest before it, another current after the cut-off.
        var rows = Discharge(z => 3 + z);

        var found = BenchTest.Find(rows, 4, Resistance, ElectricPotential.FromVolts(11.951));

        Assert.Equal(10, found.Capacity.AmpereHours, 0.01);
        Assert.Equal(0, found.Pooled);
        Each.Of(found.Table.Points, point =>
            Assert.Equal(3 + point.StateOfCharge.DecimalFractions, point.Voltage.Volts, 1e-3), BenchTest.UsualPoints);
    }

    [Fact]
    public void The_table_never_falls()
    {
        var found = BenchTest.Find(Discharge(z => 3 + z + (0.2 * Math.Sin(20 * z))), 4, Resistance,
            ElectricPotential.FromVolts(11.951));

        Assert.True(found.Pooled > 0);
        Each.Step(found.Table.Points, (before, after) => Assert.True(after.Voltage >= before.Voltage), atLeast: 40);
    }

    [Fact]
    public void A_log_that_ends_before_the_cut_off_is_refused()
    {
        var error = Assert.Throws<ArgumentException>(() =>
            BenchTest.Find(Discharge(z => 3 + z), 4, Resistance, ElectricPotential.FromVolts(8)));

        Assert.Contains("ends before the voltage falls to 8 V", error.Message);
    }

    [Fact]
    public void A_log_with_too_few_rows_is_refused()
    {
        var rows = LogRows.Of([0, 3600, 7200, 10800], [16, 15, 14, 11], [1, 1, 1, 1]);

        Assert.Throws<ArgumentException>(() => BenchTest.Find(rows, 4, Resistance, ElectricPotential.FromVolts(12)));
    }

    private static LogRows Discharge(Func<double, double> openCircuit)
    {
        var seconds = Enumerable.Range(0, 1250).Select(minute => 60.0 * minute).ToArray();
        var amperes = seconds.Select(time => time < 600 ? 0 : 0.5).ToArray();
        var volts = seconds.Select((time, row) =>
        {
            var z = Math.Max(1 - (Math.Max(time - 600, 0) * 0.5 / 36000), 0);
            return (4 * openCircuit(z)) - (amperes[row] * 0.1);
        });
        return LogRows.Of(seconds, [.. volts], amperes);
    }
}
