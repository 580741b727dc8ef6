using RigScenarios.Balance;
using RigScenarios.Batteries;
using RigScenarios.Cells;
using UnitsNet;

namespace RigScenarios.Answers;

/// <summary>From one build of a scenario to another, in steps and minutes.</summary>
/// <param name="From">The build that is changed.</param>
/// <param name="To">The build that it becomes.</param>
/// <param name="Change">What comes off, goes on, moves.</param>
/// <param name="Time">With <see cref="Usual"/> times for a step.</param>
/// <param name="CameraPlateShift">How far the camera plate moves on the head; null unless both stand on one.</param>
public sealed record StanceSteps(BuildBalance From, BuildBalance To, StanceChange Change, Duration Time, Length? CameraPlateShift)
{
    /// <summary>Times for a step where nobody measured them (common practice, no source).</summary>
    public static StepTimes Usual { get; } = new(Duration.FromSeconds(60), Duration.FromSeconds(120), Duration.FromSeconds(60));

    /// <summary>What <see cref="Usual"/> says, for the answer.</summary>
    public static AssumedValue UsualTimes { get; } = new("step times", "times for a step",
        "1 min to take off, 2 min to put on, 1 min to move", "not given",
        Citation.CommonPractice("somebody who knows the rig, cables undone and done again; your own hands may need more"));

    /// <summary>The steps from one build to another.</summary>
    public static StanceSteps Between(BuildBalance from, BuildBalance to)
    {
        ArgumentNullException.ThrowIfNull(from);
        ArgumentNullException.ThrowIfNull(to);
        var change = StanceChange.Between(from.Rig.Placed, to.Rig.Placed);
        Length? shift = from.Best is { } before && to.Best is { } after ? after.CameraPlate - before.CameraPlate : null;
        return new(from, to, change, change.Time(Usual), shift);
    }

    /// <summary>All changes between builds of different stances, in the order of the scenario.</summary>
    public static IReadOnlyList<StanceSteps> All(IReadOnlyList<BuildBalance> builds)
    {
        ArgumentNullException.ThrowIfNull(builds);
        return [.. builds.SelectMany((from, i) => builds.Skip(i + 1).Where(to => to.Rig.Build.Stance != from.Rig.Build.Stance)
            .Select(to => Between(from, to)))];
    }
}
