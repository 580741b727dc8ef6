using RigScenarios.Days;
using RigScenarios.Simulation;

namespace RigScenarios.Cli.Answers;

/// <summary>How the days go for one build.</summary>
/// <param name="BuildName">The build's short name.</param>
/// <param name="BuildTitle">Its name for people.</param>
/// <param name="DayNames">The days' short names, in their order.</param>
/// <param name="Plan">The days with batteries, chargers and swaps.</param>
/// <param name="Result">How they go.</param>
/// <param name="NotPlanned">What was taken because the file doesn't plan it, in sentences.</param>
/// <param name="Wish">What shall be left over in the least kit.</param>
/// <param name="Least">The least kit; null if nobody asked.</param>
internal sealed record DayAnswer(
    string BuildName, string BuildTitle, IReadOnlyList<string> DayNames, DayPlan Plan, SimulationResult Result, IReadOnlyList<string> NotPlanned, KitWish Wish, LeastKitResult? Least)
{
    /// <summary>A day's name for people.</summary>
    public string DayTitle(int number) => Plan.Days[number - 1].Title ?? DayNames[number - 1];

    /// <summary>A block's name for people.</summary>
    public string BlockTitle(int day, string block) => Plan.Days[day - 1].Blocks.TryGetValue(block, out var found) ? found.Title ?? block : block;
}
