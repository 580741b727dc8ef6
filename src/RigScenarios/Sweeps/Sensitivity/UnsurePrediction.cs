using RigScenarios.Answers;
using RigScenarios.Batteries;
using RigScenarios.Cells;
using RigScenarios.Sweeps.Sampling;

namespace RigScenarios.Sweeps.Sensitivity;

/// <summary>
/// What the prediction itself may be off by. No field of a file says that: all draws together stand in for it
/// (<c>load-scale</c>), for a runtime is off by the share by which the draws are. A limit of the wiring moves by that share
/// too, which is less than what draws by data sheets are off by.
/// </summary>
internal static class UnsurePrediction
{
    private const double LeastScale = 0.3;
    private const double MostScale = 3;

    /// <summary>The prediction of an answer.</summary>
    public static IEnumerable<UnsureFigure> Of(RigAnswer answer)
    {
        var error = answer.Simulation.ExpectedError;
        var share = (error.Share ?? ExpectedError.WhereNotMeasured).DecimalFractions;
        var battery = answer.TheBuild.Battery;
        var scale = battery.LoadScale ?? 1;
        // 95 of 100 lie within the stated error: so it is added up with what a fit leaves.
        var spread = Spread.Normal(scale, Math.Round(scale * share / FittedError.Deviations, 4)).Within(LeastScale, MostScale);
        yield return new(new($"builds.{answer.Build}.battery.load-scale", spread),
            "the prediction itself, as a factor on all draws",
            battery.RuntimeKnownTo is null ? "note how long two days with this rig lasted, and fit the battery to them"
                : "note more days with this rig, and fit the battery anew",
            error.Share is null ? $"{error.Why}: taken as twice the widest claim" : error.Why,
            new("", "deviations from measured discharges (docs/measured-cells.md)", null, "", Standing.Computed));
    }
}
