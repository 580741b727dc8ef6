using RigScenarios.Costs;
using RigScenarios.Numerics;
using RigScenarios.Parts;
using RigScenarios.Scenarios;

namespace RigScenarios.Answers.Exercises;

/// <summary>What could be made wrong on a rig; whether it then fails only a run can say.</summary>
internal static class CausesToTry
{
    /// <summary>What is behind the name of a spare thing in the kit.</summary>
    private const string Spare = "-in-the-bag";

    /// <summary>All ways, those of one group in an order of chance, the groups taking turns.</summary>
    /// <param name="sound">The rig as it is sound.</param>
    /// <param name="draws">Draws degrees and orders.</param>
    public static IReadOnlyList<CauseToTry> Of(RigAnswer sound, SeededSequence draws)
    {
        List<CauseToTry> all = [.. PowerCauses.Of(sound, draws), .. WiringCauses.Of(sound), .. BalanceCauses.Of(sound, draws)];
        var groups = draws.Shuffled(all.Where(cause => cause.MildFirst.Count > 0).GroupBy(cause => cause.Group)
            .Select(group => draws.Shuffled(group)));
        var longest = groups.Select(group => group.Count).DefaultIfEmpty(0).Max();
        var turns = Enumerable.Range(0, longest).SelectMany(turn => groups.Where(group => turn < group.Count)
            .Select(group => group[turn])).ToList();
        // Two exercises of three ask what something costs, where there is something to buy.
        if (draws.Below(3) > 0 && turns.Find(way => way.MildFirst[0].Repair is { Price: not null }) is { } bought)
        {
            turns.Remove(bought);
            turns.Insert(0, bought);
        }
        return turns;
    }

    /// <summary>
    /// Another part in the place of one, which stays in the bag: it costs nothing to put it back. The draw or the load of the
    /// others in the library is given by their order.
    /// </summary>
    public static PlantedCause Exchanged(RigAnswer sound, string name, (string Slot, CauseKind Kind) about, string other,
        string words, IReadOnlyList<string> hints)
    {
        var (part, spare) = (sound.Scenario.PartOf(name)!, SpareName(name));
        var was = sound.Scenario.Kit[name].Part;
        return new()
        {
            Slot = about.Slot, Kind = about.Kind, Words = words, Hints = hints,
            Settings = [new($"kit.{name}.part", other), new($"kit.{spare}", BatteryChanges.Group(("part", was)))],
            Repair = new($"Put the {part.Name} back on in its place; it is in the bag", [new($"kit.{name}.part", was)],
                ChangeEffort.FromKit, about.Slot),
        };
    }

    /// <summary>Another part in the place of one that has to be bought again.</summary>
    public static PlantedCause Replaced(RigAnswer sound, string name, (string Slot, CauseKind Kind) about, string other,
        string words, IReadOnlyList<string> hints)
    {
        var (part, item) = (sound.Scenario.PartOf(name)!, sound.Scenario.Kit[name]);
        return new()
        {
            Slot = about.Slot, Kind = about.Kind, Words = words, Hints = hints,
            Settings = [new($"kit.{name}.part", other)],
            Repair = new($"Take a {part.Name} for the {LimitSentences.Element(name)}", [new($"kit.{name}.part", item.Part)],
                ChangeEffort.Buy, about.Slot)
            {
                Price = NewThing.Of(sound.Scenario, name).Each is { } one ? one with { Amount = one.Amount * item.Count } : null,
            },
        };
    }

    /// <summary>
    /// Spare things of no use for every part that could have been exchanged and was not, so that a spare one in the kit tells
    /// nothing.
    /// </summary>
    public static IReadOnlyList<FieldSetting> Decoys(RigAnswer sound, IReadOnlyList<CauseToTry> all,
        IReadOnlyList<PlantedCause> planted) =>
    [
        .. all.Where(way => planted.All(cause => cause.Slot != way.Slot))
            .Select(way => way.MildFirst[0].Settings)
            .Where(settings => settings is [_, { Path: var path }] && path.EndsWith(Spare, StringComparison.Ordinal))
            .Select(settings => new FieldSetting(settings[1].Path, BatteryChanges.Group(("part", settings[0].Value)))),
    ];

    /// <summary>Parts of the library of the kind of one, without it.</summary>
    public static IEnumerable<(string Id, Part Part)> Others(Scenario scenario, string name) =>
        scenario.PartIds.Where(id => id != scenario.Kit[name].Part).Select(id => (id, scenario.FindPart(id)!))
            .Where(other => other.Item2.Kind == scenario.PartOf(name)!.Kind);

    /// <summary>Whether a thing of the kit can get a spare one beside it.</summary>
    public static bool MayHaveSpare(Scenario scenario, string name) =>
        scenario.Kit[name].Count == 1 && !scenario.Kit.ContainsKey(SpareName(name));

    private static string SpareName(string name) => name + Spare;
}
