using RigScenarios.Answers;
using RigScenarios.Balance;
using RigScenarios.Parts;

namespace RigScenarios.Charts.Balance;

/// <summary>What a drawing of a rig shows beyond its parts. Immutable; everything can be left out.</summary>
public sealed record RigDrawingOptions
{
    /// <summary>Short name of the drawing, see <see cref="Drawing.Slug"/>.</summary>
    public string Slug { get; init; } = "rig-to-scale";

    /// <summary>The line above the drawing.</summary>
    public string Title { get; init; } = "The rig to scale";

    /// <summary>Words for people by the parts' names; a part without any is called by its name.</summary>
    public OrderedMap<string> Names { get; init; } = OrderedMap<string>.Empty;

    /// <summary>The rig on its head: draws the plate's travel, where the head stands under the rig, and the tilt axis.</summary>
    public HeadBalance? Head { get; init; }

    /// <summary>The rig on the shoulder: draws where pad and hands carry, and how much.</summary>
    public ShoulderBalance? Shoulder { get; init; }

    /// <summary>Parts that a reader may move, with the range of their offset along their carrier's x axis. The offset at present
    /// may lie outside.</summary>
    public OrderedMap<LengthRange> Moveable { get; init; } = OrderedMap<LengthRange>.Empty;

    /// <summary>Whether only the parts are shown, and nothing that is computed of them together: neither mass nor centre of
    /// gravity, in the drawing or in its words.</summary>
    public bool OnlyParts { get; init; }

    /// <summary>The options for a balanced build of a scenario: the parts' own names, what carries it, and all that slides can be
    /// moved.</summary>
    /// <param name="balance">The balance of the build.</param>
    public static RigDrawingOptions Of(BuildBalance balance)
    {
        ArgumentNullException.ThrowIfNull(balance);
        return new()
        {
            Names = new(balance.Rig.Things.Select(thing => KeyValuePair.Create(thing.Key, thing.Value.Name))),
            Head = balance.Present,
            Shoulder = balance.Shoulder,
            Moveable = new(balance.Rig.Moveable),
        };
    }

    /// <summary>The options for a build of which nothing computed is to be seen: its parts where they sit, and nothing that can
    /// be moved.</summary>
    /// <param name="balance">The balance of the build.</param>
    public static RigDrawingOptions Blank(BuildBalance balance) =>
        Of(balance) with { Head = null, Shoulder = null, Moveable = OrderedMap<LengthRange>.Empty, OnlyParts = true };

    internal string NameOf(string part) => Names.TryGetValue(part, out var words) ? words : part;
}
