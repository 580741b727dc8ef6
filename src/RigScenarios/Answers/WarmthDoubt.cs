using RigScenarios.Days;
using RigScenarios.Parts;
using RigScenarios.Simulation;
using UnitsNet;

namespace RigScenarios.Answers;

/// <summary>
/// How far the time of a cold rig hangs on how fast its batteries lose their own heat: the same days run again with more and with
/// less heat lost. Wind, a bare plate or a cover change that, and nobody measures it.
/// </summary>
/// <param name="Cooled">By how much the reserve changes where the batteries lose more heat; below zero: less time.</param>
/// <param name="Kept">By how much it changes where they lose less; null where nobody asked.</param>
/// <param name="Time">The time that it is held against: of the day with its reserve.</param>
public sealed record WarmthDoubt(Duration Cooled, Duration? Kept, Duration Time)
{
    // A battery that stays warmer than this has hardly more inside for being warmer.
    private const double ColdCelsius = 10;

    private const double Decisive = 0.05;

    /// <summary>How much more and less heat they lose in the two runs. The surface of a battery gives its heat off at 10 to 15
    /// W/(m²·K) by two public simulators; common practice besides, no source.</summary>
    public static Ratio Spread { get; } = Ratio.FromPercent(30);

    /// <summary>The larger of the two changes, without its sign.</summary>
    public Duration Largest =>
        Duration.FromSeconds(Math.Max(Math.Abs(Cooled.Seconds), Math.Abs(Kept?.Seconds ?? 0)));

    /// <summary>The larger of the two changes as a share of the time.</summary>
    public Ratio Share => Ratio.FromDecimalFractions(Largest / Time);

    /// <summary>Whether the answer says so: a twentieth of the time or more, what is claimed for the prediction itself.</summary>
    public bool Decides => Share.DecimalFractions >= Decisive;

    /// <summary>Runs it.</summary>
    /// <param name="answer">The answer, its questions not yet asked.</param>
    /// <param name="both">Whether less heat lost is run too: a verdict needs only the run with more.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <returns>The two changes; null where no battery is cold, or the reserve has no end.</returns>
    internal static WarmthDoubt? Of(RigAnswer answer, bool both, CancellationToken cancellation)
    {
        // Days that fail do so whatever their doubt is.
        if (!both && !answer.Simulation.Completes)
            return null;
        var reserve = answer.Tightest.Reserve;
        var time = answer.Working + reserve.Time;
        if (reserve.IsLowerBound || time <= Duration.Zero || answer.Simulation.ColdestBattery.DegreesCelsius >= ColdCelsius)
            return null;
        var plan = answer.EachDayBeginsAnew && answer.Simulation.Completes
            ? answer.Plan with { Days = [answer.Plan.Days[answer.Tightest.Day - 1]] } : answer.Plan;
        Duration Change(double factor) => DaySimulation.Run(
            answer.Powered, With(plan, factor), SimulationOptions.EndOnly, null, cancellation).Reserve.Time - reserve.Time;
        return new(Change(1 + Spread.DecimalFractions), both ? Change(1 - Spread.DecimalFractions) : null, time);
    }

    private static DayPlan With(DayPlan plan, double factor) => plan with
    {
        Batteries = new(plan.Batteries.Select(item => KeyValuePair.Create(item.Key, With(item.Value, factor)))),
    };

    private static KitBattery With(KitBattery battery, double factor)
    {
        var made = battery.MakePack();
        var pack = made.Pack with { HeatConductance = ThermalConductance.FromWattsPerKelvin(
            factor * made.Pack.HeatConductance.WattsPerKelvin) };
        return battery with { Made = made with { Pack = pack } };
    }
}
