using System.Buffers;
using System.Text.Json;

namespace RigScenarios.Requests.Runs;

/// <summary>A message to a page as bytes.</summary>
internal static class MessageBytes
{
    /// <param name="write">Writes the message's fields.</param>
    public static byte[] Of(Action<Utf8JsonWriter> write)
    {
        var buffer = new ArrayBufferWriter<byte>(1024);
        using (var json = new Utf8JsonWriter(buffer))
        {
            json.WriteStartObject();
            write(json);
            json.WriteEndObject();
        }
        return buffer.WrittenSpan.ToArray();
    }
}
