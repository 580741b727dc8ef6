namespace RigScenarios.Answers.TakeAlong;

/// <summary>The sheets that are made of an answer. Nothing is computed here: each figure is read from the answer.</summary>
public static class TakeAlongSheets
{
    /// <summary>The sheet of a kind.</summary>
    /// <param name="answer">The answer.</param>
    /// <param name="kind">Which.</param>
    public static TakeAlongSheet Of(RigAnswer answer, SheetKind kind)
    {
        ArgumentNullException.ThrowIfNull(answer);
        return kind switch
        {
            SheetKind.Exercise => ExerciseSheet.Blank(answer),
            SheetKind.Solution => ExerciseSheet.Solved(answer),
            _ => DaySheet.Of(answer),
        };
    }

    /// <summary>What was left out for want of room, in one line; empty where nothing was.</summary>
    /// <param name="cut">The sections as they were made, each with the number of rows that stayed.</param>
    public static string LeftOut(IReadOnlyList<(SheetSection Section, int Rows)> cut)
    {
        ArgumentNullException.ThrowIfNull(cut);
        if (cut.Count == 0)
            return "";
        var what = cut.Select(item =>
            $"{item.Section.Rows.Count - item.Rows} of {item.Section.Rows.Count} {item.Section.Things}");
        return $"Left out for want of room: {string.Join(", ", what)}. The whole sheet has them (take-along --whole).";
    }
}
