using System.Text.Json.Nodes;
using RigScenarios.Limits;

namespace RigScenarios.Answers;

/// <summary>The answer for programs: one shape for every command and for the page (docs/json.md). Fields are added, none is
/// renamed.</summary>
public static class AnswerShape
{
    /// <summary>One entry of <c>answers</c>.</summary>
    /// <param name="answer">The answer.</param>
    /// <param name="sets">What would make it work; null where nobody asked, so that the field is null.</param>
    public static JsonObject Of(RigAnswer answer, WorkingSets? sets)
    {
        ArgumentNullException.ThrowIfNull(answer);
        return new JsonObject
        {
            ["build"] = answer.Build,
            ["days"] = Texts(answer.Days),
            ["verdict"] = answer.Verdict.InWords(),
            ["answer"] = AnswerSentences.Headline(answer),
            ["questions"] = new JsonArray([.. AnswerSentences.Questions(answer)
                .Select(line => (JsonNode)Question(answer.Of(line.Kind)!, line))]),
            ["stays_behind"] = new JsonArray([.. answer.Staying.Select(battery => (JsonNode)new JsonObject
            {
                ["battery"] = battery.Name, ["title"] = battery.Title, ["journey"] = battery.Journey,
            })]),
            ["reserve_h"] = Round(answer.Reserve.Time.Hours),
            ["reserve_Wh"] = Round(answer.Reserve.Energy.WattHours),
            ["reserve_is_lower_bound"] = answer.Reserve.IsLowerBound,
            ["tightest_day"] = answer.Tightest.Day,
            ["tightest_reserve_h"] = Round(answer.Tightest.Reserve.Time.Hours),
            ["devices"] = new JsonArray([.. answer.Simulation.Devices.Select(device => (JsonNode)new JsonObject
            {
                ["device"] = device.Key, ["title"] = device.Value.Title, ["essential"] = device.Value.Essential,
                ["runtime_h"] = Round(device.Value.Runtime.Hours),
                ["stopped_by"] = device.Value.FirstStop?.Reason.ToString(),
            })]),
            ["limits"] =
                new JsonArray(
                [.. answer.Questions.SelectMany(question => question.Limits.Select(limit => (question.Kind, Limit: limit)))
                .OrderBy(item => item.Limit.Rank)
                .Select(item => Limit(item.Limit, item.Kind))]),
            ["cost"] = CostShape.Of(answer),
            ["would_work"] = sets is null ? null : WouldWorkOf(sets),
            ["ages"] = AgeOfAnswer.Shape(answer),
            ["age_least_reserve_h"] = Round(answer.AgeSpread?.LeastReserve.Time.Hours),
            ["age_greatest_reserve_h"] = Round(answer.AgeSpread?.GreatestReserve.Time.Hours),
            ["expected_error_percent"] = Round(answer.Simulation.ExpectedError.Share?.Percent),
            ["expected_error_why"] = answer.Simulation.ExpectedError.Why,
            ["warmth"] = answer.Warmth is { } warmth ? Warmth(warmth) : null,
            ["comes_back"] = answer.ComesBack is { } back ? Back(answer, back) : null,
            ["cautions"] = Texts(AnswerCautions.Of(answer)),
        };
    }

    /// <summary>What would make it work: <c>sets</c>, or what was tried and what stays in the way.</summary>
    /// <param name="sets">What was found.</param>
    public static JsonObject WouldWorkOf(WorkingSets sets)
    {
        ArgumentNullException.ThrowIfNull(sets);
        return new JsonObject
        {
            ["words"] = WouldWorkSentences.Heading(sets),
            ["reach"] = sets.Sets.Count > 0 ? sets.Reach.InWords() : null,
            ["sets"] = new JsonArray([.. sets.Sets.Select(set => (JsonNode)Set(set))]),
            ["tried"] = Texts(sets.Tried),
            ["runs"] = sets.Run,
            ["all_tried"] = sets.Exhausted,
            ["nearest"] = sets.Sets.Count == 0 && sets.Nearest is { } nearest ? Set(nearest) : null,
            ["in_the_way"] = Texts(WouldWorkSentences.InTheWay(sets)),
        };
    }

