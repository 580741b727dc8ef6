using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;

namespace RigScenarios.Files.Formats;

/// <summary>
/// How a value stands in a file: one definition from which reading, writing, the path of each field, the JSON Schema and
/// the messages are all made, so that they can't disagree.
/// </summary>
/// <typeparam name="T">The value in the library.</typeparam>
public abstract class Format<T>
{
    /// <summary>Reads a node. Every problem goes to the log; false if no usable value came of it.</summary>
    public abstract bool TryRead(FileNode node, string path, ReadLog log, [MaybeNullWhen(false)] out T value);

    /// <summary>Writes a value so that reading it again gives the same value.</summary>
    public abstract FileNode Write(T value);

    /// <summary>What is accepted, as JSON Schema (draft 2020-12).</summary>
    public abstract JsonObject Schema();

    /// <summary>
    /// Sets the field at the end of a path (its steps after this value) to a text, as if the file had said so.
    /// </summary>
    /// <param name="owner">The value that holds the field.</param>
    /// <param name="steps">The steps still to go; none means this value itself.</param>
    /// <param name="node">The new value.</param>
    /// <param name="path">The whole path, for messages.</param>
    /// <param name="log">Where problems go.</param>
    /// <param name="changed">The changed value.</param>
    public virtual bool TrySet(T? owner, ReadOnlySpan<string> steps, FileNode node, string path, ReadLog log,
        [MaybeNullWhen(false)] out T changed)
    {
        if (steps.IsEmpty)
            return TryRead(node, path, log, out changed);
        log.Error(path, $"There is no field \"{steps[0]}\" inside a plain value.");
        changed = default;
        return false;
    }

    /// <summary>The paths of all numeric fields that have a value in this one, each with its text: what a sweep can
    /// move.</summary>
    public virtual IEnumerable<(string Path, string Text)> NumericFields(T value, string path) => [];

    /// <summary>What the form asks for, to help a writer.</summary>
    internal virtual FormatOutline Outline() =>
        this is IAcceptedText accepting ? FormatOutline.Plain with { Accepted = accepting.Accepted } : FormatOutline.Plain;

    /// <summary>A dotted path, one step longer.</summary>
    protected static string Join(string path, string step) => path.Length == 0 ? step : $"{path}.{step}";
}
