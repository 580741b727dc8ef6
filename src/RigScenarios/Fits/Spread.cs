namespace RigScenarios.Fits;

/// <summary>
/// How far observations may lie from what the model says, in standard deviations of plain numbers. They depend on what was
/// written down, never on what is fitted. Figures and why: docs/calibration.md.
/// </summary>
internal static class Spread
{
    /// <summary>Of a percentage shown by a battery, as a share of its charge.</summary>
    public const double Percent = 0.05;

    /// <summary>Of the natural logarithm of a log's mean power.</summary>
    public const double MeanPower = 0.04;

    private const double Freezing = 273.15;

    /// <summary>Of ln t without the clock: no two days are alike, the model errs, and "full" is never quite full.</summary>
    /// <param name="run">The run.</param>
    /// <param name="seconds">t, s.</param>
    public static double OfDay(BatteryRun run, double seconds)
    {
        var charge = run.InitialCharge.DecimalFractions;
        var model = ByCold(run.Ambient.Kelvins, 0.02, 0.03, 0.05);
        if (seconds < 3600 * charge)
            model = Math.Max(model, 0.05);
        return Math.Sqrt(UseVariance(run) + (model * model));
    }

    /// <summary>Variance of ln t from what no two days have in common and from the start charge: without the model's own
    /// error.</summary>
    public static double UseVariance(BatteryRun run)
    {
        var charge = run.InitialCharge.DecimalFractions;
        var use = run.Steady ? 0.01 : 0.04;
        var start = StartCharge(charge) / charge;
        return (use * use) + (start * start);
    }

    /// <summary>Of ln t with the clock.</summary>
    public static double OfNote(BatteryRun run, double seconds, double clockSeconds)
    {
        var clock = clockSeconds / seconds;
        var day = OfDay(run, seconds);
        return Math.Sqrt((clock * clock) + (day * day));
    }

    /// <summary>Of a start charge, as a share of the capacity.</summary>
    public static double StartCharge(double charge) => charge >= 0.99 ? 0.01 : 0.05;

    /// <summary>Of the model's voltage of one group under a log's current, V.</summary>
    public static double GroupVoltage(double ambientKelvin) => ByCold(ambientKelvin, 0.015, 0.03, 0.05);

    private static double ByCold(double kelvin, double above, double below, double deep) =>
        kelvin >= Freezing ? above : kelvin >= Freezing - 10 ? below : deep;
}
