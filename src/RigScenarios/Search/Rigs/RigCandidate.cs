using RigScenarios.Parts;
using RigScenarios.Scenarios;

namespace RigScenarios.Search.Rigs;

/// <summary>What may stand in a slot: what the kit has there now, a part, another thing of the kit, or nothing.</summary>
/// <param name="Name">A name that no other candidate of the slot has: <c>now</c>, a part's id, <c>kit NAME</c>, or
/// <c>none</c>.</param>
/// <param name="Title">For people: "Brick 98 Wh".</param>
/// <param name="Item">The thing as the kit would have it; null for nothing.</param>
/// <param name="Part">Its part; null for nothing.</param>
public sealed record RigCandidate(string Name, string Title, KitItem? Item, Part? Part)
{
    /// <summary>The name of what the kit has there now.</summary>
    public const string Now = "now";

    /// <summary>The name of nothing.</summary>
    public const string None = "none";

    /// <summary>Whether it is what the kit has there now.</summary>
    public bool IsNow => Name == Now;

    /// <summary>Whether it is nothing: the build does without.</summary>
    public bool IsEmpty => Item is null;

    /// <summary>The thing of the kit that it is, by its name there, where it comes from another place of the kit; null
    /// otherwise.</summary>
    public string? FromKit { get; init; }

    /// <summary>Whether it comes out of the library: it has no age then.</summary>
    public bool IsNew => !IsNow && !IsEmpty && FromKit is null;
}

/// <summary>A place in the build with its candidates.</summary>
/// <param name="Name">The slot's name.</param>
/// <param name="Replaces">The thing of the build, by its name in the kit.</param>
/// <param name="Candidates">What may stand there: first what the kit has there now.</param>
public sealed record RigPlace(string Name, string Replaces, IReadOnlyList<RigCandidate> Candidates)
{
    /// <summary>The candidates of a slot of a scenario, each once.</summary>
    /// <param name="scenario">The scenario.</param>
    /// <param name="name">The slot's name.</param>
    public static RigPlace Of(Scenario scenario, string name)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        var (slot, replaces) = (scenario.BestRig!.Slots[name], scenario.BestRig.ReplacedBy(name));
        var (now, part) = (scenario.Kit[replaces], scenario.PartOf(replaces)!);
        var ofKind = scenario.PartIds.Where(id => id != now.Part && scenario.FindPart(id)!.Kind == slot.Kind);
        return new(name, replaces,
        [
            new(RigCandidate.Now, part.Name, now, part),
            .. slot.Parts.Concat(ofKind).Distinct().Select(id => (Id: id, Part: scenario.FindPart(id)!))
                .Select(other => new RigCandidate(other.Id, other.Part.Name, New(scenario, now, other.Id), other.Part)),
            .. slot.FromKit.Distinct().Where(other => other != replaces)
                .Select(other => new RigCandidate($"kit {other}", $"{scenario.PartOf(other)!.Name} of the kit (\"{other}\")",
                    scenario.Kit[other], scenario.PartOf(other)) { FromKit = other }),
            .. slot.MayStayEmpty ? [new(RigCandidate.None, "nothing", null, null)] : Array.Empty<RigCandidate>(),
        ]);
    }

    /// <summary>What is new is had as what stands there now, but not owned: that would make it cost nothing.</summary>
    private static KitItem New(Scenario scenario, KitItem now, string id) => now with
    {
        Part = id, Had = (now.Had ?? scenario.Costs?.OthersAre) == Had.Rented ? Had.Rented : Had.Bought,
    };
}
