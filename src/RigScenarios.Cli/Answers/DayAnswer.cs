using RigScenarios.Answers;
using RigScenarios.Simulation;

namespace RigScenarios.Cli.Answers;

/// <summary>The answer for one build with the least kit, where somebody asked for that.</summary>
/// <param name="Answer">The answer.</param>
/// <param name="Wish">What shall be left over in the least kit.</param>
/// <param name="Least">The least kit; null if nobody asked.</param>
internal sealed record DayAnswer(RigAnswer Answer, KitWish Wish, LeastKitResult? Least);
