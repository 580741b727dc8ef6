namespace RigScenarios.Batteries.Batch;

/// <summary>How many wells the packs have: known when the kernel is compiled, so that one well pays nothing for the
/// second.</summary>
internal interface IWells
{
    /// <summary>Whether there is a far well.</summary>
    static abstract bool HasFar { get; }
}

/// <summary>All of the charge is near.</summary>
internal readonly struct OneWell : IWells
{
    public static bool HasFar => false;
}

/// <summary>A near well and a far one.</summary>
internal readonly struct TwoWells : IWells
{
    public static bool HasFar => true;
}
