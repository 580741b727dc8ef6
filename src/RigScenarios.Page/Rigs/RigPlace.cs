using RigScenarios.Page.OwnFiles;
using RigScenarios.Scenarios;

namespace RigScenarios.Page.Rigs;

/// <summary>What a form changes: a build and a day of a scenario that is there, or of a new one.</summary>
/// <param name="File">The file as it was read; null for a new one.</param>
/// <param name="Before">What it says; null for a new one.</param>
/// <param name="Build">The build's short name.</param>
/// <param name="Day">The day's short name.</param>
internal sealed record RigPlace(RigText? File, Scenario? Before, string Build, string Day)
{
    /// <summary>The short names in a new scenario.</summary>
    public const string NewBuild = "rig";

    /// <inheritdoc cref="NewBuild"/>
    public const string NewDay = "day";
}
