using RigScenarios.Answers;
using RigScenarios.Limits;
using RigScenarios.Sweeps.Evaluation;

namespace RigScenarios.Sweeps.Sensitivity;

/// <summary>Asks the whole answer of many runs.</summary>
internal static class WholeRuns
{
    private static readonly (QuestionKind Kind, string Column)[] Questions =
    [
        (QuestionKind.Power, "power_verdict"), (QuestionKind.Wiring, "wiring_verdict"), (QuestionKind.Balance, "balance_verdict"),
        (QuestionKind.Stand, "stand_verdict"), (QuestionKind.Travel, "travel_verdict"), (QuestionKind.Cost, "cost_verdict"),
    ];

    /// <summary>How the whole answer comes out, and what to measure for it.</summary>
    /// <param name="question">The question.</param>
    /// <param name="days">The days.</param>
    /// <param name="uncertain">All that is uncertain, of the days and at rest.</param>
    /// <param name="progress">Told of how many runs are done.</param>
    /// <param name="cancellation">Stops it.</param>
    public static WholeChance Of(SensitivityQuestion question, IReadOnlyList<string> days, UsualUncertainty uncertain,
        IProgress<long>? progress, CancellationToken cancellation)
    {
        var asked = new SweepQuestion(question.Scenario, question.Build, days,
            new()
            {
                Uncertain = uncertain.Fields, Correlations = uncertain.Correlations, Samples = question.WholeSamples,
                Seed = question.Options.Seed,
            },
            SweepColumns.Choose(question.Scenario, ["verdict", .. Questions.Select(one => one.Column)]))
        {
            Today = question.Today,
        };
        var records = SweepRun.Records(asked, progress is null ? null : new Passed(progress), cancellation).ToList();
        var verdicts = records.GroupBy(record => Parsed(record.Cells[0].Text))
            .ToDictionary(group => group.Key, group => group.Count());
        var failing = Questions.Select((one, at) => (one.Kind, Count: records.Count(record =>
                record.Cells[at + 1].Text == Verdict.Fails.InWords())))
            .Where(one => one.Count > 0).ToDictionary(one => one.Kind, one => one.Count);
        var known = records.Where(record => Parsed(record.Cells[0].Text) != Verdict.NotKnown).ToList();
        bool[] holds = [.. known.Select(record => Parsed(record.Cells[0].Text) != Verdict.Fails)];
        var points = known.Select(record => asked.Plan.Unit(record.Number)).ToList();
        double[] figure = [.. holds.Select(yes => yes ? 1.0 : 0.0)];
        var gains = from told in UncertainGroups.Told(uncertain)
            let guess = holds.Distinct().Count() < 2 ? null
                : GuessAfterMeasuring.Of(points, told.Thing.Coordinates, figure, holds)
            where guess is not null && guess.Gain.DecimalFractions > 0
            orderby guess.Gain.DecimalFractions descending
            select new WholeGain(told.Act, told.Names, told.Thing.Paths, guess);
        return new(verdicts, failing, [.. gains]);
    }

    private static Verdict Parsed(string? words) =>
        Enum.GetValues<Verdict>().FirstOrDefault(verdict => verdict.InWords() == words, Verdict.NotKnown);

    private sealed class Passed(IProgress<long> whole) : IProgress<SweepProgress>
    {
        public void Report(SweepProgress value) => whole.Report(value.Done);
    }
}
