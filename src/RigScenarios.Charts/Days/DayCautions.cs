using RigScenarios.Answers;
using RigScenarios.Batteries;
using RigScenarios.Simulation;
using UnitsNet;

namespace RigScenarios.Charts.Days;

/// <summary>What a reader of a predicted day must know beside the numbers: how far off they may be, and whose limits go
/// first.</summary>
public static class DayCautions
{
    // Water freezes here, and makers' lower limits for charging are commonly set here (common practice, no source).
    private static readonly Temperature Cold = Temperature.FromDegreesCelsius(0);

    /// <summary>
    /// For all charts over temperature. No limit is given in numbers: it differs from maker to maker, and the battery's own
    /// papers have it.
    /// </summary>
    public const string MakersTemperatures =
        "Charge and use a lithium battery only within the temperatures that its maker gives: they go before any runtime shown "
            + "here. "
        + "Let a battery that is cold from work warm up before it is charged.";

    /// <summary>The cautions of a chart over the days of one answer.</summary>
    public static IReadOnlyList<string> Of(RigAnswer answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        return Of([answer.Simulation]);
    }

    /// <summary>The cautions of several results that are shown together.</summary>
    /// <param name="results">At least one.</param>
    public static IReadOnlyList<string> Of(IReadOnlyCollection<SimulationResult> results)
    {
        ArgumentNullException.ThrowIfNull(results);
        var cautions = new List<string> { Prediction(results.Select(result => result.ExpectedError)) };
        var assumed = results.Max(result => result.Assumed.Values.Sum(values => values.Count));
        if (assumed > 0)
            cautions.Add($"{assumed} values that the files do not give were assumed, mostly the inside of the battery.");
        if (results.Any(result => result.ColdestBattery <= Cold))
            cautions.Add(MakersTemperatures);
        return cautions;
    }

    /// <summary>How far off times may be and what that rests on: the least that goes with any answer.</summary>
    /// <param name="errors">At least one.</param>
    public static string Prediction(params IEnumerable<ExpectedError> errors)
    {
        // Where nothing is measured the error is the largest of all: nobody knows it.
        var worst = errors.MaxBy(error => error.Share?.Percent ?? double.PositiveInfinity)!;
        return AnswerCautions.Predicted(worst).Replace(" -", $" {Rounding.Minus}", StringComparison.Ordinal);
    }
}
