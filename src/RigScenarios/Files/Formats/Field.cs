using System.Text.Json.Nodes;

namespace RigScenarios.Files.Formats;

/// <summary>One field of a record's form.</summary>
/// <typeparam name="TOwner">The record.</typeparam>
public abstract class Field<TOwner>(string key, bool required, string about)
{
    /// <summary>The field's key in files and paths.</summary>
    public string Key { get; } = key;

    /// <summary>Whether a file without it is refused.</summary>
    public bool Required { get; } = required;

    /// <summary>What the field says, for the schema and messages.</summary>
    protected string About { get; } = about;

    /// <summary>What is accepted, with an example.</summary>
    public abstract string Accepted { get; }

    internal abstract bool TryRead(ref TOwner owner, FileNode node, string path, ReadLog log);

    internal abstract FileNode? Write(TOwner owner);

    internal abstract JsonObject Schema();

    internal abstract bool TrySet(ref TOwner owner, ReadOnlySpan<string> steps, FileNode node, string path, ReadLog log);

    internal abstract IEnumerable<(string Path, string Text)> NumericFields(TOwner owner, string path);

    internal abstract FieldOutline Outline();
}

/// <summary>A field that holds a value of a known form.</summary>
/// <typeparam name="TOwner">The record.</typeparam>
/// <typeparam name="TValue">The field's value.</typeparam>
/// <param name="key">The key in files and paths.</param>
/// <param name="form">How the value stands in a file.</param>
/// <param name="has">Whether the record has a value to write.</param>
/// <param name="get">The record's value.</param>
/// <param name="set">The record with another value.</param>
/// <param name="required">Whether a file without it is refused.</param>
/// <param name="about">What the field says.</param>
internal sealed class Field<TOwner, TValue>(
    string key, Format<TValue> form, Func<TOwner, bool> has, Func<TOwner, TValue?> get, Func<TOwner, TValue, TOwner> set,
    bool required, string about)
    : Field<TOwner>(key, required, about)
{
    /// <inheritdoc/>
    public override string Accepted => form is IAcceptedText accepting ? accepting.Accepted : About.TrimEnd('.');

    internal override bool TryRead(ref TOwner owner, FileNode node, string path, ReadLog log)
    {
        var read = form.TryRead(node, path, log, out var value);
        if (value is not null && (read || value is not ValueType))
            owner = set(owner, value);
        return read;
    }

    internal override FileNode? Write(TOwner owner) => has(owner) && get(owner) is { } value ? form.Write(value) : null;

    internal override JsonObject Schema()
    {
        var schema = form.Schema();
        schema["description"] = form is IAcceptedText accepting ? $"{About} Accepted: {accepting.Accepted}." : About;
        return schema;
    }

    internal override bool TrySet(ref TOwner owner, ReadOnlySpan<string> steps, FileNode node, string path, ReadLog log)
    {
        var old = has(owner) ? get(owner) : default;
        if (!form.TrySet(old, steps, node, path, log, out var value))
            return false;
        owner = set(owner, value);
        return true;
    }

    internal override IEnumerable<(string Path, string Text)> NumericFields(TOwner owner, string path) =>
        has(owner) && get(owner) is { } value ? form.NumericFields(value, path) : [];

    internal override FieldOutline Outline() => new(Key, About, Required, form.Outline());
}

/// <summary>Says in words what a form accepts.</summary>
internal interface IAcceptedText
{
    /// <summary>What is accepted, with an example.</summary>
    string Accepted { get; }
}

/// <summary>Short ways to declare the fields of a record.</summary>
/// <typeparam name="TOwner">The record.</typeparam>
internal static class Fields<TOwner>
{
    /// <summary>A field that must be given.</summary>
    public static Field<TOwner> Required<TValue>(
        string key, Format<TValue> form, Func<TOwner, TValue> get, Func<TOwner, TValue, TOwner> set, string about) =>
        new Field<TOwner, TValue>(key, form, _ => true, get, set, true, about);

    /// <summary>A field of a value type that may be left out.</summary>
    public static Field<TOwner> Optional<TValue>(
        string key, Format<TValue> form, Func<TOwner, TValue?> get, Func<TOwner, TValue?, TOwner> set, string about)
        where TValue : struct =>
        new Field<TOwner, TValue>(key, form, owner => get(owner).HasValue, owner => get(owner).GetValueOrDefault(),
            (owner, value) => set(owner, value), false, about);

    /// <summary>A field of a reference type that may be left out.</summary>
    public static Field<TOwner> OptionalGroup<TValue>(
        string key, Format<TValue> form, Func<TOwner, TValue?> get, Func<TOwner, TValue, TOwner> set, string about)
        where TValue : class =>
        new Field<TOwner, TValue>(key, form, owner => get(owner) is not null, get, set, false, about);

    /// <summary>A field with a default that is written only where it differs.</summary>
    public static Field<TOwner> WithDefault<TValue>(
        string key, Format<TValue> form, TValue standard, Func<TOwner, TValue> get, Func<TOwner, TValue, TOwner> set,
        string about)
        where TValue : IEquatable<TValue> =>
        new Field<TOwner, TValue>(key, form, owner => !get(owner).Equals(standard), get, set, false, about);
}
