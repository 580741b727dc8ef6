using System.Text.Json;

namespace RigScenarios.Benchmarks.Cases;

/// <summary>Reads the fields of one case and notes what is wrong with them, so that all problems of a file are told at once.</summary>
internal sealed class CaseFields(string where, List<string> problems)
{
    public double Number(JsonElement parent, string path, Func<double, bool> accepts, string accepted, double? otherwise = null)
    {
        if (!Find(parent, path, out var value))
            return otherwise ?? Problem(path, $"missing; accepted: {accepted}");
        if (value.ValueKind != JsonValueKind.Number || !value.TryGetDouble(out var number))
            return Problem(path, $"found {value.GetRawText()}; accepted: a number, {accepted}");
        return double.IsFinite(number) && accepts(number) ? number : Problem(path, $"found {value.GetRawText()}; accepted: {accepted}");
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

    public IReadOnlyList<JsonElement> Objects(JsonElement parent, string path)
    {
        if (Find(parent, path, out var value) && value.ValueKind == JsonValueKind.Array && value.GetArrayLength() > 0)
            return [.. value.EnumerateArray()];
        Problem(path, "accepted: a list of one or more");
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
