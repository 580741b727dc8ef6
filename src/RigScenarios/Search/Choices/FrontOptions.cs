using UnitsNet;

namespace RigScenarios.Search.Choices;

/// <summary>How a front is searched.</summary>
public sealed record FrontOptions
{
    /// <summary>The time after which the search gives what it has; null searches until the front is complete. Kept as long as the
    /// model stops at once when it is told to.</summary>
    public Duration? TimeLimit { get; init; }

    /// <summary>Leaves out choices with a goal that is not known. Otherwise each of them is an entry, however many there
    /// are.</summary>
    public bool KnownOnly { get; init; }

    /// <summary>The most choices that an entry lists, itself among them; at least 1. At 1 nobody looks for equals.</summary>
    public int MostEquals { get; init; } = 20;

    /// <summary>How many choices are looked for and run at once, 1 to 8. A complete front is the same for any number.</summary>
    public int AtOnce { get; init; } = 2;

    /// <summary>Cancelled when what there is is enough: the search ends as at its time limit, and gives it.</summary>
    public CancellationToken Enough { get; init; }

    /// <summary>The clock of the time limit.</summary>
    public TimeProvider Clock { get; init; } = TimeProvider.System;

    internal static void Check(FrontOptions options)
    {
        if (options.TimeLimit is { } limit && !(limit.Seconds > 0))
            throw new ArgumentException($"The time limit is {limit.Seconds} s; accepted: more than zero, for example 60 s.",
                nameof(options));
        if (options.MostEquals < 1)
            throw new ArgumentException($"{nameof(MostEquals)} is {options.MostEquals}; accepted: 1 or more.", nameof(options));
        if (options.AtOnce is < 1 or > 8)
            throw new ArgumentException($"{nameof(AtOnce)} is {options.AtOnce}; accepted: 1 to 8.", nameof(options));
    }
}
