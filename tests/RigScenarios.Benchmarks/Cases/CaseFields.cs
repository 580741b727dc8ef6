using System.Text.Json;

namespace RigScenarios.Benchmarks.Cases;

/// <summary>Reads the fields of one case and notes what is wrong with them, so that all problems of a file are told at
/// once.</summary>
internal sealed class CaseFields(string where, List<string> problems)
{
    public double Number(JsonElement parent, string path, Func<double, bool> accepts, string accepted, double? otherwise = null)
    {
        if (!Find(parent, path, out var value))
            return otherwise ?? Problem(path, $"missing; accepted: {accepted}");
        if (value.ValueKind != JsonValueKind.Number || !value.TryGetDouble(out var number))
            return Problem(path, $"found {value.GetRawText()}; accepted: a number, {accepted}");
        return double.IsFinite(number) && accepts(number)
            ? number : Problem(path, $"found {value.GetRawText()}; accepted: {accepted}");
    }

    public double Number(JsonElement parent, string path, double? otherwise = null) =>
        Number(parent, path, _ => true, "a finite number", otherwise);

    public string Text(JsonElement parent, string path)
    {
        if (Find(parent, path, out var value) && value.ValueKind == JsonValueKind.String
            && value.GetString() is { Length: > 0 } text)
            return text;
        Problem(path, "accepted: a name or word in quotes");
        return "";
    }

    public double Positive(JsonElement parent, string path) => Number(parent, path, value => value > 0, "above 0");

    public double NotNegative(JsonElement parent, string path, double? otherwise = null) =>
        Number(parent, path, value => value >= 0, "0 or more", otherwise);

    public double[] Numbers(JsonElement parent, string path)
    {
        if (!Find(parent, path, out var value))
        {
            Problem(path, "missing; accepted: a list of numbers");
            return [];
        }

        if (value.ValueKind != JsonValueKind.Array || value.EnumerateArray().Any(one => one.ValueKind != JsonValueKind.Number))
        {
            Problem(path, "accepted: a list of numbers");
            return [];
        }

        return [.. value.EnumerateArray().Select(one => one.GetDouble())];
    }

    /// <summary>A list of so many numbers; an empty list if it is another.</summary>
    public double[] Numbers(JsonElement parent, string path, int count)
    {
        var numbers = Numbers(parent, path);
        if (numbers.Length == count || numbers.Length == 0)
            return numbers;
        Problem(path, $"has {numbers.Length} numbers; accepted: {count}");
        return [];
    }

    /// <summary>A list of pairs of numbers.</summary>
    public IReadOnlyList<double[]> Pairs(JsonElement parent, string path)
    {
        if (Find(parent, path, out var value) && value.ValueKind == JsonValueKind.Array
            && value.EnumerateArray().All(pair => pair.ValueKind == JsonValueKind.Array && pair.GetArrayLength() == 2
                && pair.EnumerateArray().All(one => one.ValueKind == JsonValueKind.Number)))
            return [.. value.EnumerateArray().Select(pair => new[] { pair[0].GetDouble(), pair[1].GetDouble() })];
        Problem(path, "accepted: a list of pairs of numbers");
        return [];
    }

    public IReadOnlyList<JsonElement> Objects(JsonElement parent, string path, bool optional = false)
    {
        if (optional && !Find(parent, path, out _))
            return [];
        if (Find(parent, path, out var value) && value.ValueKind == JsonValueKind.Array && value.GetArrayLength() > 0)
            return [.. value.EnumerateArray()];
        Problem(path, "accepted: a list of one entry or more");
        return [];
    }

    public double Problem(string path, string text)
    {
        problems.Add($"{where}, {path}: {text}.");
        return double.NaN;
    }

    /// <summary>Finds a field by its path with points in it; false where it or a field on the way is missing.</summary>
    public static bool Find(JsonElement parent, string path, out JsonElement value)
    {
        value = parent;
        foreach (var name in path.Split('.'))
        {
            if (value.ValueKind != JsonValueKind.Object || !value.TryGetProperty(name, out value))
                return false;
        }

        return value.ValueKind != JsonValueKind.Null;
    }
}
