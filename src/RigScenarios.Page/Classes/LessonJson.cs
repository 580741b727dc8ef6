using System.Text.Json;
using RigScenarios.Answers;
using RigScenarios.Answers.Classes;
using RigScenarios.Charts.Answers;
using RigScenarios.Charts.Balance;
using RigScenarios.Charts.Days;
using RigScenarios.Charts.Pages;
using RigScenarios.Limits;
using RigScenarios.Requests.Messages;

namespace RigScenarios.Page.Classes;

/// <summary>What a class is shown, as JSON. All that rests on the answer is read from the <see cref="ClassView"/>.</summary>
internal static class LessonJson
{
    /// <summary>Writes the fields of a view.</summary>
    /// <param name="json">Written to: an object that is begun and not ended here.</param>
    /// <param name="lesson">The task, made ready.</param>
    /// <param name="rig">The answer for the rig as the student has set it: only its parts and places are drawn from it.</param>
    /// <param name="view">What may be told of it.</param>
    public static void Write(Utf8JsonWriter json, ClassLesson lesson, RigAnswer rig, ClassView view)
    {
        json.WriteString("title", lesson.Task.Title);
        json.WriteString("text", lesson.Task.Text ?? "");
        json.WriteString("about", $"{lesson.Answer.Scenario.Title}: {lesson.Answer.TheBuild.Title ?? lesson.Answer.Build}");
        Value(json, "known", view.Known);
        Value(json, "days", view.Days);
        Value(json, "given", view.Given.Select(section => new { title = section.Title, note = section.Note,
            columns = section.Columns, rows = section.Rows }));
        Value(json, "controls", lesson.Controls.Select(Control));
        Value(json, "asked", view.Estimates.Select(told => new { name = told.Asked.Name, question = told.Asked.Question,
            unit = told.Asked.Unit, answer = told.Answer }));
        Value(json, "lines", view.Lines.Select(line => new { title = line.Title, verdict = line.Verdict.InWords(),
            words = line.Words }));
        Value(json, "hidden", view.Hidden);
        Value(json, "check", view.Check);
        json.WriteBoolean("isHiding", view.IsHiding);
        json.WriteBoolean("onHandIn", lesson.Task.Reveal == TaskReveal.OnHandIn);
        Value(json, "cautions", ClassView.Cautions);
        PartJson.WriteAll(json, [.. Drawn(rig, view), .. view.Answer is { } answer ? Told(answer) : []]);
    }

    /// <summary>A control as pages make them.</summary>
    public static object Control(ClassControl control) => new
    {
        name = control.Name,
        group = control.Group,
        label = control.Label,
        kind = control.IsNumber ? "number" : "choice",
        unit = control.Unit,
        of = "",
        minimum = control.IsNumber ? control.Least : (double?)null,
        maximum = control.IsNumber ? control.Greatest : (double?)null,
        @default = control.Start,
        isOptional = false,
        choices = control.Choices.Select(choice => new { value = choice.Value, title = choice.Title }),
    };

    private static IEnumerable<PagePart> Drawn(RigAnswer rig, ClassView view)
    {
        if (rig.Balance is { } balance)
            yield return new DrawingPart(RigDrawing.Of(balance.Rig.Placed, view.TellsBalance
                ? RigDrawingOptions.Of(balance) with { Moveable = Parts.OrderedMap<Balance.LengthRange>.Empty }
                : RigDrawingOptions.Blank(balance)));
    }

    private static IEnumerable<PagePart> Told(RigAnswer answer)
    {
        yield return AnswerBlock.Of(answer);
        if (answer.Simulation.Series.Count > 0)
            yield return new FigurePart(DayChart.Of(answer, "How the day goes"));
    }

    private static void Value<T>(Utf8JsonWriter json, string name, T value)
    {
        json.WritePropertyName(name);
        JsonSerializer.Serialize(json, value, PageJson.Options);
    }
}
