using RigScenarios.Batteries;
using RigScenarios.Cells;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Checks.Batteries;

/// <summary>
/// A charge that can be written down: an open-circuit voltage that rises in a straight line, U = a + b·z, behind one resistance
/// R; the current I until the voltage is F, then F held until the current has fallen to E. With the part k of the charge kept:
/// z rises by k·I/(3600·Q) a second, so the voltage is held from z1 = (F - I·R - a)/b on; from then the current is (F - U)/R,
/// and falls by exp(-t/tau), tau = 3600·Q·R/(b·k). Elementary; the form in which textbooks give the exponential tail of a
/// charge. Integrals worked here.
/// </summary>
[Source(SourceKind.ClosedForm,
    "constant current, then constant voltage, through one resistance on a straight open-circuit voltage")]
public class ChargeClosedFormChecks
{
    // Empty at 3 V, full at 4 V, 2 Ah. R, I, F, E, k, z at the start.
    public static TheoryData<double, double, double, double, double, double> Cases => new()
    {
        { 0.10, 1.0, 4.0, 0.05, 1.0, 0.0 },
        { 0.10, 2.0, 4.0, 0.10, 1.0, 0.2 },
        { 0.25, 1.0, 4.0, 0.02, 0.98, 0.0 },
        { 0.05, 4.0, 3.9, 0.20, 0.998, 0.1 },
        { 0.40, 0.5, 3.8, 0.05, 0.95, 0.5 },
    };

    [Theory]
    [MemberData(nameof(Cases))]
    public void Times_charge_energy_and_heat_are_those_of_the_closed_form(
        double ohms, double amperes, double full, double end, double kept, double start)
    {
        const double a = 3, b = 1, coulombs = 3600 * 2;
        var held = (full - (amperes * ohms) - a) / b;
        var first = coulombs * (held - start) / (kept * amperes);
        var tau = coulombs * ohms / (b * kept);
        var second = tau * Math.Log(amperes / end);
        var charge = (amperes * first) + (tau * (amperes - end));

        // At the terminals: I·(U + I·R), U on average that of the middle of the stretch; then F times the charge.
        var energy = (amperes * first * (a + (b * (start + held) / 2) + (amperes * ohms))) + (full * tau * (amperes - end));

        // In the resistance: I²·R, and ∫I²·R of the exponential.
        var resistive = (amperes * amperes * ohms * first) + (ohms * tau / 2 * ((amperes * amperes) - (end * end)));
        var last = (full - (end * ohms) - a) / b;
        var stored = coulombs * ((a * (last - start)) + (b / 2 * ((last * last) - (start * start))));

        var result = Run(ohms, amperes, full, end, kept, start);

        Assert.Equal(ChargeEnd.Full, result.End);
        Assert.Equal(first, result.VoltageHeldFrom.Seconds, 1e-7 * first);
        Assert.Equal(first + second, result.EndTime.Seconds, 1e-7 * (first + second));
        Assert.Equal(last, result.FinalState.StateOfCharge.DecimalFractions, 1e-8);
        Assert.Equal(charge, result.ChargeIn.Coulombs, 1e-7 * charge);
        Assert.Equal(energy, result.EnergyIn.Joules, 1e-6 * energy);
        Assert.Equal(stored, result.Stored.Joules, 1e-6 * stored);

        // What is not kept becomes heat at the open-circuit voltage.
        Assert.Equal(resistive + (stored * ((1 / kept) - 1)), result.Heat.Joules, 1e-5 * result.Heat.Joules);
    }

    // Where only so much power is there, I = P/V once V·I would pass it: for a straight U without resistance
    // dz/dt = P/(3600·Q·U), so z from z0 to 1 takes 3600·Q·(a·(1 - z0) + b·(1 - z0²)/2)/P: the energy over the power. A
    // resistance of 1 µΩ leaves a tail of 0.1 s.
    [Theory]
    [InlineData(2, 0)]
    [InlineData(5, 0.5)]
    public void Limited_power_takes_as_long_as_the_energy_over_it(double watts, double start)
    {
        const double ohms = 1e-6, end = 0.001;
        var tail = 3600 * 2 * ohms * Math.Log(watts / 4 / end);
        var seconds = (3600 * 2 * ((3 * (1 - start)) + ((1 - (start * start)) / 2)) / watts) + tail;

        var result = Run(ohms, 50, 4.0, end, 1, start, watts);

        // The tail of a twentieth of a second is met within a hundredth.
        Assert.Equal(seconds, result.EndTime.Seconds, 0.01);
    }

    private static ChargeResult Run(double ohms, double amperes, double full, double end, double kept, double start,
        double? watts = null) => ChargeRun.Run(
        new Pack
        {
            SeriesGroups = 1,
            Capacity = ElectricCharge.FromAmpereHours(2),
            OpenCircuitVoltage = OpenCircuitVoltage.FromTable([0, 1], [3, 4]),
            Resistance0 = ElectricResistance.FromOhms(ohms),
            Resistance1 = ElectricResistance.Zero,
            Resistance2 = ElectricResistance.Zero,
            TimeConstant1 = Duration.FromSeconds(10),
            TimeConstant2 = Duration.FromSeconds(100),
            LeadResistance = ElectricResistance.Zero,
            ActivationEnergy = MolarEnergy.Zero,
            HeatCapacity = Entropy.FromJoulesPerKelvin(1e6),
            HeatConductance = ThermalConductance.FromWattsPerKelvin(0),
            CutoffVoltage = ElectricPotential.FromVolts(1),
            MaximumCurrent = ElectricCurrent.FromAmperes(100),
            MaximumTemperature = Temperature.FromKelvins(400),
        },
        Temperature.FromKelvins(298.15),
        new DischargeStart { StateOfCharge = Ratio.FromDecimalFractions(start) },
        new ChargeSetting(ElectricCurrent.FromAmperes(amperes))
        {
            FullVoltage = ElectricPotential.FromVolts(full),
            Termination = ElectricCurrent.FromAmperes(end),
            CoulombicEfficiency = Ratio.FromDecimalFractions(kept),
            PowerLimit = watts is { } limit ? Power.FromWatts(limit) : null,
        });
}
