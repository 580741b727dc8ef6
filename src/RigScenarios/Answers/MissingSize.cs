using RigScenarios.Balance;
using RigScenarios.Batteries;
using RigScenarios.Cells;
using RigScenarios.Parts;
using RigScenarios.Scenarios;
using UnitsNet;

namespace RigScenarios.Answers;

/// <summary>A size without which nobody can say whether a rig balances.</summary>
/// <param name="Thing">The thing's name in the kit.</param>
/// <param name="Path">The field that would give it.</param>
/// <param name="Question">What is to be measured, as a question: "How far does the lens stick out?"</param>
public sealed record MissingSize(string Thing, string Path, string Question)
{
    /// <summary>The question with its field.</summary>
    public string Words => $"{Question} Its size is not given ({Path}).";

    internal static IReadOnlyList<MissingSize> Of(BuildInPlace rig, HeadBalance? present, Scenario scenario) =>
        [.. UnknownReach.Needed(UnknownReach.On(rig), Held(rig, present)).Select(thing => new MissingSize(
            thing.Thing, PathOf(thing.Thing, scenario), Asked(thing.Kind, LimitSentences.Element(thing.Thing))))];

    /// <summary>What is taken as a point: small things for every question, the others for tripod and joints.</summary>
    internal static IEnumerable<AssumedValue> Points(BuildInPlace rig, HeadBalance? present, Scenario scenario)
    {
        var all = UnknownReach.On(rig);
        var needed = UnknownReach.Needed(all, Held(rig, present));
        return all.Select(thing => new AssumedValue(
            PathOf(thing.Thing, scenario), $"{rig.Things[thing.Thing].Name}, size", "a point where it is mounted",
            needed.Contains(thing) ? "no size given: no verdict on balance; tripod and joints take it as a point"
                : $"no size given; its weight acts at most {thing.AtMost.Millimeters:0} mm further out, which is held",
            Citation.CommonPractice("a box four times as long as wide, of 0.3 kg a litre")));
    }

    // On a head its friction at rest, less what is pulled with already; elsewhere the centre is not known any better.
    private static Torque Held(BuildInPlace rig, HeadBalance? present) => present is { } head
        ? head.TiltMargin.NewtonMeters > 0 ? head.TiltMargin : head.Head.Friction
        : Torque.FromNewtonMeters(rig.Placed.MassProperties.Mass.Kilograms * StandardGravity.MetresPerSecondSquared
            * rig.Placed.MassProperties.CentreUncertainty.X.Meters);

    private static string PathOf(string thing, Scenario scenario) => $"parts.{scenario.Kit[thing].Part}.size";

    private static string Asked(PartKind kind, string name) => kind switch
    {
        PartKind.Lens or PartKind.LensAdapter => $"How far does the {name} stick out?",
        PartKind.Battery => $"How far does the {name} reach behind its plate?",
        PartKind.Body => $"How long, wide and high is the {name}?",
        _ => $"How far does the {name} reach?",
    };
}
