using RigScenarios.Days;
using RigScenarios.Parts;
using RigScenarios.Simulation;

namespace RigScenarios.Sweeps.Discharges;

/// <summary>A day as segments of constant states, one for each stretch: what a discharge through it is made of.</summary>
internal sealed class DayShape
{
    /// <summary>Length of each segment, s.</summary>
    public required double[] Lengths { get; init; }

    /// <summary>When each begins, s from the start of the day.</summary>
    public required double[] Starts { get; init; }

    /// <summary>Which of the rig's states holds in it.</summary>
    public required int[] States { get; init; }

    /// <summary>Short name of the block that it belongs to.</summary>
    public required string[] Blocks { get; init; }

    /// <summary>Whether the camera rolls.</summary>
    public required bool[] Rolling { get; init; }

    /// <summary>The blocks: when each is over, s from the start of the day, and its states.</summary>
    public required (double End, int[] States)[] WholeBlocks { get; init; }

    /// <summary>How many segments there are.</summary>
    public int Count => Lengths.Length;

    /// <summary>Length of the day, s.</summary>
    public required double Length { get; init; }

    /// <summary>The shape of a day.</summary>
    /// <param name="day">The day.</param>
    /// <param name="rig">The rig.</param>
    /// <param name="states">The states so far; new ones are added.</param>
    public static DayShape Of(ShootingDay day, SimulatedRig rig, List<OrderedMap<string>> states)
    {
        var stretches = DaySchedule.Stretches(day, 0, 0).ToList();
        var known = new Dictionary<(DayBlock, bool), int>();
        var numbers = stretches.Select(stretch => known.TryGetValue((stretch.Block, stretch.InReset), out var number) ? number
            : known[(stretch.Block, stretch.InReset)] = NumberOf(rig.StatesIn(stretch, false), states)).ToArray();
        var wholes = new List<(double, int[])>();
        var end = 0.0;
        foreach (var (_, block) in day.Blocks)
        {
            end += block.Length.Seconds;
            var begin = end - block.Length.Seconds;
            wholes.Add((end, [.. numbers.Where((_, i) => ReferenceEquals(stretches[i].Block, block)
                && stretches[i].End > begin && stretches[i].Start < end).Distinct()]));
        }
        return new()
        {
            Lengths = [.. stretches.Select(stretch => stretch.End - stretch.Start)],
            Starts = [.. stretches.Select(stretch => stretch.Start)],
            States = numbers,
            Blocks = [.. stretches.Select(stretch => stretch.Name)],
            Rolling = [.. stretches.Select(stretch => stretch.Rolling)],
            WholeBlocks = [.. wholes],
            Length = day.Length.Seconds,
        };
    }

    /// <summary>Whether two shapes are the same, of one list of states.</summary>
    /// <param name="other">The other one.</param>
    public bool SameAs(DayShape other) => Lengths.AsSpan().SequenceEqual(other.Lengths)
        && States.AsSpan().SequenceEqual(other.States) && Blocks.AsSpan().SequenceEqual(other.Blocks)
        && Rolling.AsSpan().SequenceEqual(other.Rolling)
        && WholeBlocks.Select(block => block.End).SequenceEqual(other.WholeBlocks.Select(block => block.End));

    private static int NumberOf(OrderedMap<string> now, List<OrderedMap<string>> states)
    {
        var number = states.FindIndex(one => one.Equals(now));
        if (number >= 0)
            return number;
        states.Add(now);
        return states.Count - 1;
    }
}
