using RigScenarios.Limits;
using RigScenarios.Parts;
using RigScenarios.Scenarios;

namespace RigScenarios.Answers.Exercises;

/// <summary>
/// A task for a class: a sound rig on which a few things were made wrong, each of which alone makes it fail. What the student
/// gets holds no word of them; every claim about them was run.
/// </summary>
public sealed record Exercise
{
    /// <summary>The most causes that an exercise has.</summary>
    public const int MostCauses = 3;

    /// <summary>The seed that it was drawn with; the same seed on the same file gives the same exercise.</summary>
    public required int Seed { get; init; }

    /// <summary>The rig while it was sound, with the one build and the days that the exercise is about.</summary>
    public required RigAnswer Sound { get; init; }

    /// <summary>The rig as the student gets it.</summary>
    public required RigAnswer Rig { get; init; }

    /// <summary>The rig with all that the key says.</summary>
    public required RigAnswer Repaired { get; init; }

    /// <summary>What was made wrong.</summary>
    public required IReadOnlyList<PlantedCause> Causes { get; init; }

    /// <summary>The rig with each cause alone, in the order of <see cref="Causes"/>.</summary>
    public required IReadOnlyList<RigAnswer> Alone { get; init; }

    /// <summary>The rig with all causes but one, in the order of <see cref="Causes"/>.</summary>
    public required IReadOnlyList<RigAnswer> Without { get; init; }

    /// <summary>What the repairs of the key cost; null where nothing is bought.</summary>
    public Money? KeyCost { get; init; }

    /// <summary>What may be spent; null where nothing is to be bought.</summary>
    public Money? Budget { get; init; }

    /// <summary>The scenario of the student's file: the rig, with the task as its note.</summary>
    public Scenario StudentScenario => Rig.Scenario with
    {
        Title = ExerciseSentences.Title(this), Note = string.Join("\n", ExerciseSentences.Task(this)),
    };

    /// <summary>The verdict that a question has to reach: that of the sound rig.</summary>
    /// <param name="kind">The question.</param>
    public Verdict Wanted(QuestionKind kind) => Sound.Of(kind)?.Verdict ?? Verdict.Holds;

    /// <summary>The questions of an answer that are worse than those of the sound rig.</summary>
    /// <param name="answer">An answer for this rig.</param>
    public IReadOnlyList<AnswerQuestion> Open(RigAnswer answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        return [.. answer.Questions.Where(question => question.Verdict > Wanted(question.Kind))];
    }

    /// <summary>Draws an exercise.</summary>
    /// <param name="scenario">A scenario that was read or checked; it is not changed.</param>
    /// <param name="build">The build's short name.</param>
    /// <param name="days">The days' short names; all of the scenario if empty.</param>
    /// <param name="seed">The seed; the same one gives the same exercise.</param>
    /// <param name="causes">How many causes, 1 to <see cref="MostCauses"/>.</param>
    /// <param name="asked">What answers are asked with; null for the usual.</param>
    /// <param name="progress">Told of the part that is done, 0…1; null for nobody.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <exception cref="ScenarioProblemsException">There is no such build or day, the rig fails as it is, or not so many causes
    /// were found that make it fail.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The number of causes is out of range.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static Exercise Draw(Scenario scenario, string build, IReadOnlyList<string> days, int seed, int causes = MostCauses,
        AnswerOptions? asked = null, IProgress<double>? progress = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        ArgumentNullException.ThrowIfNull(days);
        ArgumentOutOfRangeException.ThrowIfLessThan(causes, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(causes, MostCauses);
        var options = (asked ?? new()) with { SeriesPoints = 0, FollowsUp = false };
        var sound = SoundRig.Of(scenario, build, days, options, cancellation);
        return new ExerciseDraw(sound, seed, causes, progress, cancellation).Run();
    }

    /// <summary>
    /// The student's rig as far as suspicions are right: where something of a suspected kind is wrong, it is put right as in the
    /// key; a suspicion that is not right changes nothing.
    /// </summary>
    /// <param name="suspected">Kinds in the words of <see cref="CauseKinds.InWords"/>; other words change nothing.</param>
    public Scenario Suspected(params IEnumerable<string> suspected)
    {
        var words = suspected.ToHashSet(StringComparer.Ordinal);
        return With(Causes.Where(cause => words.Contains(cause.Kind.InWords())).SelectMany(cause => cause.Repair.Settings)
            .Select(setting => (setting.Path, setting.Value)));
    }

    /// <summary>The student's rig with fields set, as a student would type them.</summary>
    /// <param name="settings">The fields.</param>
    /// <exception cref="ScenarioProblemsException">A field is not there, or a value is not accepted.</exception>
    public Scenario With(IEnumerable<(string Path, string Text)> settings) =>
        Files.ScenarioPath.SetAll(StudentScenario, settings);
}
