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
    /// <param name="given">What is given of it.</param>
    /// <param name="charts">The charts of a day; null where the parts are told by themselves (<see cref="WriteParts"/>).</param>
    /// <param name="seeks">Whether what would make it work is looked for after this.</param>
    /// <param name="text">The scenario file's text; null while there is none, or where it isn't asked for.</param>
    public static void Write(Utf8JsonWriter json, RigSoFar answer, GivenRig given, Func<RigAnswer, DayParts>? charts,
        bool seeks, string? text)
    {
        json.WriteObjects("problems", Problem.Of(answer.Problems), Problem.Write);
        json.WriteObjects("missing", answer.Missing, static (json, field) =>
        {
            json.WriteString("path", field.Path);
            json.WriteString("label", field.Label);
        });
        RigQuestionsJson.WriteView(json, given);
        WriteSentence(json, answer);
        json.WriteObjects("wiring", answer.Wiring, WriteWiring);
        json.WriteObjects("cables", answer.Cables, static (json, cable) =>
        {
            json.WriteString("value", cable.Value);
            json.WriteString("title", cable.Title);
        });
        json.WriteObjects("assumed", answer.Assumed, static (json, assumed) =>
        {
            json.WriteString("path", assumed.Field);
            json.WriteString("name", assumed.Name);
            json.WriteString("value", assumed.Value);
            json.WriteString("why", assumed.Why);
            json.WriteString("source", Source(assumed));
        });
        json.WriteTexts("age", answer.Answer is { } aged ? AgeOfAnswer.Lines(aged) : []);
        if (answer.Answer is { } first)
        {
            json.WritePropertyName("first");
            PartJson.Write(json, First(answer, first));
        }
        json.WriteBoolean("seeks", seeks);
        if (charts is not null)
            WriteParts(json, answer, charts);
        json.WriteObjects("moveable", answer.Moveable, static (json, part) =>
        {
            json.WriteString("value", part.Name);
            json.WriteString("title", part.Title);
            json.WriteNumber("least", Math.Round(part.Range.Least.Millimeters, 3));
            json.WriteNumber("greatest", Math.Round(part.Range.Greatest.Millimeters, 3));
            json.WriteNumber("at", Math.Round(part.At.Millimeters, 3));
            json.WriteBoolean("isUsual", part.IsUsual);
        });
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
    public static void Write(Utf8JsonWriter json, IReadOnlyList<AssumptionEffect> effects) => json.WriteObjects("restsOn",
        LeadingAssumptions.RestsOn(effects), static (json, rest) =>
        {
            json.WriteString("path", rest.Path);
            json.WriteString("text", rest.Text);
        });

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

    private static void WriteSentence(Utf8JsonWriter json, RigSoFar answer)
    {
        if (answer.Sentence.Length == 0)
        {
            json.WriteNull("answer");
            return;
        }
        json.WriteStartObject("answer");
        json.WriteString("text", answer.Sentence);
        json.WriteTexts("cautions", answer.Cautions);
        json.WriteEndObject();
    }

    private static void WriteWiring(Utf8JsonWriter json, WiringLine line)
    {
        json.WriteString("thing", line.Thing);
        json.WriteString("title", line.Title);
        json.WriteString("fedBy", line.FedBy);
        json.WriteString("fedByTitle", line.FedByTitle);
        json.WriteBoolean("proposed", line.Proposed);
        json.WriteString("why", line.Why);
        json.WriteString("part", line.Part);
        json.WriteBoolean("isDevice", line.IsDevice);
        json.WriteString("element", line.Thing);
        json.WriteString("outlet", line.Outlet);
        json.WriteString("cableTitle", line.CableTitle);
        json.WriteObjects("choices", line.Choices, static (json, choice) =>
        {
            json.WriteString("value", choice.Value);
            json.WriteString("title", choice.Title);
            json.WriteObjects("outlets", choice.Outlets, static (json, outlet) =>
            {
                json.WriteString("name", outlet.Name);
                json.WriteString("words", outlet.Words);
                json.WriteString("whyNot", outlet.WhyNot);
            });
        });
    }
}
