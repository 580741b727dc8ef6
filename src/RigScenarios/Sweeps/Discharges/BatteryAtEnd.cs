using RigScenarios.Batteries;
using RigScenarios.Batteries.Batch;
using RigScenarios.Days;
using RigScenarios.Simulation;
using UnitsNet;

namespace RigScenarios.Sweeps.Discharges;

/// <summary>What the battery is like at the end of days that were run as discharges: what it gave, what is left in it, how cold
/// it became. Once the rig has stopped it rests, and over the night between two days as well.</summary>
internal static class BatteryAtEnd
{
    private const double JoulesPerWattHour = 3600;

    /// <summary>The figures of the days with those of the battery.</summary>
    /// <param name="figures">The figures of the days.</param>
    /// <param name="discharges">The discharges.</param>
    /// <param name="ends">The end of each day's discharge, which goes no further than the day.</param>
    public static DayFigures With(DayFigures figures, DayDischarges discharges, ReadOnlySpan<BatchCaseEnd> ends)
    {
        var pack = new PackParameters(discharges.Pack);
        var plan = discharges.Plan;
        var battery = plan.Batteries.Values.First();
        var days = new DaySchedule(plan).Days;
        var (delivered, coldest, state) = (0.0, double.PositiveInfinity, default(PackState));
        for (var day = 0; day < ends.Length; day++)
        {
            ref readonly var end = ref ends[day];
            delivered += end.DeliveredJoules;
            state = new(Math.Max(0, end.Charge), 0, 0, end.Kelvin, end.Charge - end.NearCharge);
            var length = discharges.Shape.Days[day].Length;
            if (end.Cause != EndCause.TimeLimit)
                state = Rest(state, plan.Days[day].Ambient ?? plan.Ambient, length - end.Seconds);
            coldest = Math.Min(coldest, Math.Min(end.LowestKelvin, state.Kelvin));
            if (day + 1 < ends.Length)
                coldest = Math.Min(coldest, Rest(state, plan.NightTemperature, days[day + 1].Start - days[day].End).Kelvin);
        }

        return figures with
        {
            FromBatteries = delivered / JoulesPerWattHour,
            EnergyLeft = SimulationAccount.StoredJoules(pack, state.Charge) / JoulesPerWattHour,
            Coldest = Temperature.FromKelvins(coldest).DegreesCelsius,
        };

        PackState Rest(in PackState from, Temperature air, double seconds) => PackRest.After(
            pack, from, (battery.Rests.Temperature ?? air).Kelvins, 0, battery.Rests.ConductanceFactor, seconds);
    }
}
