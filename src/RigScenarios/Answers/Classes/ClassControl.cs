using System.Globalization;

namespace RigScenarios.Answers.Classes;

/// <summary>One thing that may stand in a control of several.</summary>
/// <param name="Value">As a scenario file says it.</param>
/// <param name="Title">In words.</param>
public sealed record ControlChoice(string Value, string Title);

/// <summary>A figure or a choice of a scenario that a class may be given to change.</summary>
public sealed record ClassControl
{
    /// <summary>Its path in the scenario file; <see cref="Air"/> for the coldest air of the days.</summary>
    public required string Name { get; init; }

    /// <summary>What it belongs to, as a heading.</summary>
    public required string Group { get; init; }

    /// <summary>What it is called.</summary>
    public required string Label { get; init; }

    /// <summary>The unit of a figure; empty for a choice and for a figure without one.</summary>
    public string Unit { get; init; } = "";

    /// <summary>Where it stands: a number in <see cref="Unit"/>, or a choice's value.</summary>
    public required string Start { get; init; }

    /// <summary>Whether the scenario says so. Otherwise it begins at a value that tells nothing of the answer.</summary>
    public bool IsGiven { get; init; } = true;

    /// <summary>The least value of a figure, in <see cref="Unit"/>.</summary>
    public double Least { get; init; }

    /// <summary>The greatest value of a figure, in <see cref="Unit"/>.</summary>
    public double Greatest { get; init; }

    /// <summary>What may be chosen; none for a figure.</summary>
    public IReadOnlyList<ControlChoice> Choices { get; init; } = [];

    /// <summary>The name of the control for the coldest air: all air of the days moves with it by the same difference.</summary>
    public const string Air = "air";

    /// <summary>Whether it is a figure.</summary>
    public bool IsNumber => Choices.Count == 0;

    /// <summary>A value in words: "-8 °C", "standby".</summary>
    /// <param name="value">The value, as <see cref="Start"/> has it.</param>
    public string InWords(string value) => IsNumber ? $"{value} {Unit}".TrimEnd()
        : Choices.FirstOrDefault(choice => choice.Value == value)?.Title ?? value;

    /// <summary>The control within the bounds that a task sets, wherever those lie within its own.</summary>
    /// <param name="open">What the task says.</param>
    public ClassControl Within(OpenControl open)
    {
        ArgumentNullException.ThrowIfNull(open);
        var least = Math.Clamp(open.Least ?? Least, Least, Greatest);
        return this with { Least = least, Greatest = Math.Clamp(open.Greatest ?? Greatest, least, Greatest) };
    }

    /// <summary>What is wrong with a value, in a sentence; null where nothing is.</summary>
    /// <param name="value">The value.</param>
    internal string? Problem(string value)
    {
        if (!IsNumber)
            return Choices.Any(choice => choice.Value == value) ? null : "This is none of what may be chosen.";
        if (Number(value) is not { } number)
            return "A number is needed.";
        // Where it stands is always right, also outside of what the class may take it to.
        return value == Start || (number >= Least && number <= Greatest) ? null
            : $"It goes from {InWords(Text(Least))} to {InWords(Text(Greatest))}.";
    }

    /// <summary>A number as it is written; null for anything else.</summary>
    internal static double? Number(string text) => double.TryParse(text,
        NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number)
        && double.IsFinite(number) ? number : null;

    /// <summary>A number as controls write it.</summary>
    internal static string Text(double number) => (Math.Round(number, 3) + 0.0).ToString("0.###", CultureInfo.InvariantCulture);
}
