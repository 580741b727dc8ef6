using System.Globalization;
using UnitsNet;

namespace RigScenarios.Batteries;

/// <summary>How far off a predicted runtime may be where the battery was fitted to its own notes and logs.</summary>
internal static class FittedError
{
    /// <summary>Standard deviations on either side that hold 95 % of a normal distribution.</summary>
    public const double Deviations = 1.959964;

    /// <summary>The model's own error and what the fit leaves, in quadrature: the one says how well the model follows a known
    /// cell, the other how well this cell and its days are known, and neither knows of the other.</summary>
    /// <param name="model">The model's own error.</param>
    /// <param name="knownTo">One standard deviation that the fit leaves, as a share of the runtime; null where nothing was
    /// fitted.</param>
    /// <param name="from">What the fit rests on, such as "5 notes and 1 log"; null where nobody says.</param>
    public static ExpectedError Of(ExpectedError model, Ratio? knownTo, string? from)
    {
        if (knownTo is not { } deviation)
            return model;
        var left = Deviations * deviation.DecimalFractions;
        var share = model.Share is { } own
            ? Ratio.FromDecimalFractions(Math.Sqrt((left * left) + (own.DecimalFractions * own.DecimalFractions))) : (Ratio?)null;
        var fitted = string.Create(CultureInfo.InvariantCulture,
            $"resting on {from ?? "a fit to notes"} of this battery, which leave ±{100 * left:0.#} % open, and on ");
        return model with { Share = share?.ToUnit(UnitsNet.Units.RatioUnit.Percent), Why = fitted + model.Why };
    }
}
