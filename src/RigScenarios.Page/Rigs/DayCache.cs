using RigScenarios.Charts.Days;
using RigScenarios.Charts.Days.Rotation;
using RigScenarios.Charts.Pages;
using RigScenarios.Charts.Wiring;
using RigScenarios.Drafts;
using UnitsNet;

namespace RigScenarios.Page.Rigs;

/// <summary>The days that were run last, with their charts: whoever drags a part in the drawing asks for the same day many times
/// a second.</summary>
internal sealed class DayCache
{
    private const int Most = 8;

    private readonly Lock gate = new();
    private readonly List<(string Key, DraftRun Run, DayParts Parts)> known = [];

    /// <summary>All of a draft that a day rests on, as text; where its things sit is no part of it.</summary>
    public static string KeyOf(RigDraft draft, RigPlace place, string partsMark) =>
        string.Join('\n', RigDraftFormat.WriteJson(draft with { Places = Parts.OrderedMap<Length>.Empty, SlideMiddle = null })
            .ToJsonString(), place.File?.Id, place.File?.Version, place.Build, place.Day, partsMark);

    /// <summary>The day of that key; null if it is not known.</summary>
    public DraftRun? Find(string key)
    {
        lock (gate)
            return known.Find(day => day.Key == key).Run;
    }

    /// <summary>The charts of a day, drawn once.</summary>
    public DayParts Charts(string key, DraftRun run)
    {
        lock (gate)
        {
            if (known.Find(day => day.Key == key && ReferenceEquals(day.Run, run)) is { Parts: { } drawn })
                return drawn;
        }
        var parts = Draw(run);
        lock (gate)
        {
            known.RemoveAll(day => day.Key == key);
            known.Add((key, run, parts));
            if (known.Count > Most)
                known.RemoveAt(0);
        }
        return parts;
    }

    private static DayParts Draw(DraftRun run) => new(
        [
            .. run.Answer.Simulation.Series.Count > 0 ? (PagePart[])[new FigurePart(DayChart.Of(run.Answer, "The day on this battery"))]
                : [],
            .. run.Rotation is { } rotation ? RotationParts.Of(rotation.Plan, rotation.Result, rotation.NotPlanned) : [],
        ],
        run.Wiring is not null ? [.. WiringParts.Of(run.Answer)] : []);
}

/// <summary>What of an answer rests on the day alone.</summary>
/// <param name="Day">How the day goes.</param>
/// <param name="Wiring">What the wiring has left.</param>
internal sealed record DayParts(IReadOnlyList<PagePart> Day, IReadOnlyList<PagePart> Wiring);
