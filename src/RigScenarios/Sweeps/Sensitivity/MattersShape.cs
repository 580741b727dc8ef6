using System.Text.Json.Nodes;
using RigScenarios.Limits;
using UnitsNet;

namespace RigScenarios.Sweeps.Sensitivity;

/// <summary>Which uncertainty matters, for programs: docs/uncertainty.md lists the fields.</summary>
public static class MattersShape
{
    /// <summary>The document.</summary>
    /// <param name="answer">The answer.</param>
    public static JsonObject Of(SensitivityAnswer answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        return new()
        {
            ["format"] = "rigscenarios uncertainty 1",
            ["title"] = answer.AsGiven.Scenario.Title,
            ["build"] = answer.AsGiven.Build,
            ["days"] = List(answer.AsGiven.Days, day => JsonValue.Create(day)),
            ["figure"] = answer.Figure.Name,
            ["unit"] = answer.Figure.Unit,
            ["answer"] = MattersSentences.Headline(answer),
            ["lasts"] = answer.Lasts is { } lasts ? Of(lasts) : null,
            ["whole"] = answer.Whole is { } whole ? Of(whole) : null,
            ["quantiles"] = Quantiles(answer.Bands),
            ["ends_at_h"] = answer.EndsAt is { } ends ? Quantiles(ends) : null,
            ["along"] = answer.Along is { } along ? new JsonObject
            {
                ["path"] = along.Path,
                ["places"] = List(along.Places, place => new JsonObject
                {
                    ["at"] = place.At, ["quantiles"] = Quantiles(along.Shares, place),
                }),
            } : null,
            ["mean"] = Round(answer.Indices.Mean),
            ["deviation"] = Round(Math.Sqrt(answer.Indices.Variance)),
            ["things"] = List(answer.Indices.Things, thing => new JsonObject
            {
                ["name"] = thing.Name, ["paths"] = Paths(thing.Paths), ["first_order"] = Of(thing.FirstOrder),
                ["total"] = Of(thing.Total),
            }),
            ["alone"] = new JsonObject
            {
                ["middle"] = Round(answer.Tornado.Middle), ["low_share"] = answer.Tornado.LowShare,
                ["high_share"] = answer.Tornado.HighShare,
                ["bars"] = List(answer.Tornado.Bars, bar => new JsonObject
                {
                    ["name"] = bar.Name, ["path"] = bar.Path, ["low"] = bar.LowText, ["high"] = bar.HighText,
                    ["at_low"] = Round(bar.AtLow), ["at_high"] = Round(bar.AtHigh),
                }),
            },
            ["measure"] = List(answer.Removals, gain => new JsonObject
            {
                ["act"] = gain.Act, ["names"] = Paths(gain.Names), ["paths"] = Paths(gain.Paths),
                ["variance_gone"] = Of(gain.VarianceGone), ["deviation_left"] = Round(gain.SpreadLeft),
                ["lasts"] = gain.Lasts is { } guess ? Of(guess) : null,
            }),
            ["uncertain"] = List(answer.Question.Uncertain!.Figures, figure => new JsonObject
            {
                ["name"] = figure.Name, ["path"] = figure.Field.Path, ["spread"] = figure.Field.Spread.Words,
                ["why"] = figure.Why, ["source"] = figure.Source?.ToString(),
                ["has_part_in_the_figure"] = answer.Uncertain.Figures.Contains(figure),
            }),
            ["together"] = List(answer.Question.Uncertain!.Correlations, pair => new JsonObject
            {
                ["first"] = pair.First, ["second"] = pair.Second, ["coefficient"] = pair.Coefficient,
            }),
            ["rests_on"] = Paths(MattersSentences.Basis(answer)),
            ["rows"] = answer.Indices.Rows, ["rows_unknown"] = answer.Indices.RowsUnknown,
            ["level_percent"] = Round(answer.Indices.Level.Percent), ["runs"] = answer.Runs,
            ["seed"] = answer.Question.Options.Seed, ["way"] = answer.Way.Kind.ToString(),
        };
    }

    private static JsonObject Of(Chance chance) => new()
    {
        ["yes"] = chance.Yes, ["no"] = chance.No, ["unknown"] = chance.Unknown, ["share"] = Share(chance.Share),
        ["standard_error"] = Share(chance.StandardError), ["low"] = Share(chance.Interval()?.Low),
        ["high"] = Share(chance.Interval()?.High),
    };

    private static JsonObject Of(WholeChance whole) => new()
    {
        ["nothing_fails"] = Of(whole.NothingFails), ["holds"] = Of(whole.Holds),
        ["verdicts"] = List([.. whole.Verdicts.OrderBy(one => one.Key)],
            one => new JsonObject { ["verdict"] = one.Key.InWords(), ["in_runs"] = one.Value }),
        ["failing"] = List([.. whole.Failing.OrderBy(one => one.Key)],
            one => new JsonObject { ["question"] = one.Key.ToString().ToLowerInvariant(), ["in_runs"] = one.Value }),
        ["measure"] = List(whole.Gains, gain => new JsonObject
        {
            ["act"] = gain.Act, ["names"] = Paths(gain.Names), ["paths"] = Paths(gain.Paths), ["fails"] = Of(gain.Guess),
        }),
    };

    private static JsonObject Of(GuessGain guess) => new()
    {
        ["wrong_now"] = Share(guess.WrongNow), ["wrong_then"] = Share(guess.WrongThen),
        ["wrong_then_error"] = Share(guess.StandardError), ["gain"] = Share(guess.Gain),
    };

    private static JsonObject Of(IndexEstimate index) => new()
    {
        ["value"] = Round(index.Value), ["low"] = Round(index.Low), ["high"] = Round(index.High),
    };

    private static JsonArray Quantiles(QuantileBands bands) => Quantiles(bands.Shares, bands.Places[0]);

    // Nothing known: no quantiles, which is not the same as quantiles of 0.
    private static JsonArray Quantiles(IReadOnlyList<double> shares, BandAt place) => List(
        shares.Zip(place.Values).ToList(),
        one => new JsonObject { ["share"] = one.First, ["value"] = Round(one.Second) });

    private static JsonArray Paths(IReadOnlyList<string> texts) => List(texts, text => JsonValue.Create(text));

    private static JsonArray List<T>(IReadOnlyList<T> items, Func<T, JsonNode?> of) => new([.. items.Select(of)]);

    private static double? Share(Ratio? share) => share is { } one ? Round(one.DecimalFractions) : null;

    private static double? Round(double value) => double.IsFinite(value) ? Math.Round(value, 4) : null;
}
