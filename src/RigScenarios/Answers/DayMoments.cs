using RigScenarios.Days;
using RigScenarios.Simulation;

namespace RigScenarios.Answers;

/// <summary>Where in the day a device went down, in words.</summary>
public static class DayMoments
{
    /// <summary>The block in which a device went down, and the take if the camera rolled: <c>take 4 of "Boats
    /// leaving"</c>.</summary>
    /// <param name="down">When it was down.</param>
    /// <param name="result">How the days went.</param>
    /// <param name="plan">The plan of the days.</param>
    public static string Of(DownTime down, SimulationResult result, DayPlan plan)
    {
        ArgumentNullException.ThrowIfNull(down);
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(plan);
        var block = plan.Days[down.Day - 1].Blocks[down.Block];
        var title = block.Title ?? down.Block;
        if (!down.InTake)
            return $"\"{title}\"";
        if (block.Cycle is not { } cycle)
            return $"\"{title}\" while the camera rolls";
        var begin = result.Blocks.First(span => span.Day == down.Day && span.Block == down.Block).Start.Seconds;
        // A stop at the last moment of a take belongs to it.
        var take = (int)Math.Floor((down.Start.Seconds - begin - 1e-6) / (cycle.Take.Seconds + cycle.Reset.Seconds)) + 1;
        return take > 0 ? $"take {take} of \"{title}\"" : $"\"{title}\" while the camera rolls";
    }
}
