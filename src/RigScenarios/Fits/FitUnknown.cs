using System.Runtime.InteropServices;

namespace RigScenarios.Fits;

/// <summary>What kind of thing a fit finds.</summary>
public enum UnknownKind
{
    /// <summary>ln aQ: capacity over that of the label.</summary>
    Capacity,

    /// <summary>ln aR: resistance over that of the pack as new.</summary>
    Resistance,

    /// <summary>ℓ: draw of a device, or of all, over what was given.</summary>
    Load,

    /// <summary>ΔT: by how much the air was warmer than stated, K.</summary>
    AmbientOffset,

    /// <summary>γ: logarithm of the gain of a log's current sensor.</summary>
    CurrentGain,

    /// <summary>ζ: charge at the start of a log less the stated one.</summary>
    StartCharge,

    /// <summary>υ: error of the open-circuit table, V of one group, the same in all logs.</summary>
    OpenCircuitOffset,
}

/// <summary>One unknown of a fit.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Of">The device or the log that it belongs to; null where there is one for all.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct FitUnknown(UnknownKind Kind, string? Of = null)
{
    /// <summary>Its short name: aQ, aR, load, load:camera, ambient, gain:log, start:log, open-circuit.</summary>
    public string Name => Kind switch
    {
        UnknownKind.Capacity => "aQ",
        UnknownKind.Resistance => "aR",
        UnknownKind.Load => With("load"),
        UnknownKind.AmbientOffset => "ambient",
        UnknownKind.CurrentGain => With("gain"),
        UnknownKind.StartCharge => With("start"),
        _ => "open-circuit",
    };

    /// <summary>Whether it is of interest itself, and not only an error of a log that has to be allowed for.</summary>
    public bool IsMain => Kind < UnknownKind.CurrentGain;

    /// <summary>Whether it is a natural logarithm, so that its exponential is what people ask for.</summary>
    public bool IsLogarithm => Kind is UnknownKind.Capacity or UnknownKind.Resistance or UnknownKind.Load
        or UnknownKind.CurrentGain;

    private string With(string name) => Of is null ? name : $"{name}:{Of}";
}
