using System.Text.Json;
using RigScenarios.Answers;
using RigScenarios.Batteries;
using RigScenarios.Charts.Answers;
using RigScenarios.Charts.Balance;
using RigScenarios.Charts.Pages;
using RigScenarios.Drafts;
using RigScenarios.Requests.Messages;

namespace RigScenarios.Requests.Rigs;

/// <summary>The answer to what is given of a rig as JSON: what can be said so far, what is missing, what feeds what, what was
/// assumed.</summary>
internal static class RigAnswerJson
{
    /// <param name="json">Written to: an object that is begun and not ended here.</param>
    /// <param name="answer">What can be said of it.</param>
    /// <param name="view">The rig as the form lists it.</param>
    /// <param name="charts">The charts of a day; null where the parts are told by themselves (<see cref="WriteParts"/>).</param>
    /// <param name="seeks">Whether what would make it work is looked for after this.</param>
    /// <param name="text">The scenario file's text; null while there is none, or where it isn't asked for.</param>
    public static void Write(Utf8JsonWriter json, RigSoFar answer, object view, Func<RigAnswer, DayParts>? charts, bool seeks,
        string? text)
    {
        WriteValue(json, "problems", Problem.Of(answer.Problems));
        WriteValue(json, "missing", answer.Missing.Select(field => new { path = field.Path, label = field.Label }));
        WriteValue(json, "view", view);
        WriteValue(json, "answer", answer.Sentence.Length > 0
            ? new { text = answer.Sentence, cautions = answer.Cautions } : null);
        WriteValue(json, "wiring", answer.Wiring.Select(line => new
        {
            thing = line.Thing,
            title = line.Title,
            fedBy = line.FedBy,
            fedByTitle = line.FedByTitle,
            proposed = line.Proposed,
            why = line.Why,
            part = line.Part,
            isDevice = line.IsDevice,
            element = line.Thing,
            outlet = line.Outlet,
            cableTitle = line.CableTitle,
            choices = line.Choices.Select(choice => new
            {
                value = choice.Value,
                title = choice.Title,
                outlets = choice.Outlets.Select(outlet => new { name = outlet.Name, words = outlet.Words,
                    whyNot = outlet.WhyNot }),
            }),
        }));
        WriteValue(json, "cables", answer.Cables.Select(cable => new { value = cable.Value, title = cable.Title }));
        WriteValue(json, "assumed",
            answer.Assumed.Select(assumed => new { path = assumed.Field, name = assumed.Name, value = assumed.Value,
            why = assumed.Why, source = Source(assumed) }));
        WriteValue(json, "age", answer.Answer is { } aged ? AgeOfAnswer.Lines(aged) : []);
        if (answer.Answer is { } first)
        {
            json.WritePropertyName("first");
            PartJson.Write(json, First(answer, first));
        }
        json.WriteBoolean("seeks", seeks);
        if (charts is not null)
            WriteParts(json, answer, charts);
        WriteValue(json, "moveable", answer.Moveable.Select(part => new
        {
            value = part.Name,
            title = part.Title,
            least = Math.Round(part.Range.Least.Millimeters, 3),
            greatest = Math.Round(part.Range.Greatest.Millimeters, 3),
            at = Math.Round(part.At.Millimeters, 3),
            isUsual = part.IsUsual,
        }));
        json.WriteString("batterySlide", answer.BatterySlide);
        json.WriteString("mass", Mass(answer.Totals));
        json.WriteString("price", answer.Totals.Cost is { } cost ? CostSentences.InATable(cost) : "");
        json.WriteBoolean("isWhole", answer.Scenario is not null);
        json.WriteString("text", text);
    }

    /// <summary>The charts and drawings of an answer as JSON; none while there is no answer.</summary>
    /// <param name="json">Written to: an object that is begun and not ended here.</param>
    /// <param name="answer">What can be said of it.</param>
    /// <param name="charts">The charts of a day.</param>
    public static void WriteParts(Utf8JsonWriter json, RigSoFar answer, Func<RigAnswer, DayParts> charts) =>
        PartJson.WriteAll(json, answer.Answer is { } now && charts(now) is var ofDay
            ? [.. ofDay.Day, .. BalanceParts.Of(now), .. ofDay.Wiring] : []);

    /// <summary>What would make it work, as JSON.</summary>
    /// <param name="json">Written to: an object that is begun and not ended here.</param>
    /// <param name="sets">What was found.</param>
    public static void Write(Utf8JsonWriter json, WorkingSets sets)
    {
        json.WriteString("text", WouldWorkSentences.Heading(sets) ?? "");
        PartJson.WriteAll(json, AnswerBlock.WouldWork(sets));
    }

    /// <summary>What the answer rests on, as JSON.</summary>
    /// <param name="json">Written to: an object that is begun and not ended here.</param>
    /// <param name="effects">What was found.</param>
    public static void Write(Utf8JsonWriter json, IReadOnlyList<AssumptionEffect> effects) => WriteValue(json, "restsOn",
        LeadingAssumptions.RestsOn(effects).Select(rest => new { path = rest.Path, text = rest.Text }));

    /// <summary>The first screenful; its cautions stand below what would make it work. Without a day of its own a rig has no
    /// verdict yet, only a sentence.</summary>
    private static AnswerPart First(RigSoFar rig, RigAnswer answer) =>
        rig.IsForDay ? AnswerBlock.Of(answer) with { Text = rig.Sentence, Cautions = [] }
            : new AnswerPart(rig.Sentence, []);

    private static string Source(AssumedValue assumed) => assumed.Source.ToString() ?? "";

    private static string Mass(RigTotals totals) =>
        totals.Mass.Grams <= 0 ? "" : PartInWords.MassText(totals.Mass) + Without(totals.WithoutMass.Count, "of unknown mass");

    private static string Without(int count, string what) =>
        count == 0 ? "" : $" ({count} {(count == 1 ? "thing" : "things")} {what} not counted)";

    private static void WriteValue<T>(Utf8JsonWriter json, string name, T value)
    {
        json.WritePropertyName(name);
        JsonSerializer.Serialize(json, value, PageJson.Options);
    }
}
