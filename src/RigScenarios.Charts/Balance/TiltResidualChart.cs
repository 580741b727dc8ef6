using RigScenarios.Balance;
using RigScenarios.Charts.Lines;
using RigScenarios.Parts;
using UnitsNet;
using UnitsNet.Units;

namespace RigScenarios.Charts.Balance;

/// <summary>The moment that is left over the tilt range of a head, held against its friction at rest: where the rig stays and
/// where it moves by itself.</summary>
public static class TiltResidualChart
{
    private const int Points = 121;

    /// <summary>The figure.</summary>
    /// <param name="balance">The rig on its head.</param>
    /// <param name="others">The same head with another rig, by name ("battery off", "lens off"); null or empty for none.</param>
    /// <param name="title">What the chart answers; null for a plain title.</param>
    public static Figure Of(HeadBalance balance, OrderedMap<HeadBalance>? others = null, string? title = null)
    {
        ArgumentNullException.ThrowIfNull(balance);
        others ??= OrderedMap<HeadBalance>.Empty;
        var x = ChartAxis.Of("tilt: nose up below 0, nose down above", AngleUnit.Degree);
        var y = ChartAxis.Of("moment left, nose down positive", TorqueUnit.NewtonMeter);
        double up = balance.Head.TiltUp.Degrees, down = balance.Head.TiltDown.Degrees,
        friction = balance.Head.Friction.NewtonMeters, creep = balance.Head.CreepMoment.NewtonMeters;
        var tilts = Enumerable.Range(0, Points).Select(i => up + ((down - up) * i / (Points - 1))).ToList();
        ChartLine Line(string name, HeadBalance of, int look) =>
            new(name, tilts, [.. tilts.Select(tilt => of.Residual(Angle.FromDegrees(tilt)).NewtonMeters)]) { Look = look };
        var lines = new List<ChartLine>
        {
            new("stays: held by friction", [up, down], [0, 0]) { Lower = [-friction, -friction],
                Upper = [friction, friction], Look = 5 },
            Line("as it is", balance, 0),
        };
        lines.AddRange(others.Select((other, i) => Line(other.Key, other.Value, i + 1)));
        lines.Add(new ChartLine("worst, as it is", [balance.WorstTilt.Degrees],
            [balance.Residual(balance.WorstTilt).NewtonMeters]) { Kind = LineKind.Points, Look = 3 });
        return new LineChart
        {
            Slug = "tilt-moment",
            Title = title ?? "Does it stay where you let go",
            Caption = string.Join(' ', others.Prepend(KeyValuePair.Create("as it is", balance))
                .Select(entry => Sentence(entry.Key, entry.Value))),
            Cautions = [BalanceCautions.Arithmetic, BalanceCautions.TiltLock,
                "The spring of a real head is not an ideal one, and its friction at rest depends on temperature and wear."],
            X = x,
            Panels = [new ChartPanel(y, lines) { Limits = creep > friction
                ? [new("falls beyond", creep), new("falls beyond", -creep)] : [] }],
        }.ToFigure();
    }

    private static string Sentence(string name, HeadBalance balance) =>
        $"{char.ToUpperInvariant(name[0])}{name[1..]}: at worst {Moment(balance.WorstResidual)} at {Tilt(balance.WorstTilt)}, "
        + (balance.TiltMargin.NewtonMeters < 0
            ? $"{Moment(-balance.TiltMargin)} more than friction at rest holds: let go there, it "
                + $"{(balance.WhenLetGo == LetGo.Creeps ? "creeps" : "falls")}."
                : $"{Moment(balance.TiltMargin)} of the friction at rest left.");

    private static string Moment(Torque torque) => $"{Rounding.Text(torque.NewtonMeters, 2)} N·m";

    private static string Tilt(Angle tilt) =>
        Math.Abs(tilt.Degrees) < 0.05 ? "level" : $"{Math.Abs(tilt.Degrees):0.#}° nose {(tilt.Degrees < 0 ? "up" : "down")}";
}
