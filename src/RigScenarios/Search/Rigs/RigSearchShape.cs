using System.Globalization;
using System.Text.Json.Nodes;
using RigScenarios.Answers;
using RigScenarios.Files.Formats;
using RigScenarios.Limits;
using RigScenarios.Scenarios;
using RigScenarios.Search.Choices;

namespace RigScenarios.Search.Rigs;

/// <summary>The result of a search for programs. Fields are added, none is renamed.</summary>
public static class RigSearchShape
{
    /// <summary>The document of <c>search --json</c> (docs/json.md).</summary>
    /// <param name="result">The result.</param>
    public static JsonObject Of(RigSearchResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        var (question, front) = (result.Question, result.Front);
        return new JsonObject
        {
            ["format"] = "rigscenarios search 1",
            ["title"] = question.Scenario.Title,
            ["build"] = question.Best.Build,
            ["days"] = Texts(question.Days),
            ["answer"] = RigSearchSentences.Headline(result),
            ["is_complete"] = front.IsComplete,
            ["choices"] = front.Choices.ToString(CultureInfo.InvariantCulture),
            ["undecided_at_most"] = front.UndecidedAtMost.ToString(CultureInfo.InvariantCulture),
            ["currency"] = result.Model.Currency,
            ["wishes"] = Texts(question.Best.Wishes.Select(ChoiceFormat<RigWish>.Word)),
            ["musts"] = Texts(result.Model.AskedMusts.Select(must => RigSearchWords.Must(question, must))),
            ["rigs"] = new JsonArray([.. result.Picks.Select((pick, number) => (JsonNode)Pick(result, pick, number + 1))]),
            ["more_money"] = new JsonArray([.. result.MoreMoney.Select(step => (JsonNode)new JsonObject
            {
                ["from"] = step.From + 1, ["to"] = step.To + 1, ["extra"] = Round(step.Extra),
                ["wish"] = ChoiceFormat<RigWish>.Word(step.Wish), ["gain"] = Round(step.Gain),
            })]),
            ["next_hundred"] = new JsonArray([.. result.NextHundred.Select(next => (JsonNode)new JsonObject
            {
                ["wish"] = ChoiceFormat<RigWish>.Word(next.Wish), ["to"] = next.To + 1, ["extra"] = Round(next.Extra),
                ["gain"] = Round(next.Gain),
            })]),
            ["must_prices"] = new JsonArray([.. result.MustPrices.Select(price => (JsonNode)new JsonObject
            {
                ["must"] = RigSearchWords.Must(question, price.Must), ["extra"] = Round(price.Extra),
            })]),
            ["conflicts"] = new JsonArray([.. (result.Conflict?.Sets ?? []).Select(set => (JsonNode)new JsonObject
            {
                ["musts"] = Texts(set.Musts.Select(must => RigSearchWords.Must(question, must))),
                ["is_minimal"] = set.IsMinimal,
                ["least_cost_without"] = new JsonArray([.. set.Without.Select(cost => (JsonNode?)Round(cost))]),
                ["nearest"] = set.Nearest is { } nearest ? Parts(result, nearest.Choice) : null,
                ["nearest_why"] = set.Nearest?.Why,
            })]),
            ["upgrade"] = RigUpgradeShape.Of(result),
            ["ruled_out"] = new JsonArray([.. result.Model.Fits.Rejected().Select(pair => (JsonNode)Rejected(question, pair))]),
            ["cautions"] = Texts(Cautions(result)),
        };
    }

    /// <summary>The cautions of all rigs that are told, each once.</summary>
    /// <param name="result">The result.</param>
    public static IReadOnlyList<string> Cautions(RigSearchResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        return [.. result.Answers.SelectMany(AnswerCautions.Of).Append(AnswerCautions.Always).Distinct()
            .OrderBy(caution => caution == AnswerCautions.Always)];
    }

    private static JsonObject Pick(RigSearchResult result, RigPick pick, int number) => new()
    {
        ["rig"] = number,
        ["parts"] = Parts(result, pick.Choice),
        ["equals"] = new JsonArray([.. pick.JustAsGood.Select(choice => (JsonNode)Parts(result, choice))]),
        ["cost"] = pick.Cost is { } cost ? JsonValue.Create(cost) : null,
        ["mass_g"] = pick.Grams is { } grams ? JsonValue.Create(grams) : null,
        ["reserve_h"] = Round(pick.Figures.Reserve?.Hours),
        ["reserve_is_lower_bound"] = pick.Figures.IsReserveLowerBound,
        ["reserve_share"] = Round(pick.Figures.ReserveShare?.DecimalFractions),
        ["least_share_left"] = Round(pick.Figures.Least?.Share),
        ["least_left_at"] = pick.Figures.Least?.Element,
        ["verdict"] = pick.Figures.Verdict.InWords(),
        ["answer"] = pick.Figures.Headline,
        ["ask_first"] = pick.Figures.AskFirst.Length > 0 ? pick.Figures.AskFirst : null,
        ["next_best"] = new JsonArray([.. pick.Others.Select(other => (JsonNode)new JsonObject
        {
            ["slot"] = result.Question.Places[other.Place].Name,
            ["candidate"] = other.Candidate is { } candidate ? result.Model.Slots[other.Place].Candidates[candidate] : null,
            ["fails"] = Texts(other.Fails.Select(one => RigSearchWords.Must(result.Question, one.Must))),
            ["words"] = RigSearchSentences.Why(result, other),
        })]),
    };

    internal static JsonObject Parts(RigSearchResult result, Choice choice) =>
        new(result.Question.Places.Select((place, number) => KeyValuePair.Create(place.Name,
            (JsonNode?)new JsonObject
            {
                ["candidate"] = place.Candidates[choice[number]].Name, ["title"] = place.Candidates[choice[number]].Title,
                ["part"] = place.Candidates[choice[number]].Item?.Part,
            })));

    private static JsonObject Rejected(BestRigQuestion question, RejectedPair pair) => new()
    {
        ["slot"] = question.Places[pair.Place].Name,
        ["candidate"] = question.Places[pair.Place].Candidates[pair.Candidate].Name,
        ["with_slot"] = pair.OtherPlace is { } place ? question.Places[place].Name : null,
        ["with_candidate"] = pair is { OtherPlace: { } there, Other: { } other }
            ? question.Places[there].Candidates[other].Name : null,
        ["reason"] = pair.Reason,
    };

    internal static JsonArray Texts(IEnumerable<string> texts) => new([.. texts.Select(text => (JsonNode)text)]);

    private static double? Round(double? value) =>
        value is { } number && double.IsFinite(number) ? Math.Round(number, 4) : null;
}
