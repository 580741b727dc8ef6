using System.Text.Json;

namespace RigScenarios.Requests.Messages;

/// <summary>Writes lists as JSON. What a start waits for is written field by field: a serializer first looks at each type by
/// reflection, which takes an interpreter longer than writing all of it.</summary>
internal static class JsonLists
{
    /// <summary>Writes a list of objects.</summary>
    /// <param name="json">Written to.</param>
    /// <param name="name">The list's name.</param>
    /// <param name="items">What is listed.</param>
    /// <param name="write">Writes the fields of one.</param>
    public static void WriteObjects<T>(this Utf8JsonWriter json, string name, IEnumerable<T> items,
        Action<Utf8JsonWriter, T> write)
        where T : class
    {
        json.WriteStartArray(name);
        foreach (var item in items)
        {
            json.WriteStartObject();
            write(json, item);
            json.WriteEndObject();
        }
        json.WriteEndArray();
    }

    /// <summary>Writes a list of texts.</summary>
    /// <param name="json">Written to.</param>
    /// <param name="name">The list's name.</param>
    /// <param name="texts">The texts.</param>
    public static void WriteTexts(this Utf8JsonWriter json, string name, IEnumerable<string> texts)
    {
        json.WriteStartArray(name);
        foreach (var text in texts)
            json.WriteStringValue(text);
        json.WriteEndArray();
    }
}
