using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Batteries;

/// <summary>
/// The charge of a pack: the circuit of the discharge with a current below zero. Constant current, where the power is limited
/// constant power, then constant
/// voltage until the current has fallen to the termination. Model: docs/days.md.
/// </summary>
public static class ChargeRun
{
    /// <summary>Charges a pack until it is full, its temperature leaves the window or the time is over.</summary>
    /// <param name="pack">The pack.</param>
    /// <param name="ambient">Temperature of the air around it; above 0 K.</param>
    /// <param name="start">The state at the start.</param>
    /// <param name="setting">How it is charged.</param>
    /// <param name="cancellation">Ends the run early.</param>
    /// <exception cref="ArgumentOutOfRangeException">The ambient temperature is not above 0 K, or the start's lag leaves one of
    /// the wells below empty or above full.</exception>
    /// <exception cref="OperationCanceledException">The run was cancelled.</exception>
    public static ChargeResult Run(Pack pack, Temperature ambient, DischargeStart start, ChargeSetting setting,
        CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(pack);
        ArgumentNullException.ThrowIfNull(start);
        ArgumentNullException.ThrowIfNull(setting);
        Require.Positive(ambient.Kelvins, "K", nameof(ambient));
        start.RequireWells(pack.NearShare);
        return Run(
            new PackParameters(pack), ambient.Kelvins, 0, start, setting.LimitsFor(pack), setting.Window,
            (setting.TimeLimit ?? DischargeOptions.LongestRun).Seconds, setting.SeriesPoints, cancellation);
    }

    /// <summary>The same in plain numbers, in air whose temperature rises from K by K/s.</summary>
    internal static ChargeResult Run(
        PackParameters pack, double ambientKelvin, double ambientSlope, DischargeStart start, ChargerLimits limits,
        ChargeWindow window, double seconds,
        int seriesPoints, CancellationToken cancellation)
    {
        var state = start with { Temperature = start.Temperature ?? Temperature.FromKelvins(ambientKelvin),
            DemandOffset = Duration.Zero };
        var phase = ChargePhase.Current;
        var series = new List<DischargePoint>();
        double time = 0, held = double.NaN, charge = 0, delivered = 0, stored = 0, heat = 0;
        while (true)
        {
            var left = seconds - time;
            var run = new DischargeRun(
                pack,
                Temperature.FromKelvins(ambientKelvin + (ambientSlope * time)),
                state,
                new DemandCursor([new TerminalDraw(0, 0, 0, new ChargerDraw(limits, phase))], [Math.Max(left, 1)], 0),
                new DischargeOptions { TimeLimit = Duration.FromSeconds(left), SeriesPoints = seriesPoints },
                observer: null,
                ambientSlope,
                window).Run(cancellation);
            foreach (var point in run.Series)
                series.Add(point with { Time = Duration.FromSeconds(time + point.Time.Seconds) });
            var timeIsOver = run.Cause == EndCause.TimeLimit;
            time = timeIsOver ? seconds : time + run.EndTime.Seconds;
            charge -= run.Energies.ChargeDrawn.Coulombs;
            delivered -= run.Energies.Delivered.Joules;
            stored -= run.Energies.Chemical.Joules;
            heat += run.Energies.Heat.Joules;
            state = run.FinalState with { DemandOffset = Duration.Zero };
            if (run.Cause == EndCause.WatchedVoltage && phase != ChargePhase.Voltage && seconds - time > DemandCursor.Snap)
            {
                phase = phase == ChargePhase.Current && limits.Watts <= run.EndVoltage!.Value.Volts * limits.Amperes * (1 + 1e-9)
                    ? ChargePhase.Power : ChargePhase.Voltage;
                if (phase == ChargePhase.Voltage)
                    held = time;
                continue;
            }

            return new ChargeResult
            {
                EndTime = Duration.FromSeconds(time),
                End = run.Cause switch
                {
                    EndCause.OverTemperature => ChargeEnd.TooWarm,
                    EndCause.UnderTemperature => ChargeEnd.TooCold,
                    EndCause.WatchedVoltage when phase != ChargePhase.Voltage => ChargeEnd.TimeLimit,
                    EndCause.WatchedVoltage or EndCause.Full => ChargeEnd.Full,
                    _ => ChargeEnd.TimeLimit,
                },
                VoltageHeldFrom = Duration.FromSeconds(double.IsNaN(held) ? time : held),
                FinalState = state,
                ChargeIn = ElectricCharge.FromCoulombs(charge),
                EnergyIn = Energy.FromJoules(delivered),
                Stored = Energy.FromJoules(stored),
                Heat = Energy.FromJoules(heat),
                Series = series,
            };
        }
    }
}
