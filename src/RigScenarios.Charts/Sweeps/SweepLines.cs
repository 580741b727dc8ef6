using RigScenarios.Charts.ParallelAxes;
using RigScenarios.Sweeps.Evaluation;

namespace RigScenarios.Charts.Sweeps;

/// <summary>All scenarios of a sweep in one picture: a line for each, over what was varied and what came of it.</summary>
public static class SweepLines
{
    /// <summary>The figure: the fields that were varied from the top, the result at the bottom, and the scenarios in which
    /// something holds apart from those in which it does not.</summary>
    /// <param name="question">What was asked.</param>
    /// <param name="records">The records of it, or a part of them; at least one.</param>
    /// <param name="result">Which of the question's columns stands at the bottom, one of numbers.</param>
    /// <param name="holds">By which of its columns of yes and no the scenarios are drawn apart; null draws all in one.</param>
    /// <param name="options">Words, and which fields; null for all, by their paths.</param>
    /// <exception cref="ArgumentException">There is no record, or the question has no such columns or fields.</exception>
    public static Figure Of(SweepQuestion question, IReadOnlyList<SweepRecord> records, string result, string? holds,
        SweepLinesOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(question);
        ArgumentNullException.ThrowIfNull(records);
        options ??= new();
        if (records.Count == 0)
            throw new ArgumentException("There is no scenario to draw.", nameof(records));
        var column = Place(question, result, ColumnKind.Number);
        var fields = options.Fields ?? [.. question.Plan.Paths.Select(path => new SweptField(path, ""))];
        List<ParallelAxis> axes = [.. fields.Select(field => Swept(question, records, field))];
        var words = question.Columns[column];
        axes.Add(new(options.ResultAxis ?? new ChartAxis(Words(words), words.Unit),
            [.. records.Select(one => one.Cells[column].Number ?? double.NaN)]));
        return new ParallelAxesChart
        {
            Slug = "sweep-lines",
            Title = options.Title,
            Caption = Unknown(question, records, holds),
            Cautions = options.Cautions,
            Axes = axes,
            Groups = holds is null ? [] : Groups(records, Place(question, holds, ColumnKind.YesNo),
                options.GroupNames ?? ($"{holds.Replace('_', ' ')}: yes", $"{holds.Replace('_', ' ')}: no")),
        }.ToFigure();
    }

    /// <summary>A column in words: its name without its unit.</summary>
    internal static string Words(SweepColumn column)
    {
        var name = column.Unit.Length > 0 && column.Name.LastIndexOf('_') is var cut and > 0 ? column.Name[..cut] : column.Name;
        return name.Replace('_', ' ');
    }

    /// <summary>Where a column stands among those of the question.</summary>
    internal static int Place(SweepQuestion question, string name, ColumnKind kind)
    {
        var place = question.Columns.ToList().FindIndex(column => column.Name == name && column.Kind == kind);
        return place >= 0 ? place : throw new ArgumentException($"The sweep has no column \"{name}\" of "
            + $"{(kind == ColumnKind.YesNo ? "yes and no" : "numbers")}; it has "
            + $"{string.Join(", ", question.Columns.Where(column => column.Kind == kind).Select(column => column.Name))}.",
            nameof(name));
    }

    private static ParallelAxis Swept(SweepQuestion question, IReadOnlyList<SweepRecord> records, SweptField field)
    {
        var paths = question.Plan.Paths.ToList();
        var place = paths.IndexOf(field.Path);
        if (place < 0)
            throw new ArgumentException($"The sweep does not vary \"{field.Path}\"; it varies {string.Join(", ", paths)}.",
                nameof(field));
        var swept = SweptValues.Of(field.Path, [.. records.Select(one => one.Values[place])]);
        return new(field.Name.Length > 0 ? swept.Axis with { Title = field.Name } : swept.Axis, swept.Values)
        {
            Names = swept.Names,
        };
    }

    private static IReadOnlyList<ParallelGroup> Groups(IReadOnlyList<SweepRecord> records, int place,
        (string Yes, string No) names) =>
    [
        new(names.Yes, line => records[line].Cells[place].YesNo == true),
        new(names.No, line => records[line].Cells[place].YesNo == false),
    ];

    private static string Unknown(SweepQuestion question, IReadOnlyList<SweepRecord> records, string? holds)
    {
        var unknown = holds is null ? 0
            : records.Count(one => one.Cells[Place(question, holds, ColumnKind.YesNo)].YesNo is null);
        return unknown == 0 ? "" : $"In {unknown} scenarios nobody can say which it is: they are in neither picture.";
    }
}
