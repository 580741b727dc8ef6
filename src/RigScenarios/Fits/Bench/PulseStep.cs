using RigScenarios.Batteries;
using UnitsNet;

namespace RigScenarios.Fits.Bench;

/// <summary>What one step of the load says of a whole battery: a resistance that acts at once, and one that comes with
/// time.</summary>
/// <param name="At">When the load changed, from the first row of the log.</param>
/// <param name="Step">By how much the current rose; below 0 where it fell.</param>
/// <param name="Resistance0">What acts at once, R0.</param>
/// <param name="Resistance1">What comes with time, R1.</param>
/// <param name="TimeConstant">How fast it comes, τ.</param>
/// <param name="TimeConstantFound">Whether the log shows that; otherwise τ stands at an end of what was tried, and R1 means
/// little.</param>
/// <param name="Resistance0Error">Standard error of R0; with that of the voltage before the step in it.</param>
/// <param name="Resistance1Error">Standard error of R1.</param>
/// <param name="TimeConstantError">Standard error of τ.</param>
public sealed record PulseStep(
    Duration At, ElectricCurrent Step, ElectricResistance Resistance0, ElectricResistance Resistance1, Duration TimeConstant,
    bool TimeConstantFound, ElectricResistance Resistance0Error, ElectricResistance Resistance1Error, Duration TimeConstantError)
{
    /// <summary>The time after which pulses are compared with the model, s.</summary>
    private const double ComparedSeconds = 10;

    /// <summary>What the battery resists ten seconds after the step.</summary>
    public ElectricResistance After10Seconds =>
        Resistance0 + (Resistance1 * (1 - Math.Exp(-ComparedSeconds / TimeConstant.Seconds)));

    /// <summary>How much more than a new one the battery resists, aR: its groups ten seconds after the step over what the model
    /// says of new ones at that temperature. Its leads and contacts don't age.</summary>
    /// <param name="pack">The battery as the model has it; its age does not matter.</param>
    /// <param name="temperature">Temperature of the battery during the test.</param>
    /// <exception cref="ArgumentException">The leads alone should resist more than was measured, or the model has no
    /// resistance.</exception>
    public double ResistanceFactor(Pack pack, Temperature temperature)
    {
        ArgumentNullException.ThrowIfNull(pack);
        var measured = (After10Seconds - pack.LeadResistance).Ohms;
        var expected = pack.SeriesGroups * Growth(pack, temperature) * (pack.Resistance0.Ohms
            + Shown(pack.Resistance1, pack.TimeConstant1) + Shown(pack.Resistance2, pack.TimeConstant2));
        if (!(measured > 0) || !(expected > 0))
        {
            throw new ArgumentException(
                $"Ten seconds after the step the battery resists {After10Seconds.Ohms:G3} Ω; its leads and "
                + $"contacts alone are taken to have {pack.LeadResistance.Ohms:G3} Ω.", nameof(pack));
        }
        return measured / expected;

        static double Shown(ElectricResistance resistance, Duration timeConstant) =>
            resistance.Ohms * (1 - Math.Exp(-ComparedSeconds / timeConstant.Seconds));
    }

    /// <summary>Resistance at a temperature over that at 25 °C, rho(T).</summary>
    private static double Growth(Pack pack, Temperature temperature) =>
        Math.Max(pack.ResistanceFloor, Math.Exp(pack.ActivationEnergy.JoulesPerMole / PackParameters.GasConstant
            * ((1 / temperature.Kelvins) - (1 / PackParameters.ReferenceTemperature))));
}
