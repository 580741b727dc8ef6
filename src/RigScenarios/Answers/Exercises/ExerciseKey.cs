using System.Text;

namespace RigScenarios.Answers.Exercises;

/// <summary>A cause in the teacher's key: every cell is finished text.</summary>
/// <param name="What">What is wrong.</param>
/// <param name="Alone">What the sound rig does with it alone.</param>
/// <param name="Without">What the rig does without it, the other causes left.</param>
/// <param name="Repair">What puts it right.</param>
/// <param name="Costs">What that costs.</param>
public sealed record KeyRow(string What, string Alone, string Without, string Repair, string Costs);

/// <summary>The teacher's key in words: what was planted, what each cause does, what puts it right. All of it was run.</summary>
public static class ExerciseKey
{
    /// <summary>The causes, each with what it does.</summary>
    /// <param name="exercise">The exercise.</param>
    public static IReadOnlyList<KeyRow> Causes(Exercise exercise)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        return [.. exercise.Causes.Select((cause, at) => new KeyRow(cause.Words, AnswerSentences.Headline(exercise.Alone[at]),
            AnswerSentences.Headline(exercise.Without[at]), $"{cause.Repair.Words}.", Costs(cause.Repair)))];
    }

    /// <summary>What the rig does with all repairs, and what they cost.</summary>
    /// <param name="exercise">The exercise.</param>
    public static IReadOnlyList<string> Outcome(Exercise exercise)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        var most = exercise.Budget is { } budget ? $" of {budget}" : "";
        return [AnswerSentences.Headline(exercise.Repaired),
            exercise.KeyCost is { } cost ? $"The repairs cost {cost}{most}." : "The repairs cost nothing."];
    }

    /// <summary>The key as a text file (Markdown).</summary>
    /// <param name="exercise">The exercise.</param>
    public static string Markdown(Exercise exercise)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        var text = new StringBuilder($"# {ExerciseSentences.Title(exercise)}: teacher's key\n\n");
        text.Append($"Build \"{exercise.Rig.Build}\", {string.Join(", ", exercise.Rig.Days)}, seed {exercise.Seed}.\n\n");
        text.Append("## The task\n\n").AppendJoin('\n', ExerciseSentences.Task(exercise)).Append("\n\n");
        text.Append($"The rig as the student gets it: {AnswerSentences.Headline(exercise.Rig)}\n\n");
        foreach (var line in AnswerSentences.Questions(exercise.Rig))
            text.Append($"- {line.Title}: {line.Words}\n");
        foreach (var (at, row) in Causes(exercise).Index())
        {
            var cause = exercise.Causes[at];
            text.Append($"\n## Cause {at + 1}\n\n{row.What}\n\n");
            text.Append($"- The sound rig with it alone: {row.Alone}\n- This rig without it: {row.Without}\n");
            text.Append($"- What puts it right: {row.Repair} ({row.Costs})\n\n");
            foreach (var setting in cause.Repair.Settings)
                text.Append($"      --fix \"{setting}\"\n");
            text.Append('\n');
            foreach (var (step, hint) in cause.Hints.Index())
                text.Append($"{step + 1}. {hint}\n");
        }
        text.Append("\n## With the key\n\n").AppendJoin('\n', Outcome(exercise));
        text.Append("\n\nPredicted, not measured. Another way that works within the budget is as right as this one: ");
        return text.Append("let the check run it.\n").Append($"\n{AnswerCautions.Always}\n").ToString();
    }

    private static string Costs(RigChange repair) => repair.Effort switch
    {
        ChangeEffort.Buy => repair.Price is { } price ? $"{price}" : "price not known",
        ChangeEffort.FromKit => "nothing, from the kit",
        _ => "nothing",
    };
}
