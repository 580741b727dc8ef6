namespace RigScenarios.Files.Formats;

/// <summary>What a form asks for, without its values: enough to tell a writer what belongs at a place.</summary>
/// <param name="About">What the value is; empty where the field around it says it all.</param>
/// <param name="Fields">The fields of a record; none for anything else.</param>
/// <param name="Each">What stands behind each name of a map or in each place of a list; null for anything else.</param>
/// <param name="IsList">Whether it is a list.</param>
/// <param name="Accepted">What is accepted, with an example.</param>
internal sealed record FormatOutline(string About, IReadOnlyList<FieldOutline> Fields, FormatOutline? Each, bool IsList,
    string Accepted)
{
    /// <summary>A plain value: nothing stands below it.</summary>
    public static FormatOutline Plain { get; } = new("", [], null, false, "");
}

/// <summary>What one field asks for.</summary>
/// <param name="Key">Its key.</param>
/// <param name="About">What it says.</param>
/// <param name="Required">Whether a file without it is refused.</param>
/// <param name="Value">What stands behind the key.</param>
internal sealed record FieldOutline(string Key, string About, bool Required, FormatOutline Value);
