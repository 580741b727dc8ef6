using RigScenarios.Answers.Classes;
using RigScenarios.Scenarios;

namespace RigScenarios.Page.Classes;

/// <summary>What a student handed in.</summary>
/// <param name="Student">The key of the student's page.</param>
/// <param name="Name">The name that was given.</param>
/// <param name="At">When.</param>
/// <param name="Estimates">What was written, by the names of what is asked.</param>
/// <param name="Changes">What was changed on the rig, a line each.</param>
/// <param name="Outcome">What the program says of the rig as the student has set it.</param>
internal sealed record HandIn(string Student, string Name, TimeOnly At, IReadOnlyDictionary<string, string> Estimates,
    IReadOnlyList<string> Changes, string Outcome);

/// <summary>
/// A task while a class works on it: whether it is revealed, and what was handed in. It is kept as long as the program runs, and
/// nowhere else: names of students are nobody's business afterwards.
/// </summary>
internal sealed class LessonRoom
{
    /// <summary>The most that is handed in; more is no class.</summary>
    public const int Most = 200;

    private readonly Lock gate = new();
    private readonly List<HandIn> handIns = [];
    private (string Version, Scenario Scenario, Task<ClassLesson> Lesson)? ready;
    private bool isRevealed;

    /// <summary>Whether the teacher has revealed the answer.</summary>
    public bool IsRevealed
    {
        get
        {
            lock (gate)
                return isRevealed;
        }
        set
        {
            lock (gate)
                isRevealed = value;
        }
    }

    /// <summary>What was handed in, in the order in which it came first.</summary>
    public IReadOnlyList<HandIn> HandIns
    {
        get
        {
            lock (gate)
                return [.. handIns];
        }
    }

    /// <summary>The task made ready: once for all who ask, and anew where the task or its scenario has changed.</summary>
    /// <param name="version">The version of the task's file.</param>
    /// <param name="scenario">The scenario.</param>
    /// <param name="make">Makes it ready.</param>
    public Task<ClassLesson> Lesson(string version, Scenario scenario, Func<Task<ClassLesson>> make)
    {
        lock (gate)
        {
            if (ready is not { } now || now.Version != version || !ReferenceEquals(now.Scenario, scenario)
                || now.Lesson.IsFaulted || now.Lesson.IsCanceled)
                ready = (version, scenario, make());
            return ready.Value.Lesson;
        }
    }

    /// <summary>Whether a student has handed in.</summary>
    public bool HasFrom(string student)
    {
        lock (gate)
            return handIns.Exists(one => one.Student == student);
    }

    /// <summary>Takes what a student hands in, in the place of what the same student handed in before.</summary>
    /// <returns>Whether there was room for it.</returns>
    public bool Take(HandIn handIn)
    {
        lock (gate)
        {
            if (handIns.FindIndex(one => one.Student == handIn.Student) is >= 0 and var at)
                handIns[at] = handIn;
            else if (handIns.Count >= Most)
                return false;
            else
                handIns.Add(handIn);
            return true;
        }
    }

    /// <summary>Begins a new lesson: nothing is handed in, nothing revealed.</summary>
    public void Clear()
    {
        lock (gate)
        {
            handIns.Clear();
            isRevealed = false;
        }
    }
}
