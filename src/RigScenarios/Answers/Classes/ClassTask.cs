namespace RigScenarios.Answers.Classes;

/// <summary>When a class is told what was hidden from it.</summary>
public enum TaskReveal
{
    /// <summary>As soon as the teacher says so, for all at once.</summary>
    ByTeacher,

    /// <summary>To each as soon as the own estimates are handed in; and to all as soon as the teacher says so.</summary>
    OnHandIn,
}

/// <summary>A figure or a choice that a class may change; everything else is locked.</summary>
/// <param name="Field">The name of the control, see <see cref="ClassControl.Name"/>.</param>
/// <param name="Least">The least value that is allowed, in the control's unit; null for the control's own end.</param>
/// <param name="Greatest">The greatest value that is allowed, in the control's unit; null for the control's own end.</param>
public sealed record OpenControl(string Field = "", double? Least = null, double? Greatest = null);

/// <summary>
/// A task for a class: a scenario, the words of the teacher, what the class may change, what stays hidden and until when, and
/// what is to be estimated. It holds no answer: that is computed whenever it is asked for.
/// </summary>
public sealed record ClassTask
{
    /// <summary>The most characters of a task's text.</summary>
    public const int LongestText = 4000;

    /// <summary>The most questions of the teacher's own.</summary>
    public const int MostOwnQuestions = 12;

    /// <summary>The most characters of a question of the teacher's own.</summary>
    public const int LongestQuestion = 300;

    /// <summary>What the task is called.</summary>
    public string Title { get; init; } = "";

    /// <summary>The task in the teacher's words, plain text with line breaks; null for none.</summary>
    public string? Text { get; init; }

    /// <summary>The scenario file, as the page names it: <c>own/winter.yaml</c>, <c>samples/pottery-class.yaml</c>.</summary>
    public string Scenario { get; init; } = "";

    /// <summary>The build's short name.</summary>
    public string Build { get; init; } = "";

    /// <summary>The days' short names; all of the scenario if empty.</summary>
    public IReadOnlyList<string> Days { get; init; } = [];

    /// <summary>How many things are made wrong on the rig, for the class to find; 0 for a rig as it stands in its file.</summary>
    public int Causes { get; init; }

    /// <summary>Which things are made wrong: the seed of the exercise.</summary>
    public int Seed { get; init; } = 1;

    /// <summary>What the class may change; none for nothing.</summary>
    public IReadOnlyList<OpenControl> Controls { get; init; } = [];

    /// <summary>The questions of the answer that are told from the start; none hides the whole answer.</summary>
    public IReadOnlyList<QuestionKind> Shown { get; init; } = [];

    /// <summary>Until when the rest of the answer is hidden.</summary>
    public TaskReveal Reveal { get; init; }

    /// <summary>The names of the estimates that are asked for, see <see cref="AskedEstimate.Name"/>.</summary>
    public IReadOnlyList<string> Estimates { get; init; } = [];

    /// <summary>Questions of the teacher's own, one line each, to which the program has no answer.</summary>
    public IReadOnlyList<string> OwnQuestions { get; init; } = [];

    /// <summary>What stands in the address that the class gets; null while it has none.</summary>
    public string? Code { get; init; }
}
