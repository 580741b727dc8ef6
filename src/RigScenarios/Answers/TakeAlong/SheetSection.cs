namespace RigScenarios.Answers.TakeAlong;

/// <summary>How a section of a sheet is set.</summary>
public enum SheetForm
{
    /// <summary>A table.</summary>
    Table,

    /// <summary>Sentences, one below the other.</summary>
    Sentences,

    /// <summary>Sentences with a box to tick.</summary>
    Checks,

    /// <summary>Questions with room to write beside each.</summary>
    Blanks,
}

/// <summary>A section of a sheet that is taken along. Every cell is finished text.</summary>
/// <param name="Title">Its heading.</param>
/// <param name="Form">How it is set.</param>
/// <param name="Rows">Its rows, what matters most first: where the page is full the last go first. One cell each, but for a
/// table.</param>
public sealed record SheetSection(string Title, SheetForm Form, IReadOnlyList<IReadOnlyList<string>> Rows)
{
    /// <summary>Titles of the columns of a table; of blanks that of the room to write in, where it is not for an
    /// estimate.</summary>
    public IReadOnlyList<string> Columns { get; init; } = [];

    /// <summary>Small print below it, or empty.</summary>
    public string Note { get; init; } = "";

    /// <summary>Whether it runs over the whole width, below the columns.</summary>
    public bool IsWide { get; init; }

    /// <summary>The order in which sections lose rows where the page is full: the smallest first; null where nothing of it may
    /// go.
    /// </summary>
    public int? GoesAs { get; init; }

    /// <summary>The number of rows that always stay.</summary>
    public int Keeps { get; init; } = 1;

    /// <summary>What its rows are, in the plural: "places".</summary>
    public string Things { get; init; } = "lines";
}
