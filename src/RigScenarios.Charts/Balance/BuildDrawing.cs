using RigScenarios.Answers;
using RigScenarios.Parts;

namespace RigScenarios.Charts.Balance;

/// <summary>The drawing of a scenario's build: its things to scale, its head or shoulder, what slides ready to be
/// moved.</summary>
public static class BuildDrawing
{
    /// <summary>The drawing.</summary>
    /// <param name="balance">The build.</param>
    /// <param name="title">The line above it; null for the build's own title.</param>
    public static Drawing Of(BuildBalance balance, string? title = null)
    {
        ArgumentNullException.ThrowIfNull(balance);
        return RigDrawing.Of(balance.Rig.Placed, RigDrawingOptions.Of(balance) with
        {
            Slug = $"rig-{Figure.SlugOf(balance.Name)}",
            Title = title ?? $"{balance.Rig.Build.Title ?? balance.Name}, to scale",
            Names = Names(balance),
        });
    }

    /// <summary>The names of things for people: those of the kit, with spaces.</summary>
    public static OrderedMap<string> Names(BuildBalance balance)
    {
        ArgumentNullException.ThrowIfNull(balance);
        return new(balance.Rig.Things.Keys.Select(name => KeyValuePair.Create(name, name.Replace('-', ' '))));
    }
}
