using RigScenarios.Charts;
using RigScenarios.Charts.Days;
using RigScenarios.Days;
using RigScenarios.Drafts;
using UnitsNet;

namespace RigScenarios.Page.Rigs;

/// <summary>The days that were run last, with their charts: whoever drags a part in the drawing asks for the same day many times a second.</summary>
internal sealed class KnownDays
{
    private const int Most = 8;

    private readonly Lock gate = new();
    private readonly List<(string Key, DayResult Result, Figure Chart)> known = [];

    /// <summary>All of a draft that a day rests on, as text; where its things sit is no part of it.</summary>
    public static string KeyOf(RigDraft draft, RigPlace place, string partsMark) =>
        string.Join('\n', RigDraftFormat.WriteJson(draft with { Places = Parts.OrderedMap<Length>.Empty, SlideMiddle = null }).ToJsonString(), place.File?.Id, place.File?.Version, place.Build, place.Day, partsMark);

    /// <summary>The day of that key; null if it is not known.</summary>
    public DayResult? Find(string key)
    {
        lock (gate)
            return known.Find(day => day.Key == key).Result;
    }

    /// <summary>The chart of a day, drawn once.</summary>
    public Figure Chart(string key, DayResult result, TimeOnly? starts)
    {
        lock (gate)
        {
            if (known.Find(day => day.Key == key && ReferenceEquals(day.Result, result)) is { Chart: { } drawn })
                return drawn;
        }
        var chart = DayChart.Of(result, "The day on this battery", starts);
        lock (gate)
        {
            known.RemoveAll(day => day.Key == key);
            known.Add((key, result, chart));
            if (known.Count > Most)
                known.RemoveAt(0);
        }
        return chart;
    }
}
