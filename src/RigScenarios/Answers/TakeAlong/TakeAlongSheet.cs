using RigScenarios.Limits;

namespace RigScenarios.Answers.TakeAlong;

/// <summary>A sheet of one page to take along: finished text, read from one answer, in the order in which it stands on the
/// page.</summary>
public sealed record TakeAlongSheet
{
    /// <summary>The scenario's title.</summary>
    public required string Title { get; init; }

    /// <summary>What the sheet is, and for which build.</summary>
    public required string Subtitle { get; init; }

    /// <summary>A line for each day: its title, call time and wrap, the air.</summary>
    public required IReadOnlyList<string> Days { get; init; }

    /// <summary>The verdict; null where the sheet is not to tell it.</summary>
    public Verdict? Verdict { get; init; }

    /// <summary>The verdict in a sentence, or what the shopping comes to; empty where the sheet is not to tell it.</summary>
    public string Headline { get; init; } = "";

    /// <summary>A line for each question; none where the sheet is not to tell it.</summary>
    public IReadOnlyList<QuestionLine> Questions { get; init; } = [];

    /// <summary>The sections.</summary>
    public required IReadOnlyList<SheetSection> Sections { get; init; }

    /// <summary>Small print at the foot.</summary>
    public required string Foot { get; init; }

    /// <summary>The command that leaves nothing out, for the line that tells what was.</summary>
    public string WholeBy { get; init; } = "take-along --whole";
}

/// <summary>Which sheet is wanted.</summary>
public enum SheetKind
{
    /// <summary>The sheet for the day.</summary>
    Day,

    /// <summary>What is given, with blanks for one's own estimate; no answer stands on it.</summary>
    Exercise,

    /// <summary>The answers to those blanks.</summary>
    Solution,

    /// <summary>What the rig is made of and how it is put together.</summary>
    Build,

    /// <summary>What is bought and rented for it, and what it comes to.</summary>
    Shopping,
}
