using RigScenarios.Answers;
using RigScenarios.Builds;
using RigScenarios.Cells;
using RigScenarios.Files.Formats;
using RigScenarios.Fits;
using RigScenarios.Sweeps.Sampling;
using UnitsNet;
using Spread = RigScenarios.Sweeps.Sampling.Spread;

namespace RigScenarios.Sweeps.Sensitivity;

/// <summary>What data sheets leave open of the draws.</summary>
internal static class UnsureDraws
{
    // A converter's efficiency by its label is the best of its range; our choice, no source.
    private static readonly Ratio Efficiency = Ratio.FromPercent(2);
    private static readonly Ratio BestEfficiency = Ratio.FromPercent(99);

    /// <summary>The draws of an answer's devices in the states that its days want, and what regulators lose.</summary>
    public static (IReadOnlyList<UnsureFigure> Figures, IReadOnlyList<Correlation> Correlations) Of(RigAnswer answer)
    {
        // Notes of this very rig have told all draws together.
        if (answer.TheBuild.Battery.RuntimeKnownTo is not null)
            return ([], []);
        var figures = new List<UnsureFigure>();
        var together = new List<Correlation>();
        foreach (var (name, device) in answer.TheBuild.Devices)
        {
            var own = States(answer, name).Select(state => OfState(answer, name, device, state))
                .Where(figure => figure is not null).Select(figure => figure!).ToList();
            figures.AddRange(own);
            if (own.Count == 2)
                together.Add(new(own[0].Field.Path, own[1].Field.Path, UsualUncertainty.OneCause));
        }
        foreach (var name in answer.TheBuild.Regulators.Keys.Where(answer.Scenario.Kit.ContainsKey))
        {
            if (answer.Scenario.PartOf(name)?.Regulator is { Efficiency: var share } && share.Percent is > 0 and < 97)
            {
                var words = LimitSentences.Element(name);
                figures.Add(new(new($"parts.{answer.Scenario.Kit[name].Part}.regulator.efficiency",
                    Spread.Normal(share.ToUnit(UnitsNet.Units.RatioUnit.Percent), Efficiency).Within(null, BestEfficiency)),
                    $"efficiency of the {words}", $"read the power before and behind the {words}",
                    "a label names the best of a range", Citation.CommonPractice("efficiency of small converters")));
            }
        }
        return (figures, [.. together.DistinctBy(pair => pair.First)]);
    }

    private static IEnumerable<PowerState> States(RigAnswer answer, string device) => answer.Plan.Days
        .SelectMany(day => day.Blocks.Values)
        .SelectMany(block => new[] { block.StateOf(device), block.StateInReset(device) })
        .Where(state => state != PowerState.Off).Distinct().OrderDescending();

    private static UnsureFigure? OfState(RigAnswer answer, string name, DeviceInUse device, PowerState state)
    {
        var own = state == PowerState.Record ? device.Power?.Record : device.Power?.Standby;
        var draw = answer.Scenario.PartOf(name)?.Power;
        if ((own ?? (state == PowerState.Record ? draw?.Record : draw?.Standby)) is not { } power || power <= Power.Zero)
            return null;
        var word = ChoiceFormat<PowerState>.Word(state);
        var path = own is null ? $"parts.{answer.Scenario.Kit[name].Part}.power.{word}"
            : $"builds.{answer.Build}.devices.{name}.power.{word}";
        var words = LimitSentences.Element(name);
        return new(new(path, Spread.Normal(power, Power.FromWatts(FitPriors.SheetDeviation * (double)power.Watts))),
            $"draw of the {words} {(state == PowerState.Record ? "in record" : "on standby")}",
            $"read the draw of the {words} on a power meter", "a data sheet, not a meter on the cable",
            Citation.CommonPractice("draws by data sheets (docs/calibration.md)")) { Together = $"draw of the {words}" };
    }
}
