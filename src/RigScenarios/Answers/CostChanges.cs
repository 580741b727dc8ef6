using RigScenarios.Costs;
using RigScenarios.Limits;
using RigScenarios.Scenarios;

namespace RigScenarios.Answers;

/// <summary>Renting in place of buying where the budget is passed, or the other way round; and what other changes buy counts as
/// bought.</summary>
internal static class CostChanges
{
    private const int MostSingle = 4;

    /// <summary>The changes for an answer whose budget is passed; none for another.</summary>
    public static IEnumerable<RigChange> Of(RigAnswer now)
    {
        if (now.Of(QuestionKind.Cost) is not { Verdict: Verdict.Fails or Verdict.Close } || now.Cost is not { } cost)
            yield break;
        var other = cost.Lines.Where(line => line.Each > 0).Select(line => (Line: line, Saves: Saves(now.Scenario, cost, line)))
            .Where(one => one.Saves > 0).OrderByDescending(one => one.Saves).ToList();
        foreach (var (line, _) in other.Take(MostSingle))
            yield return line.Had == Had.Bought
                ? new($"Rent the {line.Title} in place of buying it", [Set(line)], ChangeEffort.Nothing, $"had {line.Name}")
                : new($"Buy the {line.Title} in place of renting it", [Set(line)], ChangeEffort.Nothing, $"had {line.Name}");
        if (other.Count > 1)
            yield return new($"{Order([.. other.Select(one => one.Line)])}: "
                + CostSentences.Names([.. other.Select(one => one.Line)]),
                [.. other.Select(one => Set(one.Line))], ChangeEffort.Nothing, "had all");
    }

    /// <summary>A change that buys something, with the word that it is bought: else a kit whose things are owned would have it
    /// for nothing. Where nobody asks what it costs, the change as it is.</summary>
    public static RigChange AsBought(Scenario scenario, RigChange change)
    {
        if (scenario.Costs is not { } terms || change.Effort != ChangeEffort.Buy)
            return change;
        var names = change.Settings.Select(setting => setting.Path.Split('.'))
            .Where(steps => steps is ["kit", _] or ["kit", _, "part"])
            .Select(steps => steps[1]).Concat(change.Renews is { } old ? [old] : []).Distinct();
        var more = names.Where(name => ((scenario.Kit.TryGetValue(name, out var item) ? item.Had : null) ?? terms.OthersAre)
            is Had.Owned or Had.Rented).Select(name => new FieldSetting($"kit.{name}.had", "bought")).ToList();
        return more.Count == 0 ? change : change with { Settings = [.. change.Settings, .. more] };
    }

    private static string Order(IReadOnlyList<KitCostLine> lines) =>
        lines.All(line => line.Had == Had.Bought) ? $"Rent {lines.Count} things in place of buying them"
        : lines.All(line => line.Had == Had.Rented) ? $"Buy {lines.Count} things in place of renting them"
        : $"Rent or buy each of {lines.Count} things, whichever costs less";

    private static decimal Saves(Scenario scenario, KitCost cost, KitCostLine line)
    {
        var part = scenario.FindPart(line.Part)!;
        var otherwise = line.Had == Had.Bought ? RentPrice.Of(part)?.For(cost.RentedDays) : part.Buy?.Amount;
        return otherwise is { } amount ? line.Total!.Value - (line.Count * amount) : 0;
    }

    private static FieldSetting Set(KitCostLine line) =>
        new($"kit.{line.Name}.had", line.Had == Had.Bought ? "rented" : "bought");
}
