using System.Globalization;
using RigScenarios.Batteries;

namespace RigScenarios.Answers;

/// <summary>How far off a prediction may be, in words.</summary>
public static class PredictionWords
{
    /// <summary>"within ±2.4 %" with what it rests on, or that nobody has measured it: the end of a sentence.</summary>
    /// <param name="error">The error.</param>
    public static string Of(ExpectedError error)
    {
        ArgumentNullException.ThrowIfNull(error);
        return error.Share is { } share
            ? FormattableString.Invariant($"within ±{share.Percent:0.#} %, {error.Why}")
            : $"to be off by an amount that nobody knows: {error.Why}";
    }

    /// <summary>The caution in short, without what it rests on.</summary>
    /// <param name="error">The error.</param>
    internal static string Short(ExpectedError error) => error.Share is { } share
        ? string.Create(CultureInfo.InvariantCulture, $"Times are predicted, not measured: expect them within "
            + $"±{share.Percent:0.#} %, or worse with another age or another use than was measured. Carry a reserve.")
        : "Times are predicted, and nobody knows how far off they are. Carry a reserve.";
}
