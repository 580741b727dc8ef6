using RigScenarios.Answers;
using RigScenarios.Days;
using RigScenarios.Simulation;
using UnitsNet;

namespace RigScenarios.Charts.Timeline;

/// <summary>A time in which essential devices were down, not for a planned swap: what follows on the other is one.</summary>
/// <param name="Letter">Its sign in the drawing.</param>
/// <param name="Start">Begin, from midnight of the first day.</param>
/// <param name="End">End.</param>
/// <param name="Downs">The down times in it, in order.</param>
internal sealed record Outage(string Letter, Duration Start, Duration End, IReadOnlyList<DownTime> Downs)
{
    /// <summary>All of a result, with letters in order.</summary>
    public static IReadOnlyList<Outage> Of(SimulationResult result)
    {
        var groups = new List<List<DownTime>>();
        foreach (var down in result.DownTimes.Where(down => !down.IsPlanned).OrderBy(down => down.Start.Seconds))
        {
            if (groups.Count > 0 && groups[^1].Max(other => other.End.Seconds) >= down.Start.Seconds - 1
                && groups[^1][0].Day == down.Day)
                groups[^1].Add(down);
            else
                groups.Add([down]);
        }
        return [.. groups.Select((group, i) => new Outage(LetterOf(i), group[0].Start,
            Duration.FromSeconds(group.Max(down => down.End.Seconds)), group))];
    }

    /// <summary>What is down and why, as the list under a day tells it.</summary>
    public string Words(SimulationResult result, DayPlan plan)
    {
        var devices = string.Join(", ", Downs.Select(down => result.Devices[down.Device].Title).Distinct());
        var causes = string.Join(", then ", Downs.Select(down => AnswerSentences.Because(down.Reason)).Distinct());
        return $"{Letter} {AnswerTimes.Clock(Start)} to {AnswerTimes.Clock(End)}, from "
            + $"{DayMoments.Of(Downs[0], result, plan)} on: {devices} down: {causes}";
    }

    private static string LetterOf(int index) =>
        index < 26 ? $"{(char)('A' + index)}" : $"{(char)('A' + (index / 26) - 1)}{(char)('A' + (index % 26))}";
}
