using System.Globalization;
using RigScenarios.Answers;
using RigScenarios.Files.Formats;

namespace RigScenarios.Notebooks.Parameters;

/// <summary>What values a parameter takes.</summary>
public enum ParameterKind
{
    /// <summary>A number.</summary>
    Number,

    /// <summary>A whole number.</summary>
    WholeNumber,

    /// <summary>A text, or one of a few words.</summary>
    Text,

    /// <summary>Yes or no, <c>true</c> or <c>false</c>.</summary>
    YesNo,

    /// <summary>A date, as 2026-02-14.</summary>
    Date,

    /// <summary>A scenario file.</summary>
    ScenarioFile,

    /// <summary>A build of a scenario.</summary>
    Build,

    /// <summary>A day of a scenario.</summary>
    Day,

    /// <summary>A part that a scenario can use, of one kind.</summary>
    Part,

    /// <summary>Things of a build that were moved along their mounts, as in "plate -160 mm; pad -150 mm"; empty for
    /// none.</summary>
    Places,
}

/// <summary>A parameter of a notebook: what the cell tagged <c>parameters</c> declares, and what its comment says of
/// it.</summary>
public sealed record NotebookParameter
{
    /// <summary>The variable's name.</summary>
    public required string Name { get; init; }

    /// <summary>What values it takes.</summary>
    public required ParameterKind Kind { get; init; }

    /// <summary>The value in the notebook, as a person would write it ("-8", "98 Wh", "true").</summary>
    public required string Default { get; init; }

    /// <summary>What it is, in plain words; the name where the notebook does not say.</summary>
    public required string Label { get; init; }

    /// <summary>The unit of a number, or empty.</summary>
    public string Unit { get; init; } = "";

    /// <summary>The lowest number taken, or null.</summary>
    public double? Minimum { get; init; }

    /// <summary>The highest number taken, or null.</summary>
    public double? Maximum { get; init; }

    /// <summary>The only texts taken, or empty where any text is.</summary>
    public IReadOnlyList<string> Choices { get; init; } = [];

    /// <summary>For a build, a day or a part: the parameter that names the scenario file; for places the one that names the
    /// build; otherwise empty.</summary>
    public string Of { get; init; } = "";

    /// <summary>For a part: its kind, as in parts files ("battery"); otherwise empty.</summary>
    public string PartKind { get; init; } = "";

    /// <summary>For a day: whether <see cref="AllDays"/> is taken too.</summary>
    public bool TakesAll { get; init; }

    /// <summary>The value that stands for all days, one after the other.</summary>
    public const string AllDays = "all";

    /// <summary>Whether it may be left empty: then the notebook takes what the chosen file says. Declared as <c>double?</c>,
    /// <c>int?</c> or <c>DateOnly?</c> with the value <c>null</c>.</summary>
    public bool IsOptional { get; init; }

    /// <summary>Suffix that marks a C# literal of the declared type ("m" for decimal), or empty.</summary>
    internal string LiteralSuffix { get; init; } = "";

    /// <summary>What is accepted, for messages and help: "°C, −30 to 45".</summary>
    public string Accepted
    {
        get
        {
            var range = (Minimum, Maximum) is ({ } low, { } high) ? Invariant($"{low} to {high}") : "";
            var what = Kind switch
            {
                ParameterKind.YesNo => "true or false",
                ParameterKind.Text when Choices.Count > 0 => "one of " + string.Join(" | ", Choices),
                ParameterKind.Text => "any text",
                ParameterKind.Date => "a date as year-month-day",
                ParameterKind.ScenarioFile => "a scenario file",
                ParameterKind.Build => "a build of the scenario",
                ParameterKind.Day => TakesAll ? $"a day of the scenario, or {AllDays}" : "a day of the scenario",
                ParameterKind.Places => MovedPlaces.Accepted,
                ParameterKind.Part => $"a {PartKind} that the scenario's files describe, by its id",
                ParameterKind.WholeNumber => "a whole number",
                _ => "a number",
            };
            return string.Join(", ", new[] { what + (Unit.Length > 0 ? $" in {Unit}" : ""),
                range, IsOptional ? "or empty for what the file says" : "" }.Where(part => part.Length > 0));
        }
    }

