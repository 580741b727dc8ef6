using RigScenarios.Batteries;
using UnitsNet;

namespace RigScenarios.Tests.Batteries;

/// <summary>A pack under given currents against the discharge model's own program, which solves the same equations another
/// way.</summary>
public sealed class DrivenPackTests
{
    private const double Minute = 60;

    [Theory]
    [InlineData(22, 1, 35)]
    [InlineData(0, 1, 60)]
    [InlineData(-12, 0.5, 35)]
    [InlineData(22, 0.5, 60)]
    public void Its_voltage_is_that_of_the_discharge_it_follows(double celsius, double nearShare, double watts)
    {
        var pack = Packs.Default with { NearShare = nearShare };
        var (amperes, expected) = Discharged(pack, celsius, watts);

        var volts = new double[amperes.Length];
        new DrivenPack(pack, Minute, 273.15 + celsius).Run(amperes, 1, 1, 0, volts, new double[amperes.Length],
            TestContext.Current.CancellationToken);

        // The mean over time here, over charge there; at constant power they are the same to the square of what V changes. Right
        // at the start and the end that is most.
        Each.Pair(volts[2..^2], expected[2..^2], (one, other) => Assert.Equal(other, one, 1e-3), atLeast: 20);
        Assert.Equal(expected[2..^2].Average(), volts[2..^2].Average(), 1e-4);
    }

    [Fact]
    public void Gain_start_and_offset_do_what_they_say()
    {
        var pack = Packs.Default;
        var amperes = Enumerable.Repeat(2.0, 30).ToArray();

        // A sensor that shows a tenth too much is the same as a tenth less current.
        Assert.Equal(Run(pack, [.. amperes.Select(one => 0.9 * one)], 1, 1, 0), Run(pack, amperes, 0.9, 1, 0));
        Each.Pair(Run(pack, amperes, 1, 1, 0), Run(pack, amperes, 1, 1, 0.02), (one, other) =>
            Assert.Equal(one + (pack.SeriesGroups * 0.02), other, 1e-9), atLeast: 30);
        Each.Pair(Run(pack, amperes, 1, 0.8, 0), Run(pack, amperes, 1, 0.9, 0), (less, more) => Assert.True(less < more),
            atLeast: 30);
    }

    [Fact]
    public void Outside_of_the_table_the_voltage_goes_on_along_its_end_slope()
    {
        var pack = Packs.Default;
        var (high, low) = (Run(pack, [0, 0], 1, 1.02, 0)[1], Run(pack, [0, 0], 1, 1, 0)[1]);
        var slope = pack.OpenCircuitVoltage.Curve.SlopeAt(1) * pack.SeriesGroups;

        Assert.Equal(0.02 * slope, high - low, 1e-9);
        Assert.True(Run(pack, [0], 1, -0.02, 0)[0] < Run(pack, [0], 1, 0, 0)[0]);
    }

    private static double[] Run(Pack pack, double[] amperes, double factor, double start, double offset)
    {
        var volts = new double[amperes.Length];
        new DrivenPack(pack, Minute, 293.15).Run(amperes, factor, start, offset, volts, new double[volts.Length],
            TestContext.Current.CancellationToken);
        return volts;
    }

    // Minute by minute: mean current, and energy over charge.
    private static (double[] Amperes, double[] Volts) Discharged(Pack pack, double celsius, double watts)
    {
        var limit = Duration.FromSeconds(Minute);
        var options = new DischargeOptions { SeriesPoints = 0, TimeLimit = limit, RelativeTolerance = 1e-9 };
        var state = DischargeStart.Full with { Temperature = Temperature.FromDegreesCelsius(celsius) };
        var (amperes, volts) = (new List<double>(), new List<double>());
        while (pack.Run(celsius, Demand.OfPower(Power.FromWatts(watts)), state, options) is { Cause: EndCause.TimeLimit } minute)
        {
            amperes.Add(minute.Energies.ChargeDrawn.Coulombs / Minute);
            volts.Add(minute.Energies.Delivered.Joules / minute.Energies.ChargeDrawn.Coulombs);
            state = minute.FinalState;
        }

        return ([.. amperes], [.. volts]);
    }
}
