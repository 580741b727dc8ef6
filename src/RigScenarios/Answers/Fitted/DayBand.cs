using RigScenarios.Batteries;
using UnitsNet;

namespace RigScenarios.Answers.Fitted;

/// <summary>One day on the battery as its label has it, and on the fitted one with what is still open of it: four answers, to be
/// drawn together.</summary>
/// <param name="AsLabelled">New, with the draws that the parts say.</param>
/// <param name="Fitted">As notes and logs say.</param>
/// <param name="Least">Where battery and day are as bad as they are with a chance of 2.5 %.</param>
/// <param name="Most">Where they are as good as they are with a chance of 2.5 %.</param>
public sealed record DayBand(RigAnswer AsLabelled, RigAnswer Fitted, RigAnswer Least, RigAnswer Most)
{
    private const double LeastPercent = 1, MostPercent = 120;

    /// <summary>Runs the day four times. What is open is laid into the capacity, for run-time goes nearly with it.</summary>
    /// <param name="answer">The answer of the fitted battery for one day.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static DayBand Of(RigAnswer answer, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(answer);
        var battery = answer.TheBuild.Battery;
        var left = battery.CapacityLeft?.Percent ?? 100;
        var share = answer.Simulation.ExpectedError.Share?.DecimalFractions
            ?? FittedError.Deviations * (battery.RuntimeKnownTo?.DecimalFractions ?? 0);
        return new DayBand(
            Run(null, null), answer, Run(left * Math.Exp(-share), battery.ResistanceGrowth),
            Run(left * Math.Exp(share), battery.ResistanceGrowth));

        RigAnswer Run(double? percent, double? growth)
        {
            var changed = battery with
            {
                CapacityLeft = Ratio.FromPercent(percent is { } given ? Math.Clamp(given, LeastPercent, MostPercent) : 100),
                ResistanceGrowth = percent is null ? 1 : growth,
                LoadScale = percent is null ? null : battery.LoadScale,
                RuntimeKnownTo = percent is null ? null : battery.RuntimeKnownTo,
                Life = null,
            };
            var scenario = answer.Scenario;
            return RigAnswer.Of(scenario with
            {
                Builds = scenario.Builds.With(answer.Build, answer.TheBuild with { Battery = changed }),
            }, answer.Build, answer.Days, answer.Options, cancellation: cancellation);
        }
    }
}
