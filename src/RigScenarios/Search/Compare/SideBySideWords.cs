using RigScenarios.Answers;
using RigScenarios.Limits;

namespace RigScenarios.Search.Compare;

/// <summary>The sentences about rigs side by side, the same in every face.</summary>
public static class SideBySideWords
{
    /// <summary>What the differences rest on, under every table of them.</summary>
    public const string Rule = "A difference is told only where it is larger than both figures may be off together; what both "
        + "rigs rest on alike is left out of that. Else: no difference that the prediction can tell.";

    /// <summary>What a split of a time or a margin is, under every list of them.</summary>
    public const string Mean = "Times, margins and centres are no sums: each change is told with the mean of what it adds over "
        + "all orders of making the changes, and each set of them was run.";

    private const int MostShares = 5;

    /// <summary>The first sentence: which of them work.</summary>
    /// <param name="side">The comparison.</param>
    public static string Headline(SideBySide side)
    {
        ArgumentNullException.ThrowIfNull(side);
        if (side.Rigs.All(rig => rig.Answer.Verdict == side.Rigs[0].Answer.Verdict))
        {
            return side.Rigs[0].Answer.Verdict switch
            {
                Verdict.Holds => "All of them work.",
                Verdict.Close => "All of them work only just.",
                Verdict.NotKnown => "Of none of them it is known whether it works: a figure is missing.",
                _ => "None of them works as it is.",
            };
        }
        var parts = side.Rigs.GroupBy(rig => rig.Answer.Verdict).OrderBy(group => group.Key).Select(group =>
            (group.Key, Names: Names([.. group]), IsOne: group.Count() == 1)).Select(group => group.Key switch
            {
                Verdict.Holds => $"{group.Names} {(group.IsOne ? "works" : "work")}",
                Verdict.Close => $"{group.Names} only just",
                Verdict.NotKnown => $"of {group.Names} it is not known",
                _ => $"{group.Names} {(group.IsOne ? "does" : "do")} not work",
            });
        return Upper(string.Join("; ", parts)) + ".";
    }

    /// <summary>A line for each rig: its verdict with its time.</summary>
    /// <param name="side">The comparison.</param>
    public static IReadOnlyList<string> Lines(SideBySide side)
    {
        ArgumentNullException.ThrowIfNull(side);
        return [.. side.Rigs.Select((rig, place) => $"{rig.Name}{(place == side.Base ? " (base)" : "")}: "
            + $"{(rig.Title == rig.Name ? "" : $"{rig.Title}. ")}{AnswerLine.Of(rig.Answer)}.")];
    }

    /// <summary>What a rig gains and loses against the base, a sentence each.</summary>
    /// <param name="side">The comparison.</param>
    /// <param name="rig">The place of the rig; not the base.</param>
    public static IReadOnlyList<string> Against(SideBySide side, int rig)
    {
        ArgumentNullException.ThrowIfNull(side);
        var rows = side.Figures.Where(row => row.Differences[rig] is not null).ToList();
        List<string> lines = [];
        void Add(string lead, Standing standing)
        {
            var told = rows.Where(row => row.Differences[rig]!.Standing == standing).Select(row =>
                standing is Standing.NoneToTell or Standing.NotKnown ? FigureWords.Name(row.Kind)
                : $"{FigureWords.Name(row.Kind)} {FigureWords.Of(row.Differences[rig]!)}").ToList();
            if (told.Count > 0)
                lines.Add($"{lead}: {string.Join("; ", told)}.");
        }
        Add("Better", Standing.Better);
        Add("Worse", Standing.Worse);
        Add("Different", Standing.Different);
        Add("No difference that the prediction can tell", Standing.NoneToTell);
        Add("Not known", Standing.NotKnown);
        return lines;
    }

    /// <summary>What the differences of a rig come from, a sentence for each figure that has one, and what such a split
    /// is.</summary>
    /// <param name="side">The comparison.</param>
    /// <param name="rig">The place of the rig; not the base.</param>
    public static IReadOnlyList<string> Causes(SideBySide side, int rig)
    {
        ArgumentNullException.ThrowIfNull(side);
        var split = side.Figures.Where(row => row.Differences[rig] is { Split: not null }).ToList();
        var lines = split.Select(row => Cause(row.Kind, row.Differences[rig]!));
        return [.. split.Exists(row => row.Differences[rig]!.Split is { Way: SplitWay.OrderFreeMean, Shares.Count: > 1 })
            ? lines.Append(Mean) : lines];
    }

