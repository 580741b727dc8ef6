namespace RigScenarios.Cells;

/// <summary>How well a figure is known to come from the source that is named beside it.</summary>
public enum Standing
{
    /// <summary>Read in the source itself.</summary>
    ReadInSource,

    /// <summary>Read in another work that names the source.</summary>
    SecondHand,

    /// <summary>Computed by this project from figures of the source.</summary>
    Computed,

    /// <summary>From memory; not looked up.</summary>
    FromMemory,

    /// <summary>What the trade usually does; there is no source.</summary>
    CommonPractice,
}

/// <summary>Where a figure comes from.</summary>
/// <param name="Authors">Authors, as the source gives them; empty where there are none.</param>
/// <param name="Title">Title of the work, or what the fact is; empty for a data set, which its authors, year and identifier
/// name.</param>
/// <param name="Year">Year of publication; null where there is none.</param>
/// <param name="Where">Journal and pages, address, table or equation.</param>
/// <param name="Standing">How the figure was taken from the source.</param>
public sealed record Citation(string Authors, string Title, int? Year, string Where, Standing Standing)
{
    /// <summary>A fact of the trade for which no source is known.</summary>
    public static Citation CommonPractice(string what) => new("", what, null, "", Standing.CommonPractice);

    /// <summary>A value that was not looked up.</summary>
    public static Citation FromMemory(string what) => new("", what, null, "", Standing.FromMemory);

    /// <summary>The standing in words: "read in the source", "common practice, no source", …</summary>
    public string StandingInWords => Standing switch
    {
        Standing.ReadInSource => "read in the source",
        Standing.SecondHand => "second-hand",
        Standing.Computed => "computed from the source",
        Standing.FromMemory => "from memory",
        _ => "common practice, no source",
    };

    /// <summary>The citation on one line, its standing in brackets at the end.</summary>
    public override string ToString()
    {
        var parts = new List<string>(4);
        if (Authors.Length > 0)
            parts.Add(Authors);
        if (Title.Length > 0)
            parts.Add(Authors.Length > 0 ? $"\"{Title}\"" : Title);
        if (Year is { } year)
            parts.Add(year.ToString());
        if (Where.Length > 0)
            parts.Add(Where);
        return $"{string.Join(", ", parts)} [{StandingInWords}]";
    }
}
