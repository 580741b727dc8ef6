using RigScenarios.Batteries;
using RigScenarios.Batteries.Batch;
using RigScenarios.Days;
using RigScenarios.Simulation;
using RigScenarios.Wiring;
using UnitsNet;

namespace RigScenarios.Sweeps.Discharges;

/// <summary>
/// The days of one scenario as discharges of its battery under the reduced wiring, one for each day; the last one goes on through
/// the reserve. What ends each day is read from the ends of these alone (<see cref="DayEnds"/>).
/// </summary>
/// <param name="Shape">Which device is wanted when, and what it hangs on.</param>
/// <param name="Plan">The plan.</param>
/// <param name="Pack">The battery.</param>
/// <param name="Formulas">For each day the formula of each state.</param>
/// <param name="Limits">For each day the time after which the discharge is given up, s.</param>
internal sealed record DayDischarges(
    RigShape Shape, DayPlan Plan, Pack Pack, ReducedDraw[][] Formulas, double[] Limits)
{
    /// <summary>Why days can't be run as discharges, as a sentence; null where they can.</summary>
    /// <param name="days">The days.</param>
    public static string? WhyNot(SweptDays days)
    {
        var plan = days.Plan;
        return days.NothingArrives ? "No battery gets to the days."
            : plan.Batteries.Count != 1 ? "Several batteries take turns."
            : plan.HotSwap is not null ? "A hot-swap reserve carries the rig."
            : plan.Internal.Count > 0 ? "Devices have batteries of their own."
            : plan.Chargers.Values.Any(charger => charger.Bays > 0) || !plan.DaysBeginAsTheFirst ? "Batteries are charged."
            : !plan.TakesAnyCharge && plan.Batteries.Values.First().Charge < plan.Swaps.LeastCharge
                ? "The battery is below the charge from which it is used."
            : plan.Days.Any(day => day.AmbientPoints.Count > 0) ? "The temperature of the air changes through the day."
            : !days.Powered.Devices.Values.Any(device => device.Essential) ? "No device is essential."
            : null;
    }

    /// <summary>The discharges; null where the wiring is no formula.</summary>
    /// <param name="days">The days; nothing may stand against running them so.</param>
    /// <param name="rig">Their rig.</param>
    public static DayDischarges? Of(SweptDays days, ReducedRig rig)
    {
        var pack = days.Plan.Batteries.Values.First().MakePack().Pack;
        var (cutoff, full) = (pack.CutoffVoltage.Volts,
            pack.SeriesGroups * pack.OpenCircuitVoltage.Points[^1].Voltage.Volts);
        if (!(full > cutoff && cutoff > 0))
            return null;
        var shape = rig.Shape;
        var count = shape.Days.Length;
        var (formulas, limits) = (new ReducedDraw[count][], new double[count]);
        for (var day = 0; day < count; day++)
        {
            if (rig.Reduce(cutoff, full, KelvinOf(days.Plan, day)) is not { } made)
                return null;
            formulas[day] = made;
            limits[day] = day + 1 < count ? shape.Days[day].Length : WithReserve(shape.Days[day].Length);
        }
        return new(shape, days.Plan, pack, formulas, limits);
    }

    /// <summary>The discharge through one of the days.</summary>
    /// <param name="day">The number of the day, from 0.</param>
    /// <param name="curves">The curves of the battery.</param>
    public BatchCase CaseOf(int day, BatchCurves curves)
    {
        var battery = Plan.Batteries.Values.First();
        var kelvin = KelvinOf(Plan, day);
        var start = new DischargeStart
        {
            StateOfCharge = battery.Charge,
            Temperature = battery.StartTemperature ?? battery.Rests.Temperature ?? Temperature.FromKelvins(kelvin),
        };
        var made = BatchCase.Of(Pack, kelvin, start);
        made.Curves = curves;
        made.TimeLimit = Limits[day];
        made.Demand = DemandOf(Shape.Days[day], Formulas[day], made.CutoffVoltage);
        return made;
    }

    private static double KelvinOf(DayPlan plan, int day) => (plan.Days[day].Ambient ?? plan.Ambient).Kelvins;

    // It ends with the battery, or at the higher voltage at which something in the wiring stops in the states of the segment.
    private static BatchDemand DemandOf(DayShape day, ReducedDraw[] formulas, double cutoff)
    {
        var (watts, amperes, siemens, volts) =
            (new double[day.Count], new double[day.Count], new double[day.Count], new double[day.Count]);
        for (var i = 0; i < day.Count; i++)
        {
            ref readonly var formula = ref formulas[day.States[i]];
            (watts[i], amperes[i], siemens[i]) = (formula.Watts, formula.Amperes, formula.Siemens);
            volts[i] = Math.Max(cutoff, formula.StopVolts);
        }
        return new(day.Lengths, watts, amperes, siemens) { EndVoltages = volts };
    }

    // The last day is begun again until the longest reserve is over, and then run to its end, as the simulation does.
    private static double WithReserve(double day)
    {
        var end = day;
        while (end < day + Reserve.Longest.Seconds)
            end += day;
        return end;
    }
}
