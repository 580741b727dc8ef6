using RigScenarios.Charts;
using RigScenarios.Charts.Fits;
using RigScenarios.Charts.Pages;

namespace RigScenarios.Notebooks.Tests.Charts;

/// <summary>Charts of fits over invented notes and an invented log with a gap in it.</summary>
internal static class FitGallery
{
    public const int Count = 6;

    public static ChartPage Page() => new ChartPage { Title = "Charts of fits" }
        .With(Notes()).With(Cells()).With(Log()).With(Spans()).With(One()).With(Both());

    public static Figure Notes() => PredictedAgainstMeasured.Of("notes", "Do your notes fit?", new ChartAxis("runtime", "h"),
    [
        new("evening on the pier", 5.1, 5.3) { Least = 4.8, Greatest = 5.8 },
        new("the market hall", 4.2, 4.0) { Least = 3.6, Greatest = 4.4 },
        new("the ferry", 6.8, 6.9) { Least = 6.2, Greatest = 7.6 },
        new("snow", 2.9, 2.7) { Least = 2.3, Greatest = 3.1 },
        new("lamps in the yard", 5.6, 4.5) { As = ComparedAs.AtLeast },
        new("the borrowed battery", 5.4, 2.2) { Least = 2.0, Greatest = 2.4, As = ComparedAs.LeftOut },
    ], "The bars are what a note may stand for: two days are never alike, and clocks are read roughly.");

    public static Figure Cells() => PredictedAgainstMeasured.Of("cells", "How far off?", new ChartAxis("capacity left", "%"),
    [
        new("cell A", 88, 92) { Group = "stored" }, new("cell B", 76, 74) { Group = "stored" },
        new("cell C", 61, 83) { Group = "cycled" }, new("cell D", 58, 94) { Group = "cycled" },
    ]);

    public static Figure Log()
    {
        var hours = Enumerable.Range(0, 200).Select(i => i * 0.02).ToList();
        var predicted = hours.ConvertAll(Predicted);
        return LogOverPrediction.Of("log", "Does the log fit?", new ComparedLog("log", hours,
            [.. hours.Select((hour, i) => i is > 80 and < 95 ? double.NaN : Predicted(hour) + 0.03 * Math.Sin(9 * hour))],
            predicted, [.. hours.Select((_, i) => i is < 81 or > 94)])
        {
            Amperes = [.. hours.Select((_, i) => i % 50 < 25 ? 3.1 : 2.2)],
            Lowest = [.. predicted.Select(volts => volts - 0.06)],
            Highest = [.. predicted.Select(volts => volts + 0.06)],
        });

        static double Predicted(double hour) => 16.4 - 0.6 * hour - 0.4 * Math.Pow(hour / 3.98, 12);
    }

    public static Figure Spans() => FitSpans.Of([Capacity, Resistance, Load], "What did your notes tell?");

    public static Figure One() => FitPosterior.Of(Capacity, "How much does it hold?");

    public static Figure Both() => FitPosterior.Joint(Capacity, Load, 0.9, "Can the two be told apart?",
        "A long and narrow area: only the two together are known.");

    private static FittedValue Capacity => new("capacity", -0.05, 0.08, -0.14, 0.02);

    private static FittedValue Resistance => new("resistance", 0.1, 0.25, 0.3, 0.15) { Of = "of a new battery", Low = 1.02 };

    private static FittedValue Load => new("draw of the devices", 0, 0.15, 0.06, 0.03) { Of = "of the data sheets" };
}
