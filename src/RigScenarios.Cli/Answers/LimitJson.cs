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
        worst = Figure(limit.Worst, limit.Allowed?.Unit),
        allowed = limit.Allowed is { } allowed ? Figure(allowed, null) : null,
        left = limit.Left is { } left ? Figure(Quantity.From(left, limit.Allowed!.Unit), null) : null,
        left_percent = limit.Share is { } share && double.IsFinite(share) ? JsonText.Round(100 * share) : null,
        force = limit.Allowed is null ? null : limit.Basis.Force.ToString().ToLowerInvariant(),
        source = limit.Basis.Source,
    };

    private static object Figure(IQuantity quantity, Enum? unit)
    {
        var told = unit is null ? quantity : quantity.ToUnit(unit);
        return new { value = JsonText.Round((double)told.Value), unit = UnitsNetSetup.Default.UnitAbbreviations.GetDefaultAbbreviation(told.Unit.GetType(), Convert.ToInt32(told.Unit, null)) };
    }
}
