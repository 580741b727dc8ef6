using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Scenarios;

/// <summary>
/// A question of what to buy: which parts in which places of a build, what must hold, and what is wished for. It describes a
/// search; nothing of the scenario rests on it.
/// </summary>
public sealed record BestRig
{
    /// <summary>The build to start from, by its short name.</summary>
    public string Build { get; init; } = "";

    /// <summary>The days that it is for, by their short names; all of the scenario if empty.</summary>
    public IReadOnlyList<string> Days { get; init; } = [];

    /// <summary>The places that are filled anew, by names of their own.</summary>
    public OrderedMap<RigSlot> Slots { get; init; } = OrderedMap<RigSlot>.Empty;

    /// <summary>What must hold.</summary>
    public RigMusts Musts { get; init; } = new();

    /// <summary>What is wished for, each one a goal of its own; none is weighed against another.</summary>
    public IReadOnlyList<RigWish> Wishes { get; init; } = [RigWish.LeastCost, RigWish.LongestDay];

    /// <summary>Over which years, and with what money, to buy; null where the order of purchases is not asked.</summary>
    public UpgradeTerms? Upgrade { get; init; }

    /// <summary>The thing of the kit that a slot replaces: the one that it names, else the one of its own name.</summary>
    /// <param name="slot">The slot's name.</param>
    public string ReplacedBy(string slot) => Slots[slot].Replaces ?? slot;
}

/// <summary>What there is to spend on a rig, year by year.</summary>
public sealed record UpgradeTerms
{
    /// <summary>What is added to the savings at the start of each year, 0 or more.</summary>
    public Money BudgetAYear { get; init; }

    /// <summary>How many years, 1 to 20.</summary>
    public int Years { get; init; }
}

/// <summary>A place in a build with what may stand there. What the kit has there now is always a candidate.</summary>
public sealed record RigSlot
{
    /// <summary>The thing of the build that is replaced, by its name in the kit; null where the slot has that name.</summary>
    public string? Replaces { get; init; }

    /// <summary>Parts that may stand there, by their ids.</summary>
    public IReadOnlyList<string> Parts { get; init; } = [];

    /// <summary>Every part of the library of this kind may stand there; null for none but those that are named.</summary>
    public PartKind? Kind { get; init; }

    /// <summary>Things of the kit that may stand there, by their names.</summary>
    public IReadOnlyList<string> FromKit { get; init; } = [];

    /// <summary>Whether the build may do without it.</summary>
    public bool MayStayEmpty { get; init; }
}

/// <summary>What a rig must do to be worth a word. A figure that nobody knows holds nothing.</summary>
public sealed record RigMusts
{
    /// <summary>It lasts the days; null where that is not asked.</summary>
    public LastsMust? Lasts { get; init; }

    /// <summary>Its batteries may go on a passenger flight in the cabin; null where that is not asked.</summary>
    public FliesMust? Flies { get; init; }

    /// <summary>It balances on head, shoulder or hand.</summary>
    public bool Balances { get; init; }

    /// <summary>No limit of wiring, tripod and joints is passed.</summary>
    public bool Holds { get; init; }

    /// <summary>Whether <see cref="Holds"/> asks for tripod and joints too. A file always asks; where nobody said what the rig
    /// stands on, asking would leave no rig at all.</summary>
    public bool StandCounts { get; init; } = true;

    /// <summary>The most that it may cost; null for no bound.</summary>
    public Money? Budget { get; init; }

    /// <summary>The most that the rig may weigh, without head and tripod; null for no bound.</summary>
    public Mass? Mass { get; init; }

    /// <summary>Whether a verdict of "close" will do where "holds" is asked for.</summary>
    public bool CloseWillDo { get; init; }
}

/// <summary>That every essential device runs to the end of the days.</summary>
/// <param name="Air">The coldest air: the air of all days is moved so that its coldest point is this; null to leave it.</param>
/// <param name="Reserve">The part of all the energy that the batteries could have given which is left after the last block of
/// the tightest day; null for no such reserve.</param>
/// <param name="ReserveTime">How much longer it would run after that block; null for no such reserve.</param>
public sealed record LastsMust(Temperature? Air = null, Ratio? Reserve = null, Duration? ReserveTime = null);

/// <summary>How batteries may go in the cabin.</summary>
public enum FliesMust
{
    /// <summary>Without asking anybody.</summary>
    WithoutAsking,

    /// <summary>Also where the airline must approve beforehand.</summary>
    WithApproval,
}

/// <summary>A goal of a search.</summary>
public enum RigWish
{
    /// <summary>The least money.</summary>
    LeastCost,

    /// <summary>The least mass of the rig, without head and tripod.</summary>
    LeastMass,

    /// <summary>The longest time left after wrap of the tightest day.</summary>
    LongestDay,

    /// <summary>The most left, as a share, at the limit where least is left.</summary>
    LargestMargin,
}
