using System.Text;
using RigScenarios.Answers;
using RigScenarios.Charts.Days;
using RigScenarios.Charts.Timeline;
using RigScenarios.Charts.Pages;
using RigScenarios.Charts.Wiring;
using RigScenarios.Drafts;
using RigScenarios.Files.Formats;
using RigScenarios.Requests.Runs;

namespace RigScenarios.Requests.Rigs;

/// <summary>The days that were run last, with their charts: whoever drags a part in the drawing asks for the same day many times
/// a second.</summary>
internal sealed class DayCache
{
    private const int Most = 8;

    private readonly Lock gate = new();
    private readonly List<(string Key, RigAnswer Answer, DayParts Parts)> known = [];

    /// <summary>All that a day rests on, as text; where things sit is no part of it.</summary>
    public static string KeyOf(GivenRig given, RigPlace place, string partsMark) =>
        string.Join('\n', TextOf(given.WithoutPlaces), place.File?.Id, place.File?.Version,
            place.Frame.Build, place.Frame.Day, place.Frame.Today, partsMark);

    /// <summary>An answer whose day is that of the key; null if none is known.</summary>
    public RigAnswer? Find(string key)
    {
        lock (gate)
            return known.Find(day => day.Key == key).Answer;
    }

    /// <summary>The charts of an answer's day, drawn once.</summary>
    public DayParts Charts(string key, RigAnswer answer)
    {
        lock (gate)
        {
            if (known.Find(day => day.Key == key && ReferenceEquals(day.Answer.Simulation,
                answer.Simulation)) is { Parts: { } drawn })
                return drawn;
        }
        var parts = new DayParts([.. OfDay(answer)], [.. WiringParts.Of(answer)]);
        lock (gate)
        {
            known.RemoveAll(day => day.Key == key);
            known.Add((key, answer, parts));
            if (known.Count > Most)
                known.RemoveAt(0);
        }
        return parts;
    }

    private static string TextOf(FileNode node) =>
        Encoding.UTF8.GetString(MessageBytes.Of(json =>
        {
            json.WritePropertyName("given");
            GivenJson.Write(json, node);
        }));

    private static IEnumerable<PagePart> OfDay(RigAnswer answer)
    {
        if (answer.Simulation.Series.Count > 0)
            yield return new FigurePart(DayChart.Of(answer,
                answer.Plan.Batteries.Count > 1 ? "The day on these batteries" : "The day on this battery"));
        // Where nobody said how many batteries there are, there is nothing to follow.
        if (answer.Scenario.Batteries.Count == 0)
            yield break;
        foreach (var part in TimelineParts.Of(answer.Plan, answer.Simulation,
            NotPlanned.Of(answer.Scenario, answer.Build, answer.Days.Count)))
            yield return part;
    }
}

/// <summary>What of an answer rests on the day alone.</summary>
/// <param name="Day">How the day goes.</param>
/// <param name="Wiring">What the wiring has left.</param>
internal sealed record DayParts(IReadOnlyList<PagePart> Day, IReadOnlyList<PagePart> Wiring);
