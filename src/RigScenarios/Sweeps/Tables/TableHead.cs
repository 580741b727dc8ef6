using System.Text.Json;
using System.Text.Json.Serialization;

namespace RigScenarios.Sweeps.Tables;

/// <summary>What stands at the head of a table: what it rests on, and which part of the sweep it holds.</summary>
/// <param name="Identity">What it rests on.</param>
/// <param name="PartNumber">Which part it is, from 1.</param>
/// <param name="PartsInAll">How many parts the sweep was cut into; 1 where it is whole.</param>
public sealed record TableHead(SweepIdentity Identity, int PartNumber, int PartsInAll)
{
    private static readonly JsonSerializerOptions Form = new()
    {
        PropertyNamingPolicy = JsonNamingPolicy.SnakeCaseLower,
        DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
        Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        Converters = { new JsonStringEnumConverter(JsonNamingPolicy.SnakeCaseLower) },
    };

    /// <summary>A head.</summary>
    /// <param name="identity">What the table rests on.</param>
    /// <param name="part">Which part it is.</param>
    public static TableHead Of(SweepIdentity identity, SweepPart part)
    {
        ArgumentNullException.ThrowIfNull(part);
        return new(identity, part.Number, part.Of);
    }

    /// <summary>Which part of the sweep it holds.</summary>
    [JsonIgnore]
    public SweepPart Part => new(PartNumber, PartsInAll);

    /// <summary>The number of its first scenario.</summary>
    [JsonIgnore]
    public long First => Part.First(Identity.Rows);

    /// <summary>How many rows it has when it is whole.</summary>
    [JsonIgnore]
    public long Count => Part.Count(Identity.Rows);

    /// <summary>As JSON, on one line. The same head gives the same text.</summary>
    public string ToJson() => JsonSerializer.Serialize(this, Form);

    /// <summary>Reads what <see cref="ToJson"/> wrote; null if it is something else.</summary>
    /// <param name="text">The text.</param>
    public static TableHead? FromJson(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        try
        {
            var head = JsonSerializer.Deserialize<TableHead>(text, Form);
            return head is { Identity: { Rows: >= 0, Columns.Count: > 0 }, PartsInAll: >= 1 and <= SweepPart.MostParts }
                && head.PartNumber >= 1 && head.PartNumber <= head.PartsInAll ? head : null;
        }
        catch (JsonException)
        {
            return null;
        }
    }
}
