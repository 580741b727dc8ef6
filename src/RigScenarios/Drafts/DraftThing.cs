using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Drafts;

/// <summary>What a thing is on the rig: the question of the form that it answers.</summary>
public enum RigRole
{
    /// <summary>The camera body.</summary>
    Camera,

    /// <summary>A lens, or an adapter behind it.</summary>
    Lens,

    /// <summary>The battery.</summary>
    Battery,

    /// <summary>The battery plate.</summary>
    Plate,

    /// <summary>A monitor or monitor-recorder.</summary>
    Monitor,

    /// <summary>A wireless video transmitter.</summary>
    Transmitter,

    /// <summary>A lens-drive motor.</summary>
    Motor,

    /// <summary>A controller or receiver of lens-drive motors.</summary>
    MotorController,

    /// <summary>A regulator, also one in a dummy battery.</summary>
    Regulator,

    /// <summary>The head that it sits on.</summary>
    Head,

    /// <summary>The legs that the head stands on.</summary>
    Legs,

    /// <summary>Whatever else is on the rig: cage, rods, handles, arms.</summary>
    Other,
}

/// <summary>A power cable that is not listed.</summary>
/// <param name="Gauge">The gauge of each of its two conductors.</param>
/// <param name="Length">From plug to plug, one way; 10 mm to 100 m.</param>
public sealed record OwnCable(WireGauge Gauge, Length Length)
{
    /// <summary>Whether both are there. While a form is filled in one may be no readable text; then the cable is not
    /// counted.</summary>
    internal bool IsWhole => Gauge != default && Length > Length.Zero;
}

/// <summary>One thing of a rig that is being drafted: a part that is listed, or one's own figures, and what feeds it.</summary>
public sealed record DraftThing
{
    /// <summary>What it is on the rig.</summary>
    public RigRole Role { get; init; }

    /// <summary>The id of a listed part; null where it isn't chosen yet, or is not listed.</summary>
    public string? Part { get; init; }

    /// <summary>The figures of its label, if it is not listed. They go before <see cref="Part"/>.</summary>
    public OwnFigures? Own { get; init; }

    /// <summary>
    /// What feeds it: <c>battery</c>, the plate, a splitter, or a regulator by its name on the rig or its part's id; null where
    /// the wiring is to be proposed.
    /// A name of something that isn't on the rig any more counts as null.
    /// </summary>
    public string? FedBy { get; init; }

    /// <summary>The outlet of what feeds it, by its name on that part; null for none in particular, as one that isn't
    /// there.</summary>
    public string? Outlet { get; init; }

    /// <summary>The power cable in front of it: a cable of the kit by its name there, or a listed one by its part's id; null
    /// where none is given.</summary>
    public string? Cable { get; init; }

    /// <summary>Length and gauge of a cable that is not listed. They go before <see cref="Cable"/>.</summary>
    public OwnCable? OwnCable { get; init; }

    /// <summary>Whether the rig is of no use without it.</summary>
    public bool Essential { get; init; }

    /// <summary>How many there are, 1 to 20.</summary>
    public int Count { get; init; } = 1;
}
