using RigScenarios.Numerics;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Fits;

/// <summary>One unknown as the fit found it.</summary>
/// <param name="Unknown">Which.</param>
/// <param name="Prior">What was believed before.</param>
/// <param name="Log">The best value as it is fitted: a natural logarithm, for the offset of the air kelvins.</param>
/// <param name="StandardError">One standard deviation of it.</param>
/// <param name="LogLow">Lower end of its 95 % interval.</param>
/// <param name="LogHigh">Upper end.</param>
/// <param name="ByProfile">True where the interval was found by refitting at its ends, because the normal one did not hold
/// there.</param>
/// <param name="ProfileCheck">How much the misfit grows at both ends of the normal interval over what it should; 1 is right. Null
/// if it wasn't looked at, or nothing was found.</param>
public sealed record FitEstimate(
    FitUnknown Unknown, NormalPrior Prior, double Log, double StandardError, double LogLow, double LogHigh, bool ByProfile,
    (double Low, double High)? ProfileCheck)
{
    /// <summary>The factor that it stands for; for the offset of the air kelvins.</summary>
    public double Value => Shown(Log);

    /// <summary>Lower end of the factor's 95 % interval.</summary>
    public double Low => Shown(LogLow);

    /// <summary>Upper end of the factor's 95 % interval.</summary>
    public double High => Shown(LogHigh);

    /// <summary>How many deviations of the prior it lies above the prior's middle.</summary>
    public double FromPrior => (Log - Prior.Mean) / Prior.Deviation;

    private double Shown(double fitted) => Unknown.IsLogarithm ? Math.Exp(fitted) : fitted;
}

/// <summary>A note that the fit to all others misses.</summary>
/// <param name="Note">Its name.</param>
/// <param name="Deleted">Observed less what the others say of it, in its standard deviations: above 0 it lasted longer or showed
/// more.</param>
public sealed record NoteMiss(string Note, double Deleted);

/// <summary>Two unknowns of which the data fix only one combination; the other rests on what was assumed before.</summary>
/// <param name="First">The one.</param>
/// <param name="Second">The other.</param>
/// <param name="FirstIsMore">Whether the first would be more than assumed, if it explained the data alone.</param>
/// <param name="SecondIsMore">Whether the second would be more than assumed, if it did.</param>
/// <param name="Strong">μ1, information along what the data fix, in units of the prior's.</param>
/// <param name="Weak">μ2, information along what they don't.</param>
public sealed record InseparablePair(
    FitUnknown First, FitUnknown Second, bool FirstIsMore, bool SecondIsMore, double Strong, double Weak);

/// <summary>How a note was met.</summary>
/// <param name="Note">Its name.</param>
/// <param name="Predicted">The run-time that the fitted battery has.</param>
/// <param name="PredictedCharge">The charge that it has at the time of the percentage; null if none was shown.</param>
/// <param name="Miss">Observed less predicted, in the note's standard deviations (of its logarithm); for one that still ran, what
/// was left of the prediction, below 0 if it should have stopped.</param>
/// <param name="LeftOut">Whether the fit goes without it.</param>
public sealed record FittedNote(string Note, Duration Predicted, Ratio? PredictedCharge, double Miss, bool LeftOut);

/// <summary>What was found of a log.</summary>
/// <param name="Log">Its name.</param>
/// <param name="Blocks">Into how many independent voltages it was condensed.</param>
/// <param name="CorrelationTime">How long the voltage error of a model lives.</param>
/// <param name="BinWidth">Length of the stretches that drive the model.</param>
/// <param name="Gain">γ, the logarithm of the gain of its current sensor.</param>
/// <param name="StartCharge">ζ, its charge at the start less the stated one.</param>
/// <param name="BlockMisses">Measured less predicted voltage of each block, in its standard deviations.</param>
/// <param name="Course">Measured and predicted voltage over time, as the fit compared them.</param>
public sealed record FittedLog(
    string Log, int Blocks, Duration CorrelationTime, Duration BinWidth, double Gain, double StartCharge,
    IReadOnlyList<double> BlockMisses, IReadOnlyList<LogMoment> Course);

/// <summary>One bin of a log, measured and predicted.</summary>
/// <param name="Time">Its middle, from the first row.</param>
/// <param name="Measured">Mean of the measured voltage.</param>
/// <param name="Predicted">Mean of the predicted voltage.</param>
/// <param name="Current">Mean of the measured current.</param>
/// <param name="Compared">Whether it counted: not in a gap of the log.</param>
public sealed record LogMoment(
    Duration Time, ElectricPotential Measured, ElectricPotential Predicted, ElectricCurrent Current, bool Compared);

/// <summary>How long a planned run will last, and how well that is known.</summary>
/// <param name="Runtime">The most likely time.</param>
/// <param name="BatteryDeviation">One deviation of its logarithm, from what is not known of battery and loads.</param>
/// <param name="DayDeviation">One deviation of its logarithm, from what no two days have in common, the start charge and the
/// model.</param>
public sealed record FitForecast(Duration Runtime, double BatteryDeviation, double DayDeviation)
{
    /// <summary>One deviation of its logarithm, from both.</summary>
    public double Deviation => Math.Sqrt((BatteryDeviation * BatteryDeviation) + (DayDeviation * DayDeviation));

    /// <summary>Lower end of the 95 % interval.</summary>
    public Duration Low => Runtime * Math.Exp(-NormalTail.Of95Percent * Deviation);

    /// <summary>Upper end of the 95 % interval.</summary>
    public Duration High => Runtime * Math.Exp(NormalTail.Of95Percent * Deviation);

    /// <summary>Part of the variance that battery and loads make; the rest is the day.</summary>
    public Ratio ShareOfBattery =>
        Ratio.FromDecimalFractions(BatteryDeviation * BatteryDeviation / (Deviation * Deviation));

    /// <summary>Chance that it lasts so long.</summary>
    /// <param name="wanted">The time; above 0.</param>
    public Ratio ChanceToLast(Duration wanted)
    {
        Require.Positive(wanted.Seconds, "s", nameof(wanted));
        return Ratio.FromDecimalFractions(
            Math.Exp(NormalTail.LogBelow(Math.Log(Runtime.Seconds / wanted.Seconds) / Deviation)));
    }

    /// <summary>Whether the time lies in the 95 % interval, so that nobody can promise either.</summary>
    public bool IsClose(Duration wanted) => wanted >= Low && wanted <= High;
}

/// <summary>What a test would leave.</summary>
/// <param name="Test">Its name.</param>
/// <param name="BatteryDeviationAfter">One deviation of the planned run's logarithm from battery and loads, after it.</param>
/// <param name="Gain">By how much the planned run's 95 % interval would be narrower on each side.</param>
public sealed record TestGain(string Test, double BatteryDeviationAfter, Duration Gain);

/// <summary>What each test would leave, and which to make next.</summary>
/// <param name="Before">The forecast as it is.</param>
/// <param name="Tests">Each test, in the order in which they were asked.</param>
/// <param name="Best">The first within 1 % of the least that one of them leaves; null if there is none.</param>
public sealed record NextTest(FitForecast Before, IReadOnlyList<TestGain> Tests, TestGain? Best);
