using System.Buffers;
using System.Globalization;
using RigScenarios.Files;
using RigScenarios.Scenarios;
using RigScenarios.Sweeps.Sampling;

namespace RigScenarios.Sweeps.Evaluation;

/// <summary>
/// The scenarios of a sweep, made by setting the values of a point. Whether fields fit together takes far longer to check than to
/// set them, so that it is tried before the first run: each value alone, each two fields at their ends, and points spread over
/// the plan. Where all of that is accepted the points between are not checked again; where an end is refused, every point is.
/// </summary>
internal sealed class SweptScenarios
{
    // Enough to see a combination that is refused before hours of runs, few enough not to be noticed.
    private const int PointsTried = 24;

    // Of lists of so many values all are tried with those of others.
    private const int FewValues = 6;

    // Beyond so many pairs every point is checked.
    private const int MostPairs = 400;

    private static readonly SearchValues<char> Digits = SearchValues.Create("+-.0123456789");

    private readonly IReadOnlyList<string> paths;
    private readonly bool isKnownSound;

    /// <param name="question">The question.</param>
    /// <param name="cancellation">Stops the trials.</param>
    /// <exception cref="ScenarioProblemsException">A value or a combination of the plan is refused.</exception>
    public SweptScenarios(SweepQuestion question, CancellationToken cancellation)
    {
        (Question, paths) = (question, question.Plan.Paths);
        PlanCheck.Run(question.Plan, question.Scenario, cancellation);
        foreach (var point in Spread())
        {
            cancellation.ThrowIfCancellationRequested();
            _ = Of(point);
        }
        isKnownSound = EndsFit(question.Plan, cancellation);
    }

    /// <summary>The question.</summary>
    public SweepQuestion Question { get; }

    /// <summary>The scenario of a point.</summary>
    /// <param name="point">The point.</param>
    /// <exception cref="ScenarioProblemsException">Its values are refused; says of which scenario they are.</exception>
    public Scenario Of(SweepPoint point)
    {
        try
        {
            return ScenarioPath.SetAll(Question.Scenario, Changes(point.Values), isKnownSound);
        }
        catch (ScenarioProblemsException problems)
        {
            throw Told(problems, point);
        }
    }

    /// <summary>Checks the scenario of a point whatever is known: where something in it can't be run, this says what.</summary>
    /// <param name="point">The point.</param>
    /// <exception cref="ScenarioProblemsException">Its values don't fit each other.</exception>
    public void Check(SweepPoint point)
    {
        try
        {
            ScenarioPath.SetAll(Question.Scenario, Changes(point.Values));
        }
        catch (ScenarioProblemsException problems)
        {
            throw Told(problems, point);
        }
    }

    /// <summary>The scenario with some fields set and all others as they are.</summary>
    /// <param name="changes">The fields, by their numbers among the plan's paths, and their values.</param>
    /// <exception cref="ScenarioProblemsException">A value is refused.</exception>
    public Scenario With(IEnumerable<(int Field, string Value)> changes) =>
        ScenarioPath.SetAll(Question.Scenario, changes.Select(change => (paths[change.Field], change.Value)), isKnownSound: true);

    /// <summary>The days of a scenario of the sweep.</summary>
    /// <param name="scenario">The scenario.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <exception cref="ScenarioProblemsException">A life or the order of the days does not fit.</exception>
    public SweptDays DaysOf(Scenario scenario, CancellationToken cancellation) =>
        SweptDays.Of(scenario, Question.Build, Question.Days, Question.Today, cancellation);

    /// <summary>Points spread over the plan, the first and the last among them.</summary>
    public IEnumerable<SweepPoint> Spread()
    {
        var (count, points) = (Question.Plan.Count, Math.Min(PointsTried, Question.Plan.Count));
        for (var i = 0; i < points; i++)
            yield return Question.Plan.At((long)((decimal)i * (count - 1) / Math.Max(1, points - 1)));
    }

    /// <summary>The problems of a scenario of the sweep, with its number and values.</summary>
    /// <param name="problems">The problems.</param>
    /// <param name="point">Its point.</param>
    public ScenarioProblemsException Told(ScenarioProblemsException problems, SweepPoint point)
    {
        var values = string.Join(", ", paths.Zip(point.Values, (path, value) => $"{path}={value}"));
        return new([.. problems.Problems.Select(problem => problem with
        {
            Problem = $"{problem.Problem} (scenario {point.Number + 1} of the sweep: {values})",
        })]);
    }

    private IEnumerable<(string Path, string Text)> Changes(IEnumerable<string> values) => paths.Zip(values);

    // Each two fields at their ends, and all of them together: points that may not be of the plan, so that a refusal is no error
    // yet. What three fields do together and no two of them is left to the points that are tried.
    private bool EndsFit(SweepPlan plan, CancellationToken cancellation)
    {
        string[][] ends =
        [
            .. plan.Axes.Select(axis => Ends([.. axis.Values.Distinct()])),
            .. plan.Uncertain.Select(field => new[] { field.Spread.TextAt(0), field.Spread.TextAt(1) }),
        ];
        var pairs = (from one in Enumerable.Range(0, ends.Length)
                     from other in Enumerable.Range(one + 1, ends.Length - one - 1)
                     from value in ends[one]
                     from second in ends[other]
                     select new[] { (paths[one], value), (paths[other], second) }).Take(MostPairs + 1).ToList();
        if (pairs.Count > MostPairs)
            return false;
        (string, string)[][] tried =
            [.. pairs, [.. Changes(ends.Select(values => values[0]))], [.. Changes(ends.Select(values => values[^1]))]];
        var fits = new bool[tried.Length];
        SweptDays.OnEveryCore(tried.Length, i => fits[i] = Fits(tried[i]), cancellation);
        return !fits.Contains(false);
    }

    // Of values that rise or fall the first and the last; a list of parts has no ends.
    private static string[] Ends(string[] values)
    {
        if (values.Length <= FewValues)
            return values;
        var numbers = values.Select(NumberOf).ToList();
        var rises = numbers.Zip(numbers.Skip(1), (before, after) => after > before).ToList();
        var falls = numbers.Zip(numbers.Skip(1), (before, after) => after < before).ToList();
        return !rises.Contains(false) || !falls.Contains(false) ? [values[0], values[^1]] : values;
    }

    // Not a number for a text that begins with none: it is neither above nor below another.
    private static double NumberOf(string text)
    {
        var end = text.AsSpan().IndexOfAnyExcept(Digits);
        return double.TryParse(end < 0 ? text : text.AsSpan(0, end), NumberStyles.Float, CultureInfo.InvariantCulture,
            out var number) ? number : double.NaN;
    }

    private bool Fits(IEnumerable<(string Path, string Text)> changes)
    {
        try
        {
            ScenarioPath.SetAll(Question.Scenario, changes);
            return true;
        }
        catch (ScenarioProblemsException)
        {
            return false;
        }
    }
}
