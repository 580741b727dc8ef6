using RigScenarios.Files.Formats;
using UnitsNet;

namespace RigScenarios.Files;

/// <summary>What a fit to notes and logs writes into the fields of a battery.</summary>
internal static class FittedFormat
{
    public const string LoadScaleAbout =
        "How many times what the parts say all devices of this build draw, as notes and logs say of them together; "
        + "1 if left out.";

    public const string KnownToAbout =
        "One standard deviation of the runtime that a fit to notes and logs of this battery leaves; the answer's stated "
        + "error has it in it.";

    public const string FromAbout = "What that fit rests on, for people.";

    /// <summary>Beyond a third or thrice a figure is a slip, not a draw.</summary>
    public static readonly NumberFormat LoadScale = new(0.3, 3);

    public static readonly QuantityFormat<Ratio> KnownTo = new(Ratio.FromPercent(0), Ratio.FromPercent(100), "6 %");

    public static readonly TextFormat From = new(120);
}
