using RigScenarios.Answers;

namespace RigScenarios.Charts.Wiring;

/// <summary>The wiring of an answer as tables.</summary>
public static class WiringTable
{
    /// <summary>The limits with what is left to each, the least first.</summary>
    /// <param name="answer">The answer.</param>
    /// <param name="most">At most so many rows.</param>
    public static ChartTable Of(RigAnswer answer, int most = 15)
    {
        ArgumentNullException.ThrowIfNull(answer);
        var times = new AnswerTimes(answer.Plan.Days);
        return ChartTable.Of("limit", "rests on").WithRows(answer.Of(QuestionKind.Wiring)!.Limits
            .Where(limit => limit.Allowed is not null).Take(most)
            .Select(limit => new object?[] { $"{Capital(LimitSentences.Of(limit, times))}.", limit.Basis.Source }))
            with { Caption = "Limits of battery and wiring, the one with the least left first" };
    }

    internal static ChartTable OfMoment(WiringView view) =>
        ChartTable.Of("element", "volts at its inlet", "amperes", "watts lost")
            .WithRows(view.Answer.Simulation.Network.Elements.Select(element =>
        {
            var at = view.Worst!.At.Elements[element.Name];
            return new object?[] { WiringView.NameOf(element.Name), at.Inlet, at.Current, at.Loss };
        }));

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
