using RigScenarios.Batteries;
using RigScenarios.Cells;
using RigScenarios.Fits.Bench;
using RigScenarios.Fits.Logs;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Tests.Fits.Bench;

public class PulseTestTests
{
    private static readonly ElectricCurrent OneAmpere = ElectricCurrent.FromAmperes(1);

    [Fact]
    public void A_step_made_by_the_curve_itself_is_found_again()
    {
        Drawn.Cases(1, 100, random =>
        {
            var (r0, r1) = (0.02 + (0.1 * random.NextDouble()), 0.02 + (0.1 * random.NextDouble()));
            var (tau, change) = (3 + (15 * random.NextDouble()), random.Next(2) == 0 ? 4.0 : -4.0);

            var step = Assert.Single(PulseTest.Find(Log(r0, r1, tau, change, 0.5), OneAmpere));

            Assert.Equal(20, step.At.Seconds, 1e-9);
            Assert.Equal(change, step.Step.Amperes, 1e-9);
            Assert.Equal(r0, step.Resistance0.Ohms, 1e-6);
            Assert.Equal(r1, step.Resistance1.Ohms, 1e-6);
            Assert.Equal(tau, step.TimeConstant.Seconds, 1e-4);
            Assert.True(step.TimeConstantFound);
            Assert.Equal(r0 + (r1 * (1 - Math.Exp(-10 / tau))), step.After10Seconds.Ohms, 1e-6);
        });
    }

    [Theory]
    [InlineData(0.1)]
    [InlineData(400)]
    public void A_time_constant_beyond_what_the_window_shows_is_told(double tau)
    {
        var step = Assert.Single(PulseTest.Find(Log(0.05, 0.05, tau, 4, 0.5), OneAmpere));

        Assert.False(step.TimeConstantFound);
    }

    [Fact]
    public void Too_few_rows_behind_a_step_give_nothing() => Assert.Empty(PulseTest.Find(Log(0.05, 0.05, 10, 4, 9), OneAmpere));

    [Fact]
    public void A_battery_as_the_model_has_it_has_the_factor_one()
    {
        var pack = PackModel.From(
            new Battery
            {
                Energy = Energy.FromWattHours(98),
                Voltage = ElectricPotential.FromVolts(14.4),
                LeadResistance = ElectricResistance.FromOhms(0.02),
            },
            null, null, Age.New).Pack;
        var cold = Temperature.FromDegreesCelsius(0);
        var growth = Math.Exp(pack.ActivationEnergy.JoulesPerMole / 8.314462618 * ((1 / 273.15) - (1 / 298.15)));
        double After10(ElectricResistance resistance, Duration tau) => resistance.Ohms * (1 - Math.Exp(-10 / tau.Seconds));
        var expected = 0.02 + (pack.SeriesGroups * growth * (pack.Resistance0.Ohms
            + After10(pack.Resistance1, pack.TimeConstant1) + After10(pack.Resistance2, pack.TimeConstant2)));
        var step = new PulseStep(Duration.Zero, OneAmpere, ElectricResistance.FromOhms(expected), ElectricResistance.Zero,
            Duration.FromSeconds(10), TimeConstantFound: true, ElectricResistance.Zero, ElectricResistance.Zero, Duration.Zero);

        Assert.Equal(1, step.ResistanceFactor(pack, cold), 1e-9);
        Assert.Throws<ArgumentException>(() => (step with { Resistance0 = ElectricResistance.FromOhms(0.01) })
            .ResistanceFactor(pack, cold));
    }

    /// <summary>A load that changes once, 20 s after the begin; the voltage falls slowly besides.</summary>
    private static LogRows Log(double r0, double r1, double tau, double change, double interval)
    {
        var seconds = Enumerable.Range(0, (int)(100 / interval)).Select(row => row * interval).ToArray();
        var volts = seconds.Select(time =>
        {
            var after = time - 20;
            return 16 - (1e-4 * time) - (after < 0 ? 0 : change * (r0 + (r1 * (1 - Math.Exp(-after / tau)))));
        });
        return LogRows.Of(seconds, [.. volts], [.. seconds.Select(time => time < 20 ? 5 : 5 + change)]);
    }
}
