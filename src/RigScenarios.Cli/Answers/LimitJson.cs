using RigScenarios.Answers;
using RigScenarios.Limits;
using UnitsNet;

namespace RigScenarios.Cli.Answers;

/// <summary>A limit for programs: numbers with their units, never a text that holds both.</summary>
internal static class LimitJson
{
    public static object Of(Limit limit) => new
    {
        element = limit.Element,
        kind = limit.Kind.ToString(),
        situation = limit.Situation,
        must_stay = limit.Side == LimitSide.StaysUnder ? "under" : "over",
        worst = Figure(limit.Worst),
        allowed = limit.Allowed is { } allowed ? Figure(allowed) : null,
        left = limit.Left is { } left ? Figure(Quantity.From(left, limit.Allowed!.Unit)) : null,
        left_percent = limit.Share is { } share && double.IsFinite(share) ? JsonText.Round(100 * share) : null,
        force = limit.Allowed is null ? null : limit.Basis.Force.ToString().ToLowerInvariant(),
        source = limit.Basis.Source,
    };

    private static object Figure(IQuantity quantity)
    {
        var (value, unit) = LimitSentences.Plain(quantity);
        return new { value = JsonText.Round(value), unit };
    }
}