    /// <summary>Reads a value that a person gave: gives it in its plain form, or says what is wrong with it.</summary>
    internal (string? Value, string? Problem) Read(string given)
    {
        var text = given.Trim();
        if (IsOptional && text.Length == 0)
            return ("", null);
        // "-20 °C" for a parameter in °C says the same as "-20".
        if (Unit.Length > 0 && text.EndsWith(Unit, StringComparison.OrdinalIgnoreCase))
            text = text[..^Unit.Length].TrimEnd();
        switch (Kind)
        {
            case ParameterKind.YesNo:
                return text.ToUpperInvariant() switch
                {
                    "TRUE" or "YES" => ("true", null),
                    "FALSE" or "NO" => ("false", null),
                    _ => Refuse($"\"{given}\" is neither true nor false"),
                };
            case ParameterKind.Text:
                var choice = Choices.FirstOrDefault(c => c.Equals(given.Trim(), StringComparison.OrdinalIgnoreCase));
                return Choices.Count == 0 || choice is not null
                    ? (choice ?? given, null) : Refuse($"\"{given}\" is not one of the choices");
            case ParameterKind.Date:
                return DateOnly.TryParseExact(WrittenDigits.Plain(text), "yyyy-M-d", CultureInfo.InvariantCulture,
                    DateTimeStyles.None, out var date)
                    ? (date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture), null)
                    : Refuse($"\"{given}\" is no date");
            case ParameterKind.ScenarioFile or ParameterKind.Build or ParameterKind.Day or ParameterKind.Part
                or ParameterKind.Places:
                // Whether there is such a one is known only with the scenario at hand.
                return (text, null);
            default:
                return ReadNumber(given, WrittenDigits.Plain(text));
        }
    }

    /// <summary>A value, read before, as an object of the runtime: what the notebook's variable is set to;
    /// null where it was left empty.</summary>
    internal object? Typed(string value) => Kind switch
    {
        _ when IsOptional && value.Length == 0 => null,
        ParameterKind.Number => double.Parse(value, CultureInfo.InvariantCulture),
        ParameterKind.WholeNumber => long.Parse(value, CultureInfo.InvariantCulture),
        ParameterKind.YesNo => value == "true",
        ParameterKind.Date => DateOnly.ParseExact(value, "yyyy-MM-dd", CultureInfo.InvariantCulture),
        _ => value,
    };

    private (string? Value, string? Problem) ReadNumber(string given, string text)
    {
        if (!double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) || !double.IsFinite(number))
            return Refuse($"\"{given}\" is not a number{(Unit.Length > 0 ? " in " + Unit : "")}");
        if (Kind == ParameterKind.WholeNumber && (number != Math.Floor(number) || Math.Abs(number) > int.MaxValue))
            return Refuse($"\"{given}\" is not a whole number");
        if (number < Minimum || number > Maximum)
            return Refuse(Invariant($"{number} lies outside {Minimum} to {Maximum}{(Unit.Length > 0 ? " " + Unit : "")}"));
        return (number.ToString("R", CultureInfo.InvariantCulture), null);
    }

    /// <summary>Why a value is not taken, with what is accepted instead.</summary>
    internal (string? Value, string? Problem) Refuse(string why) =>
        (null, $"{Name}: {why}. Expected ({Label}): {Accepted}; for example {Name}={Example}.");

    private string Example => Kind == ParameterKind.Places && Default.Length == 0 ? "\"plate -160 mm\"" : Default.Contains(' ')
        ? $"\"{Default}\"" : Default;

    private static string Invariant(FormattableString text) => FormattableString.Invariant(text);
}
