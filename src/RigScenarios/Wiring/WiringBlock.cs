using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Wiring;

/// <summary>A stretch of time in which every device keeps one state.</summary>
/// <remarks>The length is checked when it is set; one that is not above 0 throws an
/// <see cref="ArgumentOutOfRangeException"/>.</remarks>
public sealed record WiringBlock
{
    /// <param name="length">How long it lasts; above 0.</param>
    /// <param name="states">The state of each device by its name; one that isn't named is off.</param>
    public WiringBlock(Duration length, OrderedMap<string> states)
    {
        Length = length;
        States = states;
    }

    /// <summary>How long it lasts; above 0.</summary>
    public Duration Length
    {
        get;
        init
        {
            Require.Positive(value.Seconds, "s");
            field = value;
        }
    }

    /// <summary>The state of each device by its name; one that isn't named is off.</summary>
    public OrderedMap<string> States { get; init; }
}
