namespace RigScenarios.Sweeps.Sensitivity;

/// <summary>Which uncertain figures belong together.</summary>
internal static class UncertainGroups
{
    /// <summary>Figures that are drawn together are one thing, each other one by itself.</summary>
    /// <param name="uncertain">What is uncertain.</param>
    public static IReadOnlyList<UncertainThing> Drawn(UsualUncertainty uncertain) =>
        [.. Joined(uncertain, false).Select(group => Thing(uncertain, group))];

    /// <summary>What one act of measuring tells, with what is drawn together with it.</summary>
    /// <param name="uncertain">What is uncertain.</param>
    public static IReadOnlyList<ToldThing> Told(UsualUncertainty uncertain) =>
    [
        .. Joined(uncertain, true).Select(group => new ToldThing(
            string.Join("; ", group.Select(at => uncertain.Figures[at].Act).Distinct()),
            [.. group.Select(at => uncertain.Figures[at].Name)], Thing(uncertain, group))),
    ];

    private static UncertainThing Thing(UsualUncertainty uncertain, List<int> group)
    {
        var figures = group.Select(at => uncertain.Figures[at]).ToList();
        var name = figures.Count > 1 && figures.Select(figure => figure.Together).Distinct().ToList() is [{ } together] ? together
            : string.Join(", ", figures.Select(figure => figure.Name));
        return new(name, [.. figures.Select(figure => figure.Field.Path)],
            group);
    }

    // Groups in the order of their first figures.
    private static List<List<int>> Joined(UsualUncertainty uncertain, bool byAct)
    {
        var figures = uncertain.Figures;
        var group = Enumerable.Range(0, figures.Count).ToArray();
        for (var one = 0; one < figures.Count; one++)
        {
            for (var other = 0; other < one; other++)
            {
                if (group[one] != group[other] && ((byAct && figures[one].Act == figures[other].Act)
                    || AreDrawnTogether(uncertain, figures[one].Field.Path, figures[other].Field.Path)))
                    Join(group[one], group[other]);
            }
        }
        return [.. Enumerable.Range(0, figures.Count).GroupBy(at => group[at]).Select(members => members.ToList())];

        void Join(int one, int other)
        {
            for (var at = 0; at < group.Length; at++)
            {
                if (group[at] == one || group[at] == other)
                    group[at] = Math.Min(one, other);
            }
        }
    }

    private static bool AreDrawnTogether(UsualUncertainty uncertain, string one, string other) =>
        uncertain.Correlations.Any(pair => pair.Coefficient != 0
            && ((pair.First == one && pair.Second == other) || (pair.First == other && pair.Second == one)));
}

/// <summary>What one act of measuring tells.</summary>
/// <param name="Act">The act.</param>
/// <param name="Names">What is known then, in words.</param>
/// <param name="Thing">The same as one thing.</param>
internal sealed record ToldThing(string Act, IReadOnlyList<string> Names, UncertainThing Thing);
