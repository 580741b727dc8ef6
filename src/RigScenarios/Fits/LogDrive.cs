using RigScenarios.Batteries;
using RigScenarios.Fits.Logs;

namespace RigScenarios.Fits;

/// <summary>What a fit needs of a log: its bins, its mean power (W), and what its gaps hide.</summary>
/// <param name="Bins">What drives the model and is compared with it.</param>
/// <param name="MeanPower">Mean of voltage times current outside the gaps, W.</param>
/// <param name="Gaps">Current before each gap, A, and its length, s.</param>
internal sealed record LogDrive(LogBins Bins, double MeanPower, IReadOnlyList<(double Amperes, double Seconds)> Gaps)
{
    public static LogDrive Of(PowerLog log, Pack pack)
    {
        var rows = log.Rows;
        double energy = 0, time = 0;
        var gaps = new List<(double, double)>();
        for (var row = 1; row < rows.Count; row++)
        {
            var interval = rows.Seconds[row] - rows.Seconds[row - 1];
            if (rows.IsGap(interval))
            {
                gaps.Add((rows.Amperes[row - 1], interval));
                continue;
            }

            var before = rows.Volts[row - 1] * rows.Amperes[row - 1];
            var after = rows.Volts[row] * rows.Amperes[row];
            energy += interval * (rows.Samples ? (before + after) / 2 : before);
            time += interval;
        }

        return new LogDrive(LogBins.Of(rows, pack.Capacity), energy / time, gaps);
    }
}
