using System.Globalization;
using UnitsNet;

namespace RigScenarios.Sweeps.Sensitivity;

/// <summary>Probabilities as people say them.</summary>
internal static class InTens
{
    /// <summary>"8 times in 10", "97 times in 100", "in none of 1024 runs".</summary>
    /// <param name="chance">The chance; known in some run.</param>
    public static string Of(Chance chance) => chance switch
    {
        { Yes: 0 } => $"in none of {chance.Known} runs",
        { No: 0 } => $"in all {chance.Known} runs",
        _ => Of(chance.Share!.Value),
    };

    /// <summary>The same of a share alone: tens between 5 and 94 %, else hundreds.</summary>
    /// <param name="share">The share, 0 to 1.</param>
    public static string Of(Ratio share)
    {
        var part = share.DecimalFractions;
        var (count, of) = part is >= 0.05 and < 0.945 ? (Math.Round(10 * part), 10)
            : part is >= 0.005 and <= 0.995 ? (Math.Round(100 * part), 100) : (Math.Round(1000 * part), 1000);
        return (count, part) switch
        {
            (0, > 0) => "less than once in 1000",
            (0, _) => "never",
            (1, _) => $"once in {of}",
            _ when count == of => part < 1 ? "more than 999 times in 1000" : "always",
            _ => string.Create(CultureInfo.InvariantCulture, $"{count:0} times in {of}"),
        };
    }

    /// <summary>The same without "times": "8 of 10".</summary>
    /// <param name="share">The share, 0 to 1: a tenth or a twentieth.</param>
    public static string Days(double share) => Math.Abs((10 * share) - Math.Round(10 * share)) < 1e-9
        ? string.Create(CultureInfo.InvariantCulture, $"{10 * share:0} of 10")
        : string.Create(CultureInfo.InvariantCulture, $"{100 * share:0} of 100");

    /// <summary>A share in per cent: whole ones, below 10 % with a tenth.</summary>
    /// <param name="share">The share.</param>
    public static string Percent(double share) => Math.Abs(share) is < 0.0995 and > 0
        ? string.Create(CultureInfo.InvariantCulture, $"{100 * share:0.#} %")
        : string.Create(CultureInfo.InvariantCulture, $"{100 * share:0} %");
}
