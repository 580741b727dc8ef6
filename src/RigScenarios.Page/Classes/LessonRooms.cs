using System.Collections.Concurrent;
using Microsoft.AspNetCore.Http;
using RigScenarios.Answers;
using RigScenarios.Answers.Classes;
using RigScenarios.Requests.OwnFiles;
using RigScenarios.Requests.Messages;
using RigScenarios.Requests.Runs;

namespace RigScenarios.Page.Classes;

/// <summary>The tasks that classes work on, made ready.</summary>
internal sealed class LessonRooms(TaskFiles tasks, RigFiles files, ReadScenarios scenarios, RunWatch watch)
{
    private readonly ConcurrentDictionary<string, LessonRoom> rooms = new(StringComparer.Ordinal);

    /// <summary>The room of a task.</summary>
    public LessonRoom Of(KeptTask task) => rooms.GetOrAdd(task.Name, _ => new LessonRoom());

    /// <summary>The task of a code, with its room.</summary>
    /// <exception cref="ProblemException">There is none.</exception>
    public (KeptTask Task, LessonRoom Room) Find(string code) => tasks.Find(code) is { } task ? (task, Of(task))
        : throw new ProblemException(StatusCodes.Status404NotFound,
            "There is no task at this address any more. Ask your teacher for the address.");

    /// <summary>A task made ready, once for all who ask.</summary>
    /// <exception cref="ProblemException">Its scenario is not there or has errors.</exception>
    /// <exception cref="Scenarios.ScenarioProblemsException">It can't be made ready.</exception>
    public Task<ClassLesson> ReadyAsync(KeptTask task)
    {
        var scenario = scenarios.Read(files.Read(task.Task.Scenario), "A task");
        // Whoever asked first may leave: the others wait for it too.
        return Of(task).Lesson(task.Version, scenario, () => watch.RunAsync(
            cancellation => Task.FromResult(ClassLesson.Of(task.Task, scenario, Options, cancellation)), CancellationToken.None));
    }

    /// <summary>A task that is not saved yet, made ready for the teacher's page alone.</summary>
    /// <exception cref="ProblemException">Its scenario is not there or has errors.</exception>
    /// <exception cref="Scenarios.ScenarioProblemsException">It can't be made ready.</exception>
    public Task<ClassLesson> TryAsync(ClassTask task, CancellationToken cancellation)
    {
        var scenario = scenarios.Read(files.Read(task.Scenario), "A task");
        return watch.RunAsync(stop => Task.FromResult(ClassLesson.Of(task, scenario, Options, stop)), cancellation);
    }

    /// <summary>Runs within the bounds of all runs.</summary>
    public Task<T> RunAsync<T>(Func<CancellationToken, T> work, CancellationToken cancellation) =>
        watch.RunAsync(stop => Task.FromResult(work(stop)), cancellation);

    // With a day's course, so that who may see the answer sees its chart.
    private static AnswerOptions Options => new()
    {
        Today = DateOnly.FromDateTime(TimeProvider.System.GetLocalNow().Date),
    };
}
