using MathNet.Numerics.Statistics;
using RigScenarios.Batteries;
using RigScenarios.Fits;
using RigScenarios.Fits.Logs;
using RigScenarios.Fits.Notes;
using RigScenarios.Scenarios;
using UnitsNet;

namespace RigScenarios.Answers.Fitted;

/// <summary>What one power log says of a build's battery, with nothing else noted. Words for it are made by
/// <see cref="LogSentences"/>.</summary>
/// <param name="Reading">The log as it was read. Its first part is fitted.</param>
/// <param name="Air">The air at the battery.</param>
/// <param name="Charge">The charge at the first row.</param>
/// <param name="Result">What it says.</param>
public sealed record LogAnswer(LogReading Reading, Temperature Air, Ratio Charge, FitResult Result)
{
    /// <summary>A log may be this part below the voltage at which the battery ends, and above the full one, before it is taken
    /// for that of another battery.</summary>
    private const double Beyond = 0.15;

    /// <summary>Fits the battery of a build to a log. What somebody measured of it before is put aside, the age in words
    /// counts.</summary>
    /// <param name="scenario">The scenario.</param>
    /// <param name="build">The build's short name.</param>
    /// <param name="reading">The log.</param>
    /// <param name="air">The air at the battery; it has its temperature at the start.</param>
    /// <param name="charge">The charge at the first row; above 0, up to 1.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <exception cref="ScenarioProblemsException">The log says nothing of this battery; carries why.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static LogAnswer Of(Scenario scenario, string build, LogReading reading, Temperature air, Ratio charge,
        CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(reading);
        var pack = ExpectedBattery.Of(scenario, build, isMeasuredAgain: true).Pack;
        if (OtherBattery(pack, reading) is { } other)
            throw new ScenarioProblemsException([other]);
        try
        {
            return new(reading, air, charge, BatteryFit.Find(new FitProblem(pack, FitPriors.Of(pack.Age) with { Load = null }, [],
                [new PowerLog { Id = reading.File, Rows = reading.Rows, Ambient = air, InitialCharge = charge }]),
                cancellation: cancellation));
        }
        catch (ArgumentException exception)
        {
            throw new ScenarioProblemsException(
                [new Diagnostic(Severity.Error, reading.File, TextPlace.None, "", LogSentences.Plain(exception))]);
        }
    }

    /// <summary>What is wrong where the voltages are those of another battery.</summary>
    private static Diagnostic? OtherBattery(Pack pack, LogReading reading)
    {
        var usual = ArrayStatistics.MedianInplace(reading.Rows.Volts.ToArray());
        var full = (pack.SeriesGroups * pack.FullVoltage).Volts;
        return usual >= pack.CutoffVoltage.Volts * (1 - Beyond) && usual <= full * (1 + Beyond) ? null
            : new Diagnostic(Severity.Error, reading.File, TextPlace.None, "voltage", LogSentences.OtherBattery(usual,
                pack.CutoffVoltage.Volts, full));
    }
}
