using RigScenarios.Balance;
using RigScenarios.Charts.Lines;
using UnitsNet;
using UnitsNet.Units;

namespace RigScenarios.Charts.Balance;

/// <summary>The lean at which a stand tips over, over the direction that the camera looks, held against what is asked of other
/// equipment.</summary>
public static class TipOverChart
{
    /// <summary>The figure. It begins with the lens over one foot and goes once round.</summary>
    /// <param name="stability">The stand with its rig.</param>
    /// <param name="title">What the chart answers; null for a plain title.</param>
    public static Figure Of(StandStability stability, string? title = null)
    {
        ArgumentNullException.ThrowIfNull(stability);
        var x = ChartAxis.Of("pan to the left, from the lens over a foot", AngleUnit.Degree);
        var y = ChartAxis.Of("lean at which it tips over", AngleUnit.Degree) with { FromZero = true };
        var pans = Enumerable.Range(0, 181).Select(i => -30 + (2.0 * i)).ToList();
        var tips = pans.Select(pan => stability.AtPan(Angle.FromDegrees(pan)).TipAngle.Degrees).ToList();
        var worst = tips.Index().MinBy(tip => tip.Item).Index;
        var lines = new List<ChartLine>
        {
            new("tip angle", pans, tips),
            new($"worst pan, {Rounding.Text(pans[worst], 3)}°", [pans[worst]],
                [tips[worst]]) { Kind = LineKind.Points, Look = 1 },
        };
        return new LineChart
        {
            Slug = "tip-over",
            Title = title ?? "How far the tripod may lean before it tips over",
            Caption = Caption(stability, pans[worst]),
            Cautions = [BalanceCautions.TipOver, BalanceCautions.Arithmetic],
            X = x with { From = -30, To = 330 },
            Panels = [new ChartPanel(y, lines) { Limits = Yardsticks() }],
            Blocks = [.. Enumerable.Range(0, 6).Select(i =>
                new ChartBlock(i % 2 == 0 ? $"over foot {(i / 2) + 1}" : "between feet", -30 + (60.0 * i), 30 + (60.0 * i)))],
        }.ToFigure();
    }

    // Two that ask for the same angle are one line; on a phone there is no room for both names, so the caption has them.
    private static List<LimitLine> Yardsticks() =>
        [.. TiltYardstick.All.GroupBy(yardstick => yardstick.Tilt.Degrees).Select(group => new LimitLine(
            $"{group.Key:0.#}°: {(group.Count() == 1 ? group.First().What : $"{group.Count()} kinds, named below")}",
            group.Key))];

    private static string Where(double pan)
    {
        // From the nearest foot: feet stand at 0°, 120° and 240°.
        var away = Math.Abs(pan - (120 * Math.Round(pan / 120)));
        var words = away < 20 ? "the lens nearly over a foot" : away > 40
            ? "the lens nearly midway between two feet" : "the lens between a foot and the middle of two";
        return $"{Rounding.Text(pan, 3)}° ({words})";
    }

    private static string Caption(StandStability stability, double pan) =>
        (stability.TipsOnLevel
            ? $"On level ground it tips by itself at the worst pan, {Where(pan)}."
            : $"At the worst pan, {Where(pan)}, it tips at a lean of {Rounding.Text(stability.TipAngle.Degrees, 3)}°.")
        + (Math.Abs(stability.Tilt.Degrees) < 0.05 ? " The head is level."
            : $" The head is tilted {Math.Abs(stability.Tilt.Degrees):0.#}° "
                + $"nose {(stability.Tilt.Degrees < 0 ? "up" : "down")}.")
        + $" Rig and tripod together: {TradeUnits.Text(stability.TotalMass)}, their centre of gravity "
            + $"{TradeUnits.Text(stability.CentreHeight)} over the ground. "
        + $"Lines: {string.Join("; ", TiltYardstick.All.Select(Line))}.";

    private static string Line(TiltYardstick yardstick) =>
        $"{yardstick.Tilt.Degrees:0.#}° {yardstick.What} "
        + $"({yardstick.Source.Authors} {yardstick.Source.Title}, {yardstick.Source.StandingInWords})";
}
