using RigScenarios.Balance;
using UnitsNet;

namespace RigScenarios.Answers;

/// <summary>Says in plain words when a build tips over, and what it takes to lift it.</summary>
public static class TripodWords
{
    /// <summary>On its tripod: when it tips over; null without one whose figures are known.</summary>
    public static string? Tipping(BuildBalance balance)
    {
        ArgumentNullException.ThrowIfNull(balance);
        if (balance.Level is not { } level || balance.Supports.Stand is not { } stand)
            return null;
        var worst = balance.Stand!;
        var slope = balance.Slope;
        var ground = slope.Degrees > 0 ? $"a slope of {slope.Degrees:0.#}°" : "level ground";
        if (worst.TippingForce(stand.CameraPlateHeight, slope) is not { } push)
            return $"It tips over by itself on "
                + $"{ground}{(level.OnSlope(slope).Tips ? "" : $" when the head is tilted {worst.Tilt.Degrees:0}°")}: turn a "
                    + "foot under the lens, spread the tripod, lower the rig.";
        var tilted = balance.WorstTilt is null ? ""
            : $", with the head tilted {worst.Tilt.Degrees:0}° at {worst.TipAngle.Degrees:0.0}°";
        var left = slope.Degrees > 0 ? $"; {ground} leaves {worst.OnSlope(slope).TipAngleLeft.Degrees:0.0}° of that" : "";
        var wind = balance.TippingGust is { } gust ? $", or a gust of {gust.MetersPerSecond:0.0} m/s" : "";
        return $"On its tripod, at the worst pan: level it tips at a lean of {level.TipAngle.Degrees:0.0}°{tilted}{left}. On "
            + $"{ground} a push of {BalanceWords.InKilograms(push.Newtons)} at the height of the camera plate tips "
                + $"it{wind}.{Expected(balance)}{string.Concat(Ballast(balance))}";
    }

    /// <summary>The ballast that it needs, each a sentence with a space before it; none without a tripod whose figures are
    /// known.</summary>
    internal static IEnumerable<string> Ballast(BuildBalance balance)
    {
        if (StandBallast.Of(balance) is not { } bag)
            yield break;
        yield return Needed($"a lean of {bag.Wanted.Degrees:0.#}°", bag.Ballast, bag.Height);
        if (bag.ForGust is { } more)
            yield return Needed("these gusts", more, bag.Height);
    }

    /// <summary>Picking it up, as the revised NIOSH equation judges it.</summary>
    public static string Lifting(BuildBalance balance)
    {
        ArgumentNullException.ThrowIfNull(balance);
        var lift = balance.Lift;
        var what = lift.What.Count > 0 ? $"the whole with {string.Join(" and ", lift.What)}, {lift.Lifted.Kilograms:0.0} kg"
            : $"{lift.Lifted.Kilograms:0.0} kg";
        var judged = lift.Index is { } index
            ? $"recommends at most {lift.RecommendedLimit.Kilograms:0.0} kg, where the lift begins or ends; this is "
                + $"{index:0.0} times "
                + "that."
            : "recommends no lift at all from or to such a height or reach.";
        return $"Picking up {what}: the revised NIOSH equation {judged} "
            + $"Assumed: one person, both hands {lift.Origin.Horizontal.Millimeters:0} mm ahead of the ankles, a fair hold, "
                + "no twist, 19 to 26 °C. It judges lifting, not holding or carrying; local rules decide.";
    }

    private static string Needed(string what, Ballast ballast, Length hook) => ballast.Need switch
    {
        BallastNeed.NoneNeeded => $" For {what} it needs no more ballast.",
        BallastNeed.Needed => $" For {what} it needs {Math.Ceiling(10 * ballast.Mass!.Value.Kilograms) / 10:0.0} kg of "
            + $"ballast on a hook {hook.Millimeters:0} mm above the ground.",
        _ => $" No ballast on a hook {hook.Millimeters:0} mm above the ground is enough for {what}: spread the tripod or hang "
            + "it lower.",
    };

    private static string Expected(BuildBalance balance)
    {
        if (balance.ExpectedWind is not { } wind)
            return "";
        var at = wind.Height is { } height
            ? $" at {height.Meters:0.#} "
                + $"m{(Math.Abs(height.Meters - 10) < 0.01 ? $" (Beaufort {Beaufort.Of(wind.Mean)})" : "")}, "
                    + $"{wind.MeanAtRig.MetersPerSecond:0.0} m/s at the rig" : "";
        return $" A mean wind of {wind.Mean.MetersPerSecond:0.#} m/s{at} has gusts of {wind.Gust.MetersPerSecond:0.0} m/s.";
    }
}
