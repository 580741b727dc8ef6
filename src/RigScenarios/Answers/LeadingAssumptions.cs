using System.Globalization;
using RigScenarios.Batteries;
using RigScenarios.Files;
using RigScenarios.Scenarios;
using UnitsNet;

namespace RigScenarios.Answers;

/// <summary>An assumed value with what it moves.</summary>
/// <param name="Value">The value.</param>
/// <param name="Path">The field that replaces it.</param>
/// <param name="Less">Change of the reserve with the lower of the two values that were tried.</param>
/// <param name="More">Change of the reserve with the higher one.</param>
/// <param name="Low">The lower value as text.</param>
/// <param name="High">The higher value as text.</param>
public sealed record AssumptionEffect(AssumedValue Value, string Path, Duration Less, Duration More, string Low, string High)
{
    /// <summary>The greater change, either way.</summary>
    public Duration Moves => Duration.FromSeconds(Math.Max(Math.Abs(Less.Seconds), Math.Abs(More.Seconds)));

    /// <summary>In words: "capacity of the brick, 13.19 Ah: 10.55 Ah would leave 1 h 20 min less".</summary>
    public string Words
    {
        get
        {
            var (text, by) = Math.Abs(Less.Seconds) >= Math.Abs(More.Seconds) ? (Low, Less) : (High, More);
            return $"{Value.Name}, {Value.Value}: {text} would leave "
                + $"{AnswerTimes.Length(Duration.FromSeconds(Math.Abs(by.Seconds)))} {(by.Seconds < 0 ? "less" : "more")}";
        }
    }
}

/// <summary>
/// Finds the assumptions that move the answer most by trying: each is varied either way, and the days are run again.
/// By how much is our choice: a voltage by a twentieth, a label's energy or capacity by a tenth, all else by a fifth.
/// </summary>
public static class LeadingAssumptions
{
    private const double Spread = 0.2;
    private const double LabelSpread = 0.1;
    private const double VoltageSpread = 0.05;

    /// <summary>Those that move the reserve by a minute or more, the one that moves it most first.</summary>
    /// <param name="answer">The answer.</param>
    /// <param name="mostRuns">The number of runs at most.</param>
    /// <param name="progress">Told of the part that is done, 0…1; null for nobody.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static IReadOnlyList<AssumptionEffect> Find(RigAnswer answer, int mostRuns = 80, IProgress<double>? progress = null,
        CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(answer);
        var effects = new List<AssumptionEffect>();
        var values = Varied(answer).Take(mostRuns / 2).ToList();
        for (var i = 0; i < values.Count; i++)
        {
            progress?.Report((double)i / values.Count);
            var (value, path, low, high) = values[i];
            var (less, more) = (Change(answer, path, low, cancellation), Change(answer, path, high, cancellation));
            if (less is null && more is null)
                continue;
            var effect = new AssumptionEffect(value, path, less ?? Duration.Zero, more ?? Duration.Zero, low, high);
            if (effect.Moves.Minutes >= 1)
                effects.Add(effect);
        }
        return [.. effects.OrderByDescending(effect => effect.Moves.Seconds)];
    }

    private static IEnumerable<(AssumedValue Value, string Path, string Low, string High)> Varied(RigAnswer answer)
    {
        var told = new HashSet<string>(StringComparer.Ordinal);
        foreach (var value in answer.PartsAssumed)
        {
            if (told.Add(value.Field) && Texts(value) is var (low, high))
                yield return (value, value.Field, low, high);
        }
        foreach (var (battery, assumed) in answer.Simulation.Assumed)
        {
            foreach (var value in assumed)
            {
                if (PathOf(answer, battery, value.Field) is { } path && told.Add(path) && Texts(value) is var (low, high))
                    yield return (value, path, low, high);
            }
        }
    }

    /// <summary>The field that stands in for an assumption; null where there is none.</summary>
    private static string? PathOf(RigAnswer answer, string battery, string field)
    {
        if (field.Contains('.', StringComparison.Ordinal))
            return field;
        var scenario = answer.Scenario;
        var planned = scenario.Batteries.TryGetValue(battery, out var turn);
        if (field is "capacity-left" or "resistance-growth")
            return planned ? $"batteries.{battery}.{field}" : $"builds.{answer.Build}.battery.{field}";
        var item = planned ? turn!.Item : answer.TheBuild.Battery.Item;
        return scenario.Kit.TryGetValue(item, out var thing) ? $"parts.{thing.Part}.battery.{field}" : null;
    }

    /// <summary>Less and more of it; an age that is not known can only be worse than new.</summary>
    private static (string Low, string High)? Texts(AssumedValue value)
    {
        if (value.Field == "capacity-left")
            return ("80 %", "90 %");
        if (value.Field == "resistance-growth")
            return ("1.5", "2");
        var space = value.Value.IndexOf(' ', StringComparison.Ordinal);
        var (number, unit) = space < 0 ? (value.Value, "") : (value.Value[..space], value.Value[space..]);
        if (!double.TryParse(number, NumberStyles.Float, CultureInfo.InvariantCulture, out var figure)
            || unit.Contains(',', StringComparison.Ordinal) || unit.Contains("to", StringComparison.Ordinal))
            return null;
        string Text(double factor) => string.Create(CultureInfo.InvariantCulture, $"{figure * factor:G4}{unit}");
        var spread = unit == " V" ? VoltageSpread : value.Field is "capacity"
            || value.Field.EndsWith(".energy", StringComparison.Ordinal) ? LabelSpread : Spread;
        return (Text(1 - spread), Text(1 + spread));
    }

    private static Duration? Change(RigAnswer answer, string path, string text, CancellationToken cancellation)
    {
        try
        {
            var changed = ScenarioPath.Set(answer.Scenario, path, text);
            return RigAnswer.Of(changed, answer.Build, answer.Days, answer.Options with { SeriesPoints = 0 }, answer, null,
                cancellation).Tightest.Reserve.Time
                - answer.Tightest.Reserve.Time;
        }
        catch (Exception exception) when (exception is ScenarioProblemsException or ArgumentException
            or InvalidOperationException)
        {
            // Outside of what the field takes: this side is not tried.
            return null;
        }
    }
}
