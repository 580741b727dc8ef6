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
            SheetKind.Build => BuildSheet.Of(answer),
            _ => DaySheet.Of(answer),
        };
    }

    /// <summary>The sheet of a kind as a table for spreadsheets: of the build a row for each part, of the day a row for whatever
    /// happens.</summary>
    /// <param name="answer">The answer.</param>
    /// <param name="kind">Which: the build's or the day's.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no table of that kind.</exception>
    public static SheetTable Table(RigAnswer answer, SheetKind kind)
    {
        ArgumentNullException.ThrowIfNull(answer);
        return kind switch
        {
            SheetKind.Build => BuildTable.Of(answer),
            SheetKind.Day => DayTable.Of(answer),
            _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "Accepted: Build, Day."),
        };
    }

    /// <summary>What was left out for want of room, in one line; empty where nothing was.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="cut">The sections as they were made, each with the number of rows that stayed.</param>
    public static string LeftOut(TakeAlongSheet sheet, IReadOnlyList<(SheetSection Section, int Rows)> cut)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        ArgumentNullException.ThrowIfNull(cut);
        if (cut.Count == 0)
            return "";
        var what = cut.Select(item =>
            $"{item.Section.Rows.Count - item.Rows} of {item.Section.Rows.Count} {item.Section.Things}");
        return $"Left out for want of room: {string.Join(", ", what)}. The whole sheet has them ({sheet.WholeBy}).";
    }
}
