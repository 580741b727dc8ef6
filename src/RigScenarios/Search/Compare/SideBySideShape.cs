using System.Text.Json.Nodes;
using RigScenarios.Answers;
using RigScenarios.Limits;

namespace RigScenarios.Search.Compare;

/// <summary>A comparison for programs (docs/side-by-side.md). Fields are added, none is renamed.</summary>
public static class SideBySideShape
{
    /// <summary>The document.</summary>
    /// <param name="side">The comparison.</param>
    public static JsonObject Of(SideBySide side)
    {
        ArgumentNullException.ThrowIfNull(side);
        return new JsonObject
        {
            ["format"] = "rigscenarios compare 1",
            ["answer"] = SideBySideWords.Headline(side),
            ["base"] = side.Rigs[side.Base].Name,
            ["same_days"] = side.HaveSameDays,
            ["rigs"] = Array(side.Rigs.Select(Rig)),
            ["verdicts"] = Array(side.Verdicts.Select(row => new JsonObject
            {
                ["question"] = row.Kind is { } kind ? AnswerShape.Word(kind) : null,
                ["verdicts"] = Texts(row.Verdicts.Select(verdict => verdict?.InWords())),
                ["best"] = Names(side, row.Best),
            })),
            ["figures"] = Array(side.Figures.Select(row => Figure(side, row))),
            ["limits"] = Array(side.Limits.Select(row => new JsonObject
            {
                ["question"] = AnswerShape.Word(row.Question), ["words"] = SideBySideWords.Name(row),
                ["limits"] = new JsonArray([.. row.Limits.Select(limit => limit is null ? null
                    : (JsonNode)AnswerShape.Limit(limit))]),
            })),
            ["notices"] = Texts(SideBySideWords.Notices(side)),
            ["cautions"] = Texts(SideBySideWords.Cautions(side)),
        };
    }

    /// <summary>A figure's name for programs: <c>reserve</c>, <c>wiring-left</c>, <c>mass</c>, …</summary>
    /// <param name="kind">The figure.</param>
    public static string Word(FigureKind kind) => Hyphens(kind.ToString());

    /// <summary>The unit of a row; of money its currency, or all of them where they differ.</summary>
    internal static string Unit(FigureRow row) => row.Kind != FigureKind.Cost ? FigureWords.Unit(row.Kind)
        : string.Join("; ", row.Values.Select(value => value.Amount?.Money?.Currency).OfType<string>().Distinct());

    /// <summary>A standing for programs: <c>better</c>, <c>worse</c>, <c>different</c>, <c>none-to-tell</c>,
    /// <c>not-known</c>.</summary>
    /// <param name="standing">The standing.</param>
    public static string Word(Standing standing) => Hyphens(standing.ToString());

    private static JsonObject Rig(ComparedRig rig) => new()
    {
        ["name"] = rig.Name, ["title"] = rig.Title, ["scenario"] = rig.Answer.Scenario.Title, ["build"] = rig.Answer.Build,
        ["days"] = Texts(rig.Answer.Days), ["verdict"] = rig.Answer.Verdict.InWords(),
        ["answer"] = AnswerSentences.Headline(rig.Answer),
    };

    private static JsonObject Figure(SideBySide side, FigureRow row) => new()
    {
        ["figure"] = Word(row.Kind), ["words"] = FigureWords.Name(row.Kind), ["unit"] = Unit(row),
        ["wanted"] = row.Goal.ToString().ToLowerInvariant(),
        ["values"] = Array(row.Values.Select((value, place) => new JsonObject
        {
            ["rig"] = side.Rigs[place].Name, ["value"] = Round(value.Number), ["at_least"] = value.IsAtLeast,
            ["missing"] = value.Missing.Length == 0 ? null : value.Missing,
            ["rests_on"] = value.RestsOn.Length == 0 ? null : value.RestsOn,
        })),
        ["differences"] = Array(row.Differences.Select((difference, place) => (difference, place))
            .Where(item => item.difference is not null).Select(item => Difference(side.Rigs[item.place].Name, item.difference!))),
        ["best"] = Names(side, row.Best),
    };

    private static JsonObject Difference(string rig, FigureDifference difference) => new()
    {
        ["rig"] = rig, ["difference"] = Number(difference.Amount), ["difference_at_least"] = difference.IsAtLeast,
        ["within"] = Number(difference.Within), ["stands"] = Word(difference.Standing),
        ["why"] = difference.Missing.Length == 0 ? null : difference.Missing,
        ["split"] = difference.Split is not { } split ? null : new JsonObject
        {
            ["way"] = Hyphens(split.Way.ToString()),
            ["shares"] = Array(split.Shares.Select(share => new JsonObject
            {
                ["name"] = share.Name, ["share"] = Number(share.Amount),
            })),
            ["together"] = Number(split.Together), ["not_split_because"] = split.Missing.Length == 0 ? null : split.Missing,
        },
    };

    private static double? Number(FigureAmount? amount) => Round(amount?.Number);

    private static double? Round(double? value) => value is { } number ? Math.Round(number, 4) : null;

    private static JsonArray Array(IEnumerable<JsonObject> items) => new([.. items.Select(item => (JsonNode)item)]);

    private static JsonArray Texts(IEnumerable<string?> texts) => new([.. texts.Select(text => (JsonNode?)text)]);

    private static JsonArray Names(SideBySide side, IEnumerable<int> places) => Texts(places.Select(place =>
        side.Rigs[place].Name));

    private static string Hyphens(string name) => string.Concat(name.Select((letter, index) =>
        char.IsUpper(letter) ? (index > 0 ? "-" : "") + char.ToLowerInvariant(letter) : letter.ToString()));
}
