using System.Globalization;
using System.Text.RegularExpressions;

namespace RigScenarios.Notebooks.Parameters;

/// <summary>
/// The comment behind a parameter: <c>// what it is, unit, low to high</c> for a number, <c>// what it is, one of a | b | c</c>
/// for a text, <c>// what it is, a scenario file</c>, <c>// what it is, a build of scenario</c> (or a day, or a kind of part) for
/// a text that names one, <c>// what it is, days of scenario</c> for a day or all of them, <c>// what was moved, places of
/// build</c> for a text that says where things of a build sit. Unit and range may be missing.
/// </summary>
internal sealed partial record ParameterComment(string Label, string Unit, double? Minimum, double? Maximum,
    IReadOnlyList<string> Choices)
{
    private ParameterKind? NamedKind { get; init; }

    private string Of { get; init; } = "";

    private string PartKind { get; init; } = "";

    private bool TakesAll { get; init; }

    public static ParameterComment Read(string comment, ParameterKind kind)
    {
        var parts = comment.Split(", ", StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).ToList();
        var (minimum, maximum, choices) = ((double?)null, (double?)null, Array.Empty<string>());
        if (parts.Count > 1 && Range().Match(parts[^1]) is { Success: true } range)
        {
            (minimum, maximum) = (Number(range.Groups["low"].Value), Number(range.Groups["high"].Value));
            parts.RemoveAt(parts.Count - 1);
        }
        else if (parts.FindIndex(part => part.StartsWith("one of ", StringComparison.Ordinal)) is > 0 and var index)
        {
            choices = string.Join(", ", parts.Skip(index))["one of ".Length..].Split('|', StringSplitOptions.TrimEntries);
            parts.RemoveRange(index, parts.Count - index);
        }
        else if (kind == ParameterKind.Text && parts.Count > 1 && Named().Match(parts[^1]) is { Success: true } named)
        {
            var what = named.Groups["what"].Value;
            var several = named.Groups["several"].Value;
            ParameterKind? namedKind = several switch
            {
                "places" => ParameterKind.Places,
                "days" => ParameterKind.Day,
                _ => Single(what),
            };
            return new ParameterComment(string.Join(", ", parts.SkipLast(1)), "", null, null, [])
            {
                NamedKind = namedKind, Of = named.Groups["of"].Value, PartKind = namedKind == ParameterKind.Part ? what : "",
                TakesAll = several == "days",
            };
        }

        var unit = "";
        if (kind is ParameterKind.Number or ParameterKind.WholeNumber && parts.Count > 1)
        {
            unit = parts[^1];
            parts.RemoveAt(parts.Count - 1);
        }

        return new ParameterComment(string.Join(", ", parts), unit, minimum, maximum, choices);
    }

    public NotebookParameter Apply(NotebookParameter parameter) => parameter with
    {
        Label = Label.Length > 0 ? Label : parameter.Name,
        Kind = NamedKind ?? parameter.Kind,
        Of = Of,
        PartKind = PartKind,
        TakesAll = TakesAll,
        Unit = Unit,
        Minimum = Minimum,
        Maximum = Maximum,
        Choices = Choices,
    };

    private static ParameterKind Single(string what) => what switch
    {
        "" => ParameterKind.ScenarioFile,
        "build" => ParameterKind.Build,
        "day" => ParameterKind.Day,
        _ => ParameterKind.Part,
    };

    private static double Number(string text) => double.Parse(text.Replace('−', '-'), CultureInfo.InvariantCulture);

    [GeneratedRegex(@"^(an? (scenario file|(?<what>[a-z-]+) of (?<of>\w+))|(?<several>places|days) of (?<of>\w+))$",
        RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Named();

    [GeneratedRegex(@"^(?<low>[-−]?\d+(\.\d+)?)\s+to\s+(?<high>[-−]?\d+(\.\d+)?)$", RegexOptions.ExplicitCapture,
        matchTimeoutMilliseconds: 1000)]
    private static partial Regex Range();
}
