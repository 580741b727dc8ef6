namespace RigScenarios.Balance;

/// <summary>What a rig does on an unlocked head when one lets go of it, the better before the worse.</summary>
public enum LetGo
{
    /// <summary>It stays: friction at rest holds what the counterbalance leaves over.</summary>
    Stays,

    /// <summary>It moves no faster than <see cref="FluidHead.GreatestCreep"/>: the lock is for when one steps back.</summary>
    Creeps,

    /// <summary>It moves faster, or no drag is known that would slow it.</summary>
    Falls,
}
