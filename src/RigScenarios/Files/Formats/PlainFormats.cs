using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Text.Json.Nodes;
using RigScenarios.Parts;
using RigScenarios.Scenarios;

namespace RigScenarios.Files.Formats;

/// <summary>The base of forms that are one piece of text in a file.</summary>
/// <typeparam name="T">What the text says.</typeparam>
public abstract class PlainFormat<T> : Format<T>, IAcceptedText
{
    /// <summary>What is accepted, with an example.</summary>
    public abstract string Accepted { get; }

    /// <inheritdoc/>
    public override bool TryRead(FileNode node, string path, ReadLog log, [MaybeNullWhen(false)] out T value)
    {
        if (node is TextNode text && TryParse(text.Text, out value))
            return true;
        value = default;
        log.Error(node.At, path, $"Found {node.Describe()}.", Accepted,
            node is TextNode { Text: var word } ? log.Nearest(word, Words) : null);
        return false;
    }

    /// <inheritdoc/>
    public override FileNode Write(T value) => new TextNode(Text(value), TextPlace.None);

    /// <summary>The words that are accepted, where only some are.</summary>
    protected virtual IEnumerable<string> Words => [];

    /// <summary>Reads the text.</summary>
    protected abstract bool TryParse(string text, [MaybeNullWhen(false)] out T value);

    /// <summary>Writes the value.</summary>
    protected abstract string Text(T value);
}

/// <summary>Free text. Characters that are no part of a text (see <see cref="Scenarios.ShownText"/>) are refused.</summary>
/// <param name="longest">The greatest number of characters.</param>
/// <param name="hasLines">Whether it may have line breaks and tabs.</param>
public sealed class TextFormat(int longest, bool hasLines = false) : PlainFormat<string>
{
    /// <inheritdoc/>
    public override string Accepted => $"text of 1 to {longest} characters"
        + (hasLines ? "" : " on one line");

    /// <inheritdoc/>
    public override JsonObject Schema() => new() { ["type"] = "string", ["minLength"] = 1, ["maxLength"] = longest };

    /// <inheritdoc/>
    protected override bool TryParse(string text, [MaybeNullWhen(false)] out string value)
    {
        value = text;
        return text.Length >= 1 && text.Length <= longest && ShownText.FirstUnseen(text, hasLines ? "\n\t" : "") < 0;
    }

    /// <inheritdoc/>
    protected override string Text(string value) => value;
}

/// <summary>One of a few words.</summary>
/// <typeparam name="T">The enumeration: <c>MotorController</c> stands in files as <c>motor-controller</c>.</typeparam>
public sealed class ChoiceFormat<T> : PlainFormat<T>
    where T : struct, Enum
{
    private static readonly Dictionary<string, T> Choices = Enum.GetValues<T>().ToDictionary(Word);

    /// <inheritdoc/>
    public override string Accepted => string.Join(", ", Choices.Keys);

    /// <inheritdoc/>
    protected override IEnumerable<string> Words => Choices.Keys;

    /// <summary>The word for a value, in files and messages.</summary>
    public static string Word(T value) =>
        string.Concat(value.ToString().Select((letter, index) => char.IsUpper(letter) ? (index > 0 ? "-" : "")
            + char.ToLowerInvariant(letter) : letter.ToString()));

    /// <inheritdoc/>
    public override JsonObject Schema() => new() { ["enum"] = new JsonArray([.. Choices.Keys.Select(word => (JsonNode)word)]) };

    /// <inheritdoc/>
    protected override bool TryParse(string text, [MaybeNullWhen(false)] out T value) => Choices.TryGetValue(text, out value);

    /// <inheritdoc/>
    protected override string Text(T value) => Word(value);
}

/// <summary>Yes or no.</summary>
public sealed class YesNoFormat : PlainFormat<bool>
{
    /// <inheritdoc/>
    public override string Accepted => "yes, no";

    /// <inheritdoc/>
    protected override IEnumerable<string> Words => ["yes", "no"];

    /// <inheritdoc/>
    public override JsonObject Schema() => new() { ["enum"] = new JsonArray("yes", "no", "true", "false", true, false) };

    /// <inheritdoc/>
    protected override bool TryParse(string text, out bool value)
    {
        value = text is "yes" or "true";
        return value || text is "no" or "false";
    }

    /// <inheritdoc/>
    protected override string Text(bool value) => value ? "yes" : "no";
}

/// <summary>A number without a unit, in a range.</summary>
/// <param name="low">The least accepted value.</param>
/// <param name="high">The greatest accepted value.</param>
public sealed class NumberFormat(double low, double high) : PlainFormat<double>
{
    /// <inheritdoc/>
    public override string Accepted => $"a plain number, {low} to {high}";

    /// <inheritdoc/>
    public override JsonObject Schema() => new() { ["type"] = "number", ["minimum"] = low, ["maximum"] = high };

    /// <inheritdoc/>
    public override IEnumerable<(string Path, string Text)> NumericFields(double value, string path) => [(path, Text(value))];

