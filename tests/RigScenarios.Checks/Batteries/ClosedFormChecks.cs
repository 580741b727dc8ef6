using RigScenarios.Batteries;
using RigScenarios.Cells;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Checks.Batteries;

/// <summary>
/// Discharges that can be written down: elementary, derived here from the equations of docs/discharge.md.
/// </summary>
[Source(SourceKind.ClosedForm, "elementary, derived beside each test from the equations of docs/discharge.md")]
public class ClosedFormChecks
{
    private const double Ambient = 298.15;

    // An open-circuit voltage that is 4 V throughout, no heat to speak of (a heat capacity of 1 TJ/K), no cold: what is left is a
    // source with one resistance.
    private static readonly Pack Source = new()
    {
        SeriesGroups = 1,
        Capacity = ElectricCharge.FromAmpereHours(2),
        OpenCircuitVoltage = OpenCircuitVoltage.FromTable([0, 1], [4, 4]),
        Resistance0 = ElectricResistance.FromOhms(0.1),
        Resistance1 = ElectricResistance.Zero,
        Resistance2 = ElectricResistance.Zero,
        TimeConstant1 = Duration.FromSeconds(10),
        TimeConstant2 = Duration.FromSeconds(100),
        LeadResistance = ElectricResistance.FromOhms(0.05),
        ActivationEnergy = MolarEnergy.Zero,
        HeatCapacity = Entropy.FromJoulesPerKelvin(1e12),
        HeatConductance = ThermalConductance.FromWattsPerKelvin(0),
        CutoffVoltage = ElectricPotential.FromVolts(1),
        MaximumCurrent = ElectricCurrent.FromAmperes(100),
        MaximumTemperature = Temperature.FromKelvins(400),
    };

    [Theory]
    [InlineData(1)]
    [InlineData(10)]
    [InlineData(26)]
    public void Constant_power_from_a_constant_source_lasts_capacity_over_current(double watts)
    {
        // V = (E + sqrt(E² - 4PR))/2 never changes; t = Q/(P/V).
        var volts = (4 + Math.Sqrt(16 - (4 * watts * 0.15))) / 2;
        var seconds = 3600 * 2 * volts / watts;

        var result = Run(Source, Demand.OfPower(Power.FromWatts(watts)));

        Assert.Equal(EndCause.Empty, result.Cause);
        Assert.Equal(seconds, result.EndTime.Seconds, 1e-9 * seconds);
        Assert.Equal(volts, result.EndVoltage!.Value.Volts, 1e-12);
        Assert.Equal(watts * seconds, result.Energies.Delivered.Joules, 1e-9 * watts * seconds);
        Assert.Equal(4.0 * 2 * 3600, result.Energies.Chemical.Joules, 1e-5);
    }

    [Fact]
    public void Power_limit_is_the_source_squared_over_four_times_the_resistance()
    {
        const double limit = 4 * 4 / (4 * 0.15);

        Assert.Equal(EndCause.Empty, Run(Source, Demand.OfPower(Power.FromWatts(limit * (1 - 1e-12)))).Cause);
        var beyond = Run(Source, Demand.OfPower(Power.FromWatts(limit * (1 + 1e-12))));
        Assert.Equal(EndCause.PowerLimit, beyond.Cause);
        Assert.True(beyond.AtStep);
        Assert.Equal(0, beyond.EndTime.Seconds);
        Assert.Null(beyond.EndVoltage);
        Assert.Null(beyond.EndCurrent);
    }

    [Fact]
    public void Pair_charges_exponentially_under_constant_current()
    {
        // V = 4 - I·(0.15 + 0.2·(1 - exp(-t/10)) + 0.3·(1 - exp(-t/100))), cut off at 3 V with I = 2 A: solved for t by
        // bisection.
        var pack = Source with
        {
            Resistance1 = ElectricResistance.FromOhms(0.2),
            Resistance2 = ElectricResistance.FromOhms(0.3),
            CutoffVoltage = ElectricPotential.FromVolts(3),
        };
        double low = 0, high = 1000;
        for (var i = 0; i < 100; i++)
        {
            var middle = (low + high) / 2;
            var volts = 4 - (2 * (0.15 + (0.2 * (1 - Math.Exp(-middle / 10))) + (0.3 * (1 - Math.Exp(-middle / 100)))));
            (low, high) = volts > 3 ? (middle, high) : (low, middle);
        }

        var result = Run(pack, Demand.OfCurrent(ElectricCurrent.FromAmperes(2)));

        Assert.Equal(EndCause.VoltageCutoff, result.Cause);
        Assert.Equal(low, result.EndTime.Seconds, 1e-9 * low);
        Assert.Equal(0.4 * (1 - Math.Exp(-low / 10)), result.FinalState.Voltage1.Volts, 1e-12);
        Assert.Equal(0.6 * (1 - Math.Exp(-low / 100)), result.FinalState.Voltage2.Volts, 1e-12);
    }

