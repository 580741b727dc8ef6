namespace RigScenarios.Files;

/// <summary>A text as a field of comma-separated values (RFC 4180, 2 and 5 to 7).</summary>
internal static class CsvField
{
    /// <summary>In quotes only where it must be: with a comma, a quote or the end of a line in it.</summary>
    public static string Of(string text) => text.AsSpan().ContainsAny(",\"\r\n") ? Quoted(text) : text;

    /// <summary>In quotes.</summary>
    public static string Quoted(string text) => $"\"{text.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
}
