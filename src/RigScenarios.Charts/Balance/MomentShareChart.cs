using RigScenarios.Balance;
using RigScenarios.Charts.Bars;
using RigScenarios.Parts;
using UnitsNet;
using UnitsNet.Units;

namespace RigScenarios.Charts.Balance;

/// <summary>What each part adds to the moment about a point, the largest first: what to move first.</summary>
public static class MomentShareChart
{
    /// <summary>The figure: a bar for each part, to the right where it pulls the nose down, to the left where it pulls the tail
    /// down.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="about">x of the point, such as the plate position.</param>
    /// <param name="names">Words for people by the parts' names; null for none.</param>
    /// <param name="title">What the chart answers; null for a plain title.</param>
    public static Figure Of(MassProperties rig, Length about, OrderedMap<string>? names = null, string? title = null)
    {
        ArgumentNullException.ThrowIfNull(rig);
        var shares = rig.ForeAftShares(about);
        var sum = Torque.FromNewtonMeters(shares.Sum(share => share.Value.NewtonMeters));
        var words = shares.Select(share => names is not null && names.TryGetValue(share.Key, out var name) ? name : share.Key)
            .ToList();
        return new BarChart
        {
            Slug = "moment-shares",
            Title = title ?? "What to move first",
            Caption = $"Each part's mass times its distance from x = {RigWords.Signed(about)}: to the right it pulls the nose "
                + "down, to the left the tail. All together: "
                + (Math.Abs(sum.NewtonMeters) < 0.005 ? "in balance."
                    : $"{TradeUnits.Text(Torque.FromNewtonMeters(Math.Abs(Math.Round(sum.NewtonMeters, 3))))} {Way(sum)}."),
            Cautions = [BalanceCautions.Arithmetic, BalanceCautions.TiltLock],
            Value = ChartAxis.Of("moment, nose down positive", TorqueUnit.NewtonMeter),
            Bars = [.. shares.Select((share, i) => new ChartBar(Single(words, i), Math.Round(share.Value.NewtonMeters, 3))
            {
                IsEmphasised = i == 0,
            })],
        }.ToFigure();
    }

    private static string Way(Torque torque) => torque.NewtonMeters > 0 ? "nose down" : "tail down";

    // Two monitors of one kind are two bars, which need names of their own.
    private static string Single(List<string> words, int index)
    {
        var before = words.Take(index).Count(other => other == words[index]);
        return before == 0 ? words[index] : $"{words[index]}, no. {before + 1}";
    }
}