    /// <inheritdoc/>
    protected override bool TryParse(string text, out double value) =>
        double.TryParse(WrittenDigits.Plain(text),
            NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent,
            CultureInfo.InvariantCulture, out value)
        && value >= low && value <= high && (value == 0 || Math.Abs(value) >= QuantityText.Least);

    /// <inheritdoc/>
    protected override string Text(double value) => value.ToString("R", CultureInfo.InvariantCulture);
}

/// <summary>A whole number in a range.</summary>
/// <param name="low">The least accepted value.</param>
/// <param name="high">The greatest accepted value.</param>
public sealed class CountFormat(int low, int high) : PlainFormat<int>
{
    /// <inheritdoc/>
    public override string Accepted => $"a whole number, {low} to {high}";

    /// <inheritdoc/>
    public override JsonObject Schema() => new() { ["type"] = "integer", ["minimum"] = low, ["maximum"] = high };

    /// <inheritdoc/>
    public override IEnumerable<(string Path, string Text)> NumericFields(int value, string path) => [(path, Text(value))];

    /// <inheritdoc/>
    protected override bool TryParse(string text, out int value) =>
        int.TryParse(WrittenDigits.Plain(text), NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out value)
            && value >= low
            && value <= high;

    /// <inheritdoc/>
    protected override string Text(int value) => value.ToString(CultureInfo.InvariantCulture);
}

/// <summary>A time of day.</summary>
public sealed class ClockFormat : PlainFormat<TimeOnly>
{
    /// <inheritdoc/>
    public override string Accepted => "a time of day on the 24-hour clock in quotes, such as \"06:30\"";

    /// <inheritdoc/>
    public override JsonObject Schema() => new() { ["type"] = "string", ["pattern"] = "^([01]?[0-9]|2[0-3]):[0-5][0-9]$" };

    /// <inheritdoc/>
    protected override bool TryParse(string text, out TimeOnly value) =>
        TimeOnly.TryParseExact(WrittenDigits.Plain(text), ["H:mm", "HH:mm"], CultureInfo.InvariantCulture, DateTimeStyles.None,
            out value);

    /// <inheritdoc/>
    protected override string Text(TimeOnly value) => value.ToString("HH:mm", CultureInfo.InvariantCulture);
}

/// <summary>An amount of money with its currency.</summary>
public sealed class MoneyFormat : PlainFormat<Money>
{
    /// <inheritdoc/>
    public override string Accepted => "an amount with the currency's three letters (ISO 4217), such as \"2400 EUR\"";

    /// <inheritdoc/>
    public override JsonObject Schema() => new() { ["type"] = "string", ["pattern"] = @"^\d+(\.\d+)? ?[A-Z]{3}$" };

    /// <inheritdoc/>
    protected override bool TryParse(string text, out Money value) => Money.TryParse(WrittenDigits.Plain(text), out value);

    /// <inheritdoc/>
    protected override string Text(Money value) => value.ToString();
}

/// <summary>Values in a row.</summary>
/// <typeparam name="T">A value.</typeparam>
/// <param name="form">The form of each.</param>
/// <param name="most">The greatest number of values.</param>
/// <param name="least">The smallest number of values.</param>
public sealed class ListFormat<T>(Format<T> form, int most, int least = 0) : Format<IReadOnlyList<T>>, IAcceptedText
{
    /// <inheritdoc/>
    public string Accepted => least == 0 ? $"a list in square brackets, at most {most}"
        : $"a list in square brackets, {least} to {most}; or the field left out";

    /// <inheritdoc/>
    public override bool TryRead(FileNode node, string path, ReadLog log, [MaybeNullWhen(false)] out IReadOnlyList<T> value)
    {
        var read = new List<T>();
        value = read;
        if (node is not ListNode list || list.Items.Count > most || list.Items.Count < least)
        {
            log.Error(node.At, path, node is ListNode { Items.Count: 0 } ? "Found an empty list." : $"Found {node.Describe()}.",
                Accepted);
            return false;
        }
        var good = true;
        for (var index = 0; index < list.Items.Count; index++)
        {
            var itemPath = Join(path, (index + 1).ToString(CultureInfo.InvariantCulture));
            log.Place(itemPath, list.Items[index].At);
            if (form.TryRead(list.Items[index], itemPath, log, out var item))
                read.Add(item);
            else
                good = false;
        }
        return good;
    }

    /// <inheritdoc/>
    public override FileNode Write(IReadOnlyList<T> value) => new ListNode([.. value.Select(form.Write)], TextPlace.None);

    internal override FormatOutline Outline() => new("", [], form.Outline(), true, Accepted);

    /// <inheritdoc/>
    public override JsonObject Schema()
    {
        var schema = new JsonObject { ["type"] = "array", ["maxItems"] = most, ["items"] = form.Schema() };
        if (least > 0)
            schema["minItems"] = least;
        return schema;
    }
}
