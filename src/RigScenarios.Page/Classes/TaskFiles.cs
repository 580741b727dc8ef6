using System.Security.Cryptography;
using Microsoft.AspNetCore.Http;
using RigScenarios.Answers.Classes;
using RigScenarios.Requests.OwnFiles;
using RigScenarios.Requests.Messages;

namespace RigScenarios.Page.Classes;

/// <summary>A task as it stands in its file.</summary>
/// <param name="Name">The file's name.</param>
/// <param name="Task">The task.</param>
/// <param name="Version">Changes with every letter of the file.</param>
internal sealed record KeptTask(string Name, ClassTask Task, string Version);

/// <summary>The tasks for a class in the folder of own files, and the codes by which a class reaches them.</summary>
internal sealed class TaskFiles(RigFiles files)
{
    private const string Letters = "23456789abcdefghjkmnpqrstuvwxyz";

    // Files that are no tasks, or cannot be read, are not looked at again before they change: every request of a class asks.
    private readonly Lock gate = new();
    private readonly Dictionary<string, (DateTime Changed, KeptTask? Task)> known = new(StringComparer.Ordinal);

    /// <summary>A code for an address: 8 of 31 letters and digits, which no one is likely to guess in a lesson.</summary>
    public static string NewCode() =>
        RandomNumberGenerator.GetString(Letters, 4) + "-" + RandomNumberGenerator.GetString(Letters, 4);

    /// <summary>All tasks in the order of their names; without a task where its file has errors.</summary>
    public IReadOnlyList<(string Name, KeptTask? Task)> All()
    {
        lock (gate)
            return [.. files.TaskNames.Select(name => (name, Look(name)))];
    }

    /// <summary>The task of a code; null where there is none. Of several with one code it is the first.</summary>
    public KeptTask? Find(string code) => ClassTaskFile.IsCode(code)
        ? All().FirstOrDefault(task =>
            CryptographicOperations.FixedTimeEquals(Bytes(task.Task?.Task.Code), Bytes(code))).Task : null;

    /// <summary>The task of a file.</summary>
    /// <exception cref="ProblemException">There is no such file, or it has errors.</exception>
    public KeptTask Read(string name)
    {
        var file = ClassTaskFile.IsTaskName(name) ? files.Read(RigFiles.Own, name)
            : throw new ProblemException(StatusCodes.Status404NotFound, "There is no such task.");
        var (task, problems) = ClassTaskFile.TryReadText(file.Text, file.Path);
        return task is null ? throw new ProblemException(StatusCodes.Status400BadRequest, Problem.Of(problems, file.Path))
            : new KeptTask(name, task, file.Version);
    }

    /// <summary>Writes a task, with a code of its own.</summary>
    /// <param name="name">The file's name, with or without its ending.</param>
    /// <param name="task">The task.</param>
    /// <param name="version">What the file was when it was opened; null for a new one.</param>
    /// <param name="replace">Whether a file that is there may be written over.</param>
    /// <exception cref="ProblemException">The name or the task is none, the file is there already or changed
    /// meanwhile.</exception>
    public KeptTask Write(string name, ClassTask task, string? version, bool replace)
    {
        var full = ClassTaskFile.IsTaskName(name) ? name : name + ClassTaskFile.Ending;
        // A copy under another name is another task: two with one code could not be told apart.
        if (task.Code is null || All().Any(other => other.Name != full && other.Task?.Task.Code == task.Code))
            task = task with { Code = NewCode() };
        var saved = files.Write(full, Checked(task), version, replace);
        return new KeptTask(full, task, saved.Version);
    }

    /// <summary>The text of a task's file, held to all that a file is held to.</summary>
    /// <exception cref="ProblemException">It is none.</exception>
    public static string Checked(ClassTask task)
    {
        var text = ClassTaskFile.Text(task);
        var (read, problems) = ClassTaskFile.TryReadText(text, "");
        return read is not null ? text : throw new ProblemException(StatusCodes.Status400BadRequest,
            [.. Problem.Of(problems).Select(problem => problem with { Line = null, Column = null })]);
    }

    private KeptTask? Look(string name)
    {
        var changed = File.GetLastWriteTimeUtc(Path.Combine(files.OwnFolder, name));
        if (known.TryGetValue(name, out var last) && last.Changed == changed)
            return last.Task;
        KeptTask? task = null;
        try
        {
            task = Read(name);
        }
        catch (ProblemException)
        {
            // Opening it says what is wrong.
        }
        known[name] = (changed, task);
        return task;
    }

    private static byte[] Bytes(string? text) => SHA256.HashData(System.Text.Encoding.UTF8.GetBytes(text ?? ""));
}
