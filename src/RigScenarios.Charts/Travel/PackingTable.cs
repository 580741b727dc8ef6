using RigScenarios.Answers;
using RigScenarios.Travel;

namespace RigScenarios.Charts.Travel;

/// <summary>A travel answer as a table: who carries what, and what stays behind.</summary>
public static class PackingTable
{
    /// <summary>One row for each kind of battery of each traveller, then one for each that stays behind.</summary>
    public static ChartTable Of(TravelAnswer answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        var rows = answer.Lists.SelectMany(list => list.Lines.Select(line => new object?[]
        {
            list.Traveller, line.Battery.Title, line.Count, line.Battery.Rated.Energy,
            TravelWords.Place(line, answer.Rules.Rules.Passengers), line.Check.MarginWords,
            line.Check.NeedsApproval ? "yes, before the journey" : "",
        })).Concat(answer.Left.Select(left => new object?[]
        {
            "stays behind", left.Battery.Title, left.Count, left.Battery.Rated.Energy, left.Remedy, left.Margin, "",
        }));
        return ChartTable.Of("who", "battery", "how many", "each", "where", "margin", "airline's approval").WithRows(rows) with
        {
            Caption = $"{answer.Journey.Title}, {TravelWords.Day(answer.Journey.Date)}. "
                + $"{TravelWords.Edition(answer.Rules.Rules)}. No permission: ask the "
                    + $"airline.{(answer.Rules.Warning is { } warning ? " " + warning : "")}",
        };
    }
}
