using RigScenarios.Cells;

namespace RigScenarios.Batteries;

/// <summary>A value that was assumed: by the model, because the battery's data did not give it, or by whoever described a
/// part.</summary>
/// <param name="Field">Where the value stands: the battery's key in files, such as "heat-capacity", which replaces the assumption
/// when it
/// is written there; or the path of a part's field that is marked as assumed, such as "parts.own-monitor.power.standby".</param>
/// <param name="Name">What it is, in words.</param>
/// <param name="Value">The value used, with its unit.</param>
/// <param name="Why">How it was arrived at.</param>
/// <param name="Source">Where it comes from.</param>
public sealed record AssumedValue(string Field, string Name, string Value, string Why, Citation Source)
{
    /// <summary>The ends of what is usual, as they would stand in a file; null where whoever assumed it does not know
    /// them.</summary>
    public UsualRange? Usual { get; init; }
}

/// <summary>The ends of what is usual for a value.</summary>
/// <param name="Least">The lower end, as it would stand in a file.</param>
/// <param name="Most">The upper end, as it would stand in a file.</param>
public sealed record UsualRange(string Least, string Most);

/// <summary>A pack that was made from a battery's data, with all that had to be assumed.</summary>
/// <param name="Pack">The pack.</param>
/// <param name="Assumed">Each default that was used; empty where the data gave everything.</param>
public sealed record PackAssumptions(Pack Pack, IReadOnlyList<AssumedValue> Assumed);
