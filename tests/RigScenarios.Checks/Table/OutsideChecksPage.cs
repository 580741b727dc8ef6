using System.Globalization;
using System.Text;

namespace RigScenarios.Checks.Table;

/// <summary>docs/outside-checks.md: how many checks there are a room and a kind of source.</summary>
internal static class OutsideChecksPage
{
    /// <summary>Where the page lies below the project's folder.</summary>
    public const string Path = "docs/outside-checks.md";

    /// <summary>The command that makes the page.</summary>
    public const string Command = $"dotnet run -c Release --project tests/RigScenarios.Checks -- table {Path}";

    private static readonly (SourceKind Kind, string Words)[] Kinds =
    [
        (SourceKind.Standard, "standard"),
        (SourceKind.Regulation, "regulation"),
        (SourceKind.Handbook, "handbook"),
        (SourceKind.Paper, "paper"),
        (SourceKind.DataSheet, "data sheet"),
        (SourceKind.OpenData, "open data"),
        (SourceKind.IndependentProgram, "independent program"),
        (SourceKind.ReferenceLibrary, "reference library"),
        (SourceKind.ClosedForm, "closed form"),
        (SourceKind.TradePractice, "trade practice"),
        (SourceKind.FromMemory, "from memory"),
    ];

    /// <summary>The page.</summary>
    public static string Text(IReadOnlyList<OutsideCheck> checks) => $"""
        # What is checked from outside

        Made by `{Command}`; change the checks, not this page. With `--sources` in place of the file name the command lists
        every source with the tests that rest on it.

        A check from outside compares what the program computes with a figure that others published, measured or computed. Each
        names its source beside it, and how that was read: in the source, second-hand, or from memory. A row of figures counts
        as one case; a test without rows counts as one, even where it compares several figures. What rests on two kinds of
        source stands in both columns and once under "cases". All other tests (behaviour, words, files, pages) are not counted
        here.

        {Table(checks)}
        What the kinds mean: a *regulation* is a law, a rule of transport, or an authority's worked examples; a *handbook* is a
        table or a worked example of a handbook or textbook; an *independent program* solves the same equations and was written
        apart from this one; a *reference library* is a general solver; a *closed form* stands in textbooks and was worked by
        hand; *trade practice* and *from memory* have no source that was read, and weigh least.

        """;

    /// <summary>Every source, by room and kind, with the tests that rest on it.</summary>
    public static string Sources(IReadOnlyList<OutsideCheck> checks)
    {
        var text = new StringBuilder();
        foreach (var room in checks.GroupBy(check => check.Room))
        {
            text.Append(CultureInfo.InvariantCulture, $"{room.Key}\n");
            var sources = from check in room
                          from source in check.Sources
                          group check by (source.Kind, source.Citation);
            foreach (var source in sources.OrderBy(source => source.Key.Kind))
            {
                text.Append(CultureInfo.InvariantCulture, $"  {WordsOf(source.Key.Kind)}: {source.Key.Citation}\n");
                foreach (var check in source)
                    text.Append(CultureInfo.InvariantCulture, $"    {check.Cases,3}  {check.Name}\n");
            }

            foreach (var check in room.Where(check => check.Sources.Count == 0))
                text.Append(CultureInfo.InvariantCulture, $"  no source: {check.Name}\n");
        }
        return text.ToString();
    }

    private static string Table(IReadOnlyList<OutsideCheck> checks)
    {
        var used = Kinds.Where(kind => checks.Any(check => check.Sources.Any(source => source.Kind == kind.Kind))).ToList();
        var bare = checks.Any(check => check.Sources.Count == 0);
        var text = new StringBuilder();
        text.Append("| room |").AppendJoin("", used.Select(kind => $" {kind.Words} |"))
            .Append(bare ? " no source named |" : "").Append(" cases | sources |\n");
        text.Append("| --- |").Insert(text.Length, " ---: |", used.Count + (bare ? 3 : 2)).Append('\n');
        foreach (var room in checks.GroupBy(check => check.Room))
            Row(text, room.Key, [.. room], used, bare);
        Row(text, "all", checks, used, bare);
        return text.ToString();
    }

    private static void Row(StringBuilder text, string room, IReadOnlyList<OutsideCheck> checks,
        IReadOnlyList<(SourceKind Kind, string Words)> kinds, bool bare)
    {
        int Cases(Func<OutsideCheck, bool> belongs) => checks.Where(belongs).Sum(check => check.Cases);
        IEnumerable<int> figures =
        [
            .. kinds.Select(kind => Cases(check => check.Sources.Any(source => source.Kind == kind.Kind))),
            .. bare ? [Cases(check => check.Sources.Count == 0)] : Array.Empty<int>(),
            Cases(_ => true),
            checks.SelectMany(check => check.Sources).Select(source => source.Citation).Distinct(StringComparer.Ordinal).Count(),
        ];
        text.Append(CultureInfo.InvariantCulture, $"| {room} |")
            .AppendJoin("", figures.Select(count => $" {count} |")).Append('\n');
    }

    private static string WordsOf(SourceKind kind) => Kinds.First(one => one.Kind == kind).Words;
}
