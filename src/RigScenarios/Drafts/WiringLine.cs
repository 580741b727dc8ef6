namespace RigScenarios.Drafts;

/// <summary>One line of the wiring: what feeds a thing, and why.</summary>
/// <param name="Thing">The thing, by its name on the rig.</param>
/// <param name="Title">Its name for people.</param>
/// <param name="FedBy">What feeds it: <c>battery</c>, the plate's, a splitter's or a regulator's name; empty if nothing
/// fits.</param>
/// <param name="FedByTitle">Its name for people.</param>
/// <param name="Proposed">Whether this is a proposal; otherwise somebody chose it.</param>
/// <param name="Why">The reason, in a sentence.</param>
/// <param name="Choices">What else could be chosen, as values of "fed-by" with names for people.</param>
public sealed record WiringLine(string Thing, string Title, string FedBy, string FedByTitle, bool Proposed, string Why,
    IReadOnlyList<WiringChoice> Choices)
{
    /// <summary>The part that it is, by its id.</summary>
    public required string Part { get; init; }

    /// <summary>Whether it is a device, and not something that gives power on.</summary>
    public required bool IsDevice { get; init; }

    /// <summary>The outlet that it is plugged into; null for none in particular.</summary>
    public string? Outlet { get; init; }

    /// <summary>The cable in front of it for people; empty where none is given.</summary>
    public string CableTitle { get; init; } = "";
}

/// <summary>A feed that can be chosen.</summary>
/// <param name="Value">The value of "fed-by". The id of a listed regulator puts that regulator on the rig.</param>
/// <param name="Title">Its name for people.</param>
public sealed record WiringChoice(string Value, string Title)
{
    /// <summary>Its named outlets.</summary>
    public IReadOnlyList<OutletChoice> Outlets { get; init; } = [];
}