    [Fact]
    public void Resistive_load_on_a_falling_source_follows_an_exponential()
    {
        // U = 3 + z, I = g·U/(1 + g·R): z + 3 = 4·exp(-t/tau) with tau = 3600·Q·(1 + g·R)/g; empty when 3 + z = 3.
        const double g = 0.5, resistance = 0.15;
        var pack = Source with { OpenCircuitVoltage = OpenCircuitVoltage.FromTable([0, 1], [3, 4]) };
        const double tau = 3600 * 2 * (1 + (g * resistance)) / g;
        var seconds = tau * Math.Log(4.0 / 3);

        var result = Run(pack, new Demand([new DemandSegment(
            Duration.FromSeconds(777), Power.Zero, ElectricCurrent.Zero, ElectricConductance.FromSiemens(g))]));

        Assert.Equal(EndCause.Empty, result.Cause);
        Assert.Equal(seconds, result.EndTime.Seconds, 1e-9 * seconds);
    }

    // v = v0·exp(-t/tau): after a load that left 0.3 V on one pair and 0.2 V on the other, the terminals come back to 4 V.
    [Theory]
    [InlineData(5)]
    [InlineData(60)]
    [InlineData(400)]
    public void Voltage_recovers_at_rest_by_two_exponentials(double seconds)
    {
        var start = DischargeStart.Full with
        {
            Voltage1 = ElectricPotential.FromVolts(0.3),
            Voltage2 = ElectricPotential.FromVolts(0.2),
        };

        var rest = Discharge.Run(Source, Temperature.FromKelvins(Ambient), start, Demand.OfPower(Power.Zero),
            new DischargeOptions { TimeLimit = Duration.FromSeconds(seconds) }, TestContext.Current.CancellationToken);

        Assert.Equal(4 - (0.3 * Math.Exp(-seconds / 10)) - (0.2 * Math.Exp(-seconds / 100)), rest.EndVoltage!.Value.Volts, 1e-12);
    }

    [Fact]
    public void Pack_cools_to_the_air_exponentially_at_rest()
    {
        // T = Tamb + (T0 - Tamb)·exp(-G·t/C).
        var pack = Source with
        {
            HeatCapacity = Entropy.FromJoulesPerKelvin(500),
            HeatConductance = ThermalConductance.FromWattsPerKelvin(0.4),
        };
        var start = DischargeStart.Full with { Temperature = Temperature.FromKelvins(330) };

        var result = Discharge.Run(
            pack, Temperature.FromKelvins(270), start, Demand.OfPower(Power.Zero),
            new DischargeOptions { TimeLimit = Duration.FromHours(1) },
            TestContext.Current.CancellationToken);

        Assert.Equal(EndCause.TimeLimit, result.Cause);
        Assert.Equal(3600, result.EndTime.Seconds);
        Assert.Equal(270 + (60 * Math.Exp(-0.4 * 3600 / 500)), result.EndTemperature.Kelvins, 1e-9);
        Assert.Equal(1, result.EndStateOfCharge.DecimalFractions);
    }

    [Fact]
    public void Chemical_energy_is_the_area_under_the_open_circuit_curve()
    {
        // With all of the capacity usable, the energy at open-circuit voltage is S·3600·Q·∫U dz whatever the load; U = 3 + z: 3.5
        // on average.
        var pack = Source with { OpenCircuitVoltage = OpenCircuitVoltage.FromTable([0, 0.3, 1], [3, 3.3, 4]) };

        var result = Run(pack, Demand.OfPower(Power.FromWatts(7)));

        Assert.Equal(EndCause.Empty, result.Cause);
        Assert.Equal(3600 * 2 * 3.5, result.Energies.Chemical.Joules, 1e-6 * 3600 * 2 * 3.5);
        Assert.Equal(2, result.Energies.ChargeDrawn.AmpereHours, 1e-9);
    }

    private static DischargeResult Run(Pack pack, Demand demand) =>
        Discharge.Run(pack, Temperature.FromKelvins(Ambient), DischargeStart.Full, demand, DischargeOptions.Default,
            TestContext.Current.CancellationToken);
}
