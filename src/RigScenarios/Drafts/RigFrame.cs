using System.Diagnostics.CodeAnalysis;
using RigScenarios.Files.Formats;
using RigScenarios.Parts;
using RigScenarios.Scenarios;

namespace RigScenarios.Drafts;

/// <summary>What stands around a rig while it is described.</summary>
/// <param name="Before">The scenario of the file that is open; null for a new one.</param>
/// <param name="Library">The parts to choose from.</param>
/// <param name="Build">The build's short name.</param>
/// <param name="Day">The day's short name.</param>
public sealed record RigFrame(Scenario? Before, OrderedMap<Part> Library, string Build, string Day)
{
    /// <summary>The day on which it is asked: a battery's age that names no day of its own goes until then. Null: such an age is
    /// not known.</summary>
    public DateOnly? Today { get; init; }

    /// <summary>The short names in a new scenario.</summary>
    public const string NewBuild = "rig";

    /// <inheritdoc cref="NewBuild"/>
    public const string NewDay = "day";

    /// <summary>The frame of a new scenario.</summary>
    public static RigFrame New(OrderedMap<Part> library) => new(null, library, NewBuild, NewDay);

    /// <summary>The frame of a new scenario whose build and day have names of their own.</summary>
    /// <param name="library">The parts to choose from.</param>
    /// <param name="build">The build's short name; the standard one where this is none that a file takes.</param>
    /// <param name="day">The day's short name, likewise.</param>
    public static RigFrame New(OrderedMap<Part> library, string? build, string? day) => new(null, library,
        IsName(build) ? build : NewBuild, IsName(day) ? day : NewDay);

    /// <summary>The path of a field inside the build.</summary>
    internal string InBuild(string field) => $"builds.{Build}.{field}";

    /// <summary>The path of a field inside the day.</summary>
    internal string InDay(string field) => $"days.{Day}.{field}";

    private static bool IsName([NotNullWhen(true)] string? word) => word is not null && MapFormat<Part>.IsName(word);
}
