using RigScenarios.Parts;

namespace RigScenarios.Fits.Notes;

/// <summary>What a power meter says of a device's scale.</summary>
internal static class MeterReading
{
    /// <summary>What was read over what the part says, the mean of the states that were read; null where the part says nothing,
    /// or nothing above 0 W, in any of them.</summary>
    /// <param name="read">What was read.</param>
    /// <param name="part">What the part says.</param>
    public static double? Of(PowerDraw read, PowerDraw part)
    {
        List<double> ratios = [.. Ratio(read.Record, part.Record), .. Ratio(read.Standby, part.Standby)];
        return ratios.Count == 0 ? null : Math.Exp(ratios.Average(Math.Log));
    }

    private static IEnumerable<double> Ratio(UnitsNet.Power? read, UnitsNet.Power? part)
    {
        if (read is { } measured && part is { } said && (double)said.Watts > 0 && (double)measured.Watts > 0)
            yield return (double)measured.Watts / (double)said.Watts;
    }
}