    /// <summary>One limit with numbers and a unit; a voltage, temperature or share is told in the unit that the figures
    /// have.</summary>
    /// <param name="limit">The limit.</param>
    /// <param name="question">The question that it belongs to; null to leave it out.</param>
    public static JsonObject Limit(Limit limit, QuestionKind? question = null)
    {
        ArgumentNullException.ThrowIfNull(limit);
        var (worst, unit) = LimitSentences.Plain(limit.Worst);
        var allowed = limit.Allowed is { } most ? LimitSentences.Plain(most).Value : (double?)null;
        return new JsonObject
        {
            ["question"] = question is { } kind ? Word(kind) : null,
            ["element"] = limit.Element,
            ["kind"] = Hyphens(limit.Kind.ToString()),
            ["case"] = Hyphens(limit.Case.ToString()),
            ["situation"] = limit.Situation.Length == 0 ? null : limit.Situation,
            ["side"] = limit.Side == LimitSide.StaysUnder ? "stays under" : "stays over",
            ["worst"] = Round(worst),
            ["allowed"] = Round(allowed),
            ["left"] = Round(allowed is { } is_ ? (limit.Side == LimitSide.StaysUnder ? is_ - worst : worst - is_) : null),
            ["unit"] = unit,
            ["share"] = limit.Kind == LimitKind.Temperature || limit.Share is not { } share || double.IsInfinity(share)
                ? null : Round(share),
            ["at_h"] = Round(limit.At?.Time.Hours),
            ["day"] = limit.At?.Day,
            ["block"] = limit.At?.Block,
            ["force"] = Hyphens(limit.Basis.Force.ToString()),
            ["source"] = limit.Basis.Source,
        };
    }

    /// <summary>A question's name: <c>power</c>, <c>wiring</c>, <c>balance</c>, <c>stand</c>, <c>travel</c>,
    /// <c>cost</c>.</summary>
    /// <param name="kind">The question.</param>
    public static string Word(QuestionKind kind) => kind.ToString().ToLowerInvariant();

    private static JsonObject Question(AnswerQuestion question, QuestionLine line) => new JsonObject
    {
        ["question"] = Word(question.Kind), ["verdict"] = question.Verdict.InWords(), ["words"] = line.Words,
        ["least"] = question.Least is { } least ? Limit(least) : null,
        ["missing"] = Texts(question.Missing),
        ["missing_fields"] = Texts(question.MissingPaths),
    };

    private static JsonObject Warmth(WarmthDoubt warmth) => new()
    {
        ["heat_lost_within_percent"] = Round(WarmthDoubt.Spread.Percent),
        ["more_lost_h"] = Round(warmth.Cooled.Hours),
        ["less_lost_h"] = Round(warmth.Kept?.Hours),
        ["decides"] = warmth.Decides,
        ["words"] = ColdWords.Of(warmth),
    };

    private static JsonObject Back(RigAnswer answer, ComesBack back) => new()
    {
        ["battery"] = back.Battery,
        ["inside_percent"] = Round(back.Inside.Percent),
        ["held_back_percent"] = Round(back.HeldBack.Percent),
        ["after"] = new JsonArray([.. back.Rests.Select(rest => (JsonNode)new JsonObject
        {
            ["rest_min"] = Round(rest.Rest.Minutes), ["at_C"] = Round(rest.Place?.DegreesCelsius),
            ["more_h"] = Round(rest.More.Hours),
        })]),
        ["words"] = ColdWords.Of(back, answer.Plan.Batteries.Count > 1 ? back.Battery : null),
    };

    private static JsonObject Set(WorkingSet set) => new()
    {
        ["words"] = WouldWorkSentences.Of(set),
        ["changes"] = new JsonArray([.. set.Changes.Select(change => (JsonNode)new JsonObject
        {
            ["words"] = change.Words, ["provided"] = change.Provided,
            ["set"] = Texts(change.Settings.Select(setting => setting.ToString())),
            ["effort"] = Hyphens(change.Effort.ToString()), ["price"] = change.Price?.ToString(),
        })]),
        ["set"] = Texts(set.Settings.Select(setting => setting.ToString())),
        ["price"] = set.Price?.ToString(),
        ["costs_more"] = set.CostsMore?.Amount,
        ["verdict"] = set.Then.Verdict.InWords(),
        ["reserve_h"] = Round(set.Then.Reserve.Time.Hours),
        ["reserve_Wh"] = Round(set.Then.Reserve.Energy.WattHours),
        ["questions"] =
            new JsonArray([.. set.Then.Questions.Select(question => (JsonNode)new JsonObject { ["question"] = Word(question.Kind),
            ["verdict"] = question.Verdict.InWords() })]),
    };

    private static JsonArray Texts(IEnumerable<string> texts) => new([.. texts.Select(text => (JsonNode)text)]);

    private static double? Round(double? value) => value is { } number ? Math.Round(number, 4) : null;

    private static string Hyphens(string name) =>
        string.Concat(name.Select((letter, index) => char.IsUpper(letter) ? (index > 0 ? "-" : "") + char.ToLowerInvariant(letter)
        : letter.ToString()));
}
