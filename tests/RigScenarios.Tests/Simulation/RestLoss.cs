using RigScenarios.Days;
using RigScenarios.Simulation;

namespace RigScenarios.Tests.Simulation;

/// <summary>
/// What a battery loses by itself, worked out apart from the library from where it was and in what air: 3 points of its capacity
/// in 30 days at 20 °C, twice
/// that for each 10 K more (rule 10 of the days of the independent program), its temperature by Newton's law of cooling in small
/// steps.
/// </summary>
internal static class RestLoss
{
    private const double StepSeconds = 30;

    /// <summary>The part of the capacity that went by itself.</summary>
    public static double Of(DayPlan plan, KitBattery battery, BatteryTimeline timeline)
    {
        var open = AirTemperature.Of(plan, new DaySchedule(plan).Days);
        var own = battery.Rests.Temperature is { } place ? AirTemperature.Constant(place.Kelvins) : open;
        var bay = plan.Chargers.Values.First().Ambient is { } there ? AirTemperature.Constant(there.Kelvins) : open;
        var lost = 0.0;
        foreach (var span in timeline.Spans.Where(span => span.Place is not (BatteryPlace.OnRig or BatteryPlace.Charging)))
        {
            var inBay = Through(battery, span, bay, 1);
            var resting = Through(battery, span, own, battery.Rests.ConductanceFactor);
            var (part, kelvin) = span.Place switch
            {
                BatteryPlace.WaitingForPower or BatteryPlace.WaitingForTemperature => inBay,

                // In a bay of a charger that serves one after the other, or still before it.
                BatteryPlace.WaitingForBay => Nearer(inBay, resting, span.TemperatureAtEnd.Kelvins),
                _ => resting,
            };
            Assert.Equal(span.TemperatureAtEnd.Kelvins, kelvin, 1e-2);
            lost += part;
        }

        return lost;
    }

    private static (double Part, double Kelvin) Nearer((double Part, double Kelvin) one, (double Part, double Kelvin) other,
        double kelvin) =>
        Math.Abs(one.Kelvin - kelvin) < Math.Abs(other.Kelvin - kelvin) ? one : other;

    // The midpoint rule, second order in the step.
    private static (double Part, double Kelvin) Through(KitBattery battery, BatterySpan span, AirTemperature air, double factor)
    {
        var pack = battery.MakePack().Pack;
        var rate = factor * pack.HeatConductance.WattsPerKelvin / pack.HeatCapacity.JoulesPerKelvin;
        var (time, end) = (span.Start.Seconds, span.End.Seconds);
        var (kelvin, lost) = (span.TemperatureAtStart.Kelvins, 0.0);
        while (time < end)
        {
            var step = Math.Min(Math.Min(StepSeconds, end - time), Math.Max(air.At(time).Until - time, 1e-6));
            var half = kelvin + (step / 2 * rate * (air.At(time).Kelvin - kelvin));
            lost += step * 0.03 / (30 * 86400) * Math.Pow(2, (half - 293.15) / 10);
            kelvin += step * rate * (air.At(time + (step / 2)).Kelvin - half);
            time += step;
        }

        return (lost, kelvin);
    }
}
