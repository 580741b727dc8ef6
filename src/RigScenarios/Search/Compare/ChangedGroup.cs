namespace RigScenarios.Search.Compare;

/// <summary>What kind of change a group is: it says which entries of a build go with it.</summary>
internal enum ChangeKind
{
    /// <summary>The battery and its state.</summary>
    Battery,

    /// <summary>Plate, regulators, splitters, power cables, and what feeds the devices that both rigs have.</summary>
    Wiring,

    /// <summary>Devices.</summary>
    Devices,

    /// <summary>Everything else that is carried.</summary>
    Carried,

    /// <summary>Where things sit, and how the rig is carried.</summary>
    Places,

    /// <summary>The days, the air, batteries in turn, chargers, journeys.</summary>
    Days,
}

/// <summary>Changes from one rig to another that are made together.</summary>
/// <param name="Kind">Their kind.</param>
/// <param name="Things">The things by their names in the kit; of places head and tripod where the stance changes, of days
/// none.</param>
/// <param name="Name">The group in words.</param>
internal sealed record ChangedGroup(ChangeKind Kind, IReadOnlyList<string> Things, string Name);
