namespace RigScenarios.Batteries.Batch;

/// <summary>How many wells the packs have: known when the kernel is compiled, so that one well pays nothing for the
/// second.</summary>
internal interface IWells
{
    /// <summary>Whether there is a far well.</summary>
    static abstract bool HasFar { get; }

    /// <summary>What the correction of a step may make of the temperature, K.</summary>
    static abstract double KelvinTolerance { get; }
}

/// <summary>All of the charge is near.</summary>
internal readonly struct OneWell : IWells
{
    public static bool HasFar => false;

    public static double KelvinTolerance => 0.003;
}

/// <summary>A near well and a far one.</summary>
internal readonly struct TwoWells : IWells
{
    public static bool HasFar => true;

    // The exchange of the wells hangs on the temperature four times as steeply as a resistance does.
    public static double KelvinTolerance => 0.0006;
}
