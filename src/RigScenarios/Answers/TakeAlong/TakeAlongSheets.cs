using RigScenarios.Costs;
using RigScenarios.Scenarios;

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
            SheetKind.Shopping => Shopping(answer.Scenario, answer.Build, answer.Days.Count).Sheet,
            _ => DaySheet.Of(answer),
        };
    }

    /// <summary>What is bought and rented, as a sheet and as a table. Nothing is run for it, so that a scenario without days has
    /// one too.</summary>
    /// <param name="scenario">A scenario that was read or checked.</param>
    /// <param name="build">The build whose things are asked about; null for the whole kit.</param>
    /// <param name="days">How many shooting days are asked about: rented things are rented for so many, unless the scenario says
    /// for how many; null for all of its days.</param>
    /// <exception cref="ScenarioProblemsException">There is no such build, or prices are in several currencies.</exception>
    public static (TakeAlongSheet Sheet, SheetTable Table) Shopping(Scenario scenario, string? build, int? days = null)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        var given = scenario.Costs ?? new();
        var terms = given.ForDays(days);
        var cost = build is null ? KitCost.OfAll(scenario, terms) : KitCost.Of(scenario, build, terms);
        return (ShoppingSheet.Of(scenario, build, cost), ShoppingTable.Of(cost));
    }

    /// <summary>The sheet of a kind as a table for spreadsheets: of the build a row for each part, of the day a row for whatever
    /// happens, of the shopping a row for each thing.</summary>
    /// <param name="answer">The answer.</param>
    /// <param name="kind">Which: that of build, shopping or day.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no table of that kind.</exception>
    public static SheetTable Table(RigAnswer answer, SheetKind kind)
    {
        ArgumentNullException.ThrowIfNull(answer);
        return kind switch
        {
            SheetKind.Build => BuildTable.Of(answer),
            SheetKind.Shopping => Shopping(answer.Scenario, answer.Build, answer.Days.Count).Table,
            SheetKind.Day => DayTable.Of(answer),
            _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "Accepted: Build, Shopping, Day."),
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
