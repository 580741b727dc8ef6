using RigScenarios.Answers;

namespace RigScenarios.Sweeps.Evaluation;

/// <summary>The columns of the rig at rest: balance, tripod and joints, mass. No day is run for them.</summary>
internal static class RestColumns
{
    /// <summary>The columns, in the order of tables.</summary>
    public static IReadOnlyList<ColumnReading> All { get; } =
    [
        Number("mass_kg", "kg",
            "Mass of the rig without head and tripod, of all things whose mass is known.", rest => rest.Mass.Mass.Kilograms),
        Number("centre_forward_mm", "mm",
            "The centre of gravity, forward of the zero point of the rig's frame; empty where a mass or a size is missing.",
            rest => rest.IsCentreKnown ? rest.Mass.Centre.X.Millimeters : null),
        Number("centre_up_mm", "mm",
            "The centre of gravity, above the zero point of the rig's frame; empty where a mass or a size is missing.",
            rest => rest.IsCentreKnown ? rest.Mass.Centre.Z.Millimeters : null),
        Number("tipping_gust_m_s", "m/s",
            "The gust that tips the tripod over on the slope that it stands on; empty without a tripod, or where it tips by "
                + "itself.", rest => rest.TippingGust?.MetersPerSecond),
        .. Question("balance", "head, shoulder or hand", BalanceQuestions.Balance),
        .. Question("stand", "tripod and joints", BalanceQuestions.Stand),
    ];

    /// <summary>The words of a limit in a table: what is limited, and which of its limits.</summary>
    /// <param name="limit">The limit; null for none.</param>
    public static string? Words(Limits.Limit? limit) =>
        limit is null ? null : $"{LimitSentences.Element(limit.Element)}: {LimitSentences.Left(limit)}";

    private static ColumnReading Number(string name, string unit, string meaning, Func<BuildBalance, double?> read) =>
        ColumnReading.Number(name, unit, meaning, ColumnNeeds.AtRest,
            outcome => outcome.Balance is { } balance ? read(balance) : null);

    private static IEnumerable<ColumnReading> Question(string name, string what, Func<BuildBalance?, AnswerQuestion> ask)
    {
        yield return ColumnReading.Number($"{name}_left_pct", "%",
            $"What is left to the nearest limit of {what}, as a share of what is allowed; below zero where it is passed.",
            ColumnNeeds.AtRest, outcome => 100 * NearestLimit.Of(ask(outcome.Balance))?.Share);
        yield return ColumnReading.Words($"{name}_limit", $"That limit of {what}, in words.", ColumnNeeds.AtRest,
            outcome => Words(NearestLimit.Of(ask(outcome.Balance))));
        yield return ColumnReading.Words($"{name}_verdict", $"The verdict on {what}: holds, close, not known or fails.",
            ColumnNeeds.AtRest, outcome => Limits.Verdicts.InWords(ask(outcome.Balance).Verdict));
    }
}