    /// <summary>What one difference comes from: "mass of the rig +310 g, of which battery 260 g, monitor 50 g".</summary>
    /// <param name="kind">The figure.</param>
    /// <param name="difference">The difference, split.</param>
    public static string Cause(FigureKind kind, FigureDifference difference)
    {
        ArgumentNullException.ThrowIfNull(difference);
        var split = difference.Split!;
        var lead = $"{Upper(FigureWords.Name(kind))} {FigureWords.Of(difference)}";
        var seen = split.Shares.Where(share => !FigureWords.IsNothing(share.Amount)).ToList();
        var told = seen.Take(MostShares).Select(share => $"{share.Name} {FigureWords.WithSign(share.Amount)}").ToList();
        if (seen.Count > MostShares)
            told.Add($"{seen.Count - MostShares} more with less each");
        if (split.Together is { } together)
            told.Add($"and from these together {FigureWords.WithSign(together)}");
        var list = string.Join(", ", told);
        return split.Way switch
        {
            SplitWay.Sum => $"{lead}, of which {list}.",
            SplitWay.OnlyChange => $"{lead}, all of it by one change: {split.Shares[0].Name}. Nothing else changed.",
            SplitWay.OrderFreeMean when split.Shares.Count == 1 => $"{lead}, all of it by one change: {split.Shares[0].Name}. "
                + "The others do nothing to it.",
            SplitWay.OrderFreeMean => $"{lead}: {list}.",
            SplitWay.LeaveOneOut => $"{lead}: {list} (what is lost when one change is left out, for not every set of changes "
                + "can be run).",
            _ => $"{lead}: not split, for {split.Missing}.",
        };
    }

    /// <summary>The limits that break, a sentence for each rig that passes one.</summary>
    /// <param name="side">The comparison.</param>
    public static IReadOnlyList<string> Broken(SideBySide side)
    {
        ArgumentNullException.ThrowIfNull(side);
        return [.. side.Rigs.Select((rig, place) => (rig.Name, Limits: side.Limits.Select(row => row.Limits[place])
            .OfType<Limit>().Where(limit => limit.IsPassed).ToList()))
            .Where(rig => rig.Limits.Count > 0)
            .Select(rig => $"{rig.Name}: {string.Join("; ", rig.Limits.Select(limit => LimitSentences.Of(limit, null)))}.")];
    }

    /// <summary>What stands in a cell for a limit: "31 % left", or that there is none.</summary>
    /// <param name="limit">The limit; null where the rig has no such thing.</param>
    public static string Left(Limit? limit) => limit is null ? "none" : LimitSentences.Left(limit);

    /// <summary>A limit's name in a row.</summary>
    /// <param name="row">The row.</param>
    public static string Name(LimitRow row)
    {
        ArgumentNullException.ThrowIfNull(row);
        var limit = row.Limits.OfType<Limit>().First();
        return row.Question == QuestionKind.Wiring
            ? $"{LimitSentences.Element(limit.Element)}: {Kind(limit.Kind)}" : BalanceLimitWords.Name(limit);
    }

    /// <summary>The rigs that are best in a row, in words; a dash where none is.</summary>
    /// <param name="side">The comparison.</param>
    /// <param name="best">Their places.</param>
    public static string Best(SideBySide side, IReadOnlyList<int> best)
    {
        ArgumentNullException.ThrowIfNull(side);
        ArgumentNullException.ThrowIfNull(best);
        return best.Count == 0 ? "-" : string.Join(", ", best.Select(place => side.Rigs[place].Name));
    }

    /// <summary>What a reader must know of the whole: days that differ, what is not known and why.</summary>
    /// <param name="side">The comparison.</param>
    public static IReadOnlyList<string> Notices(SideBySide side)
    {
        ArgumentNullException.ThrowIfNull(side);
        List<string> lines = [];
        if (!side.HaveSameDays)
            lines.Add("The rigs do not go through the same days: what differs may be the days' and no rig's.");
        foreach (var row in side.Figures)
        {
            // What is missing everywhere is told once.
            var missing = row.Values.Select((value, place) => (side.Rigs[place].Name, value.Missing))
                .Where(item => item.Missing.Length > 0).GroupBy(item => item.Missing, StringComparer.Ordinal)
                .Select(group => group.Count() == side.Rigs.Count ? group.Key
                    : $"{string.Join(", ", group.Select(item => item.Name))}: {group.Key}").ToList();
            if (missing.Count > 0)
                lines.Add($"{Upper(FigureWords.Name(row.Kind))}: {string.Join("; ", missing)}.");
        }
        return lines;
    }

    /// <summary>The cautions of all rigs, each once.</summary>
    /// <param name="side">The comparison.</param>
    public static IReadOnlyList<string> Cautions(SideBySide side)
    {
        ArgumentNullException.ThrowIfNull(side);
        var all = side.Rigs.SelectMany(rig => AnswerCautions.Of(rig.Answer)).Distinct(StringComparer.Ordinal).ToList();
        // What always holds goes last, as in every answer.
        return [.. all.Where(caution => caution != AnswerCautions.Always), AnswerCautions.Always];
    }

    private static string Kind(LimitKind kind) => kind switch
    {
        LimitKind.Fuse => "fuse",
        LimitKind.Temperature => "temperature",
        LimitKind.LowestVoltage or LimitKind.Input => "voltage",
        LimitKind.SwitchOff => "switch-off",
        LimitKind.CutOff => "cut-off",
        LimitKind.OutputCurrent => "current out",
        _ => "current",
    };

    private static string Names(IReadOnlyList<ComparedRig> rigs) => rigs.Count == 1 ? rigs[0].Name
        : $"{string.Join(", ", rigs.SkipLast(1).Select(rig => rig.Name))} and {rigs[^1].Name}";

    private static string Upper(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
