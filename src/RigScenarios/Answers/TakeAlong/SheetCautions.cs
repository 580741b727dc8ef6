using RigScenarios.Builds;

namespace RigScenarios.Answers.TakeAlong;

/// <summary>The cautions of a sheet that goes to the set. None of them is ever left out.</summary>
internal static class SheetCautions
{
    /// <summary>Those of the day.</summary>
    public static SheetSection OfTheDay(RigAnswer answer) =>
        Section([.. OfTheHead(answer), .. AnswerCautions.OfTheDay(answer)]);

    /// <summary>Those of building, with lifting and plugging in.</summary>
    public static SheetSection OfBuilding(RigAnswer answer) => Section(
        [BalanceWords.Lifting, AnswerCautions.Polarity, .. OfTheHead(answer), .. AnswerCautions.OfBuilding(answer)]);

    private static SheetSection Section(IEnumerable<string> cautions) => new("Cautions", SheetForm.Sentences,
        [.. cautions.Distinct().Select(caution => new[] { caution })]) { IsWide = true };

    private static IEnumerable<string> OfTheHead(RigAnswer answer) =>
        answer.TheBuild.Stance == Stance.Tripod && answer.Balance?.BatteryOff is { } off
            && HeadCaseWords.Caution(off) is { } caution
                ? [caution.Replace(off.Part, SheetWords.Thing(off.Part), StringComparison.Ordinal)] : [];
}
