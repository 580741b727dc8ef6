using System.Text.Json.Nodes;

namespace RigScenarios.Checks.Simulation;

/// <summary>
/// Compares every field of two results. Names, words, order and yes or no exactly; times to 1 s, charges to 0.05 points, energies
/// to 0.1 % or 0.1 Wh,
/// limits to 1 mV, 1 mA and 0.05 K, and to the digits that the files print: the tolerances of day-format.md and
/// one-day-format.md.
/// </summary>
internal sealed class FieldComparison
{
    private const double Second = 1.0 / 3600;

    // Hours are printed with five digits at least, percents and Wh with four.
    private const double PrintedHours = 5.1e-6;

    private readonly List<string> differences = [];

    /// <summary>What differs, each with the path of its field.</summary>
    public IReadOnlyList<string> Differences => differences;

    /// <summary>The number of fields that were compared.</summary>
    public int Fields { get; private set; }

    /// <summary>Compares two values and all in them.</summary>
    public void Compare(string path, JsonNode? expected, JsonNode? found)
    {
        switch (expected, found)
        {
            case (JsonObject one, JsonObject other):
                foreach (var name in one.Select(item => item.Key).Union(other.Select(item => item.Key)))
                {
                    if (one.ContainsKey(name) && other.ContainsKey(name))
                        Compare($"{path}.{name}", one[name], other[name]);
                    else
                        differences.Add($"{path}.{name}: "
                            + (one.ContainsKey(name) ? "missing" : $"not expected: {other[name]?.ToJsonString()}"));
                }

                break;
            case (JsonArray one, JsonArray other):
                if (one.Count != other.Count)
                    differences.Add($"{path}: {one.Count} expected, found {other.Count}: {other.ToJsonString()}");
                for (var i = 0; i < Math.Min(one.Count, other.Count); i++)
                    Compare($"{path}[{i}]", one[i], other[i]);
                break;
            default:
                CompareValues(path, expected, found);
                break;
        }
    }

    /// <summary>Two numbers, by a tolerance that the field's name does not tell.</summary>
    public void Compare(string path, double expected, double found, double tolerance)
    {
        Fields++;
        if (!(Math.Abs(expected - found) <= tolerance))
            differences.Add($"{path}: {expected:R} expected, found {found:R}");
    }

    private void CompareValues(string path, JsonNode? expected, JsonNode? found)
    {
        if (expected is JsonValue number && number.TryGetValue<double>(out var value) && found is JsonValue other
            && other.TryGetValue<double>(out var figure))
        {
            Compare(path, value, figure, ToleranceOf(path, value));
            return;
        }

        Fields++;
        if (expected?.ToJsonString() != found?.ToJsonString())
            differences.Add($"{path}: {expected?.ToJsonString() ?? "null"} expected, found {found?.ToJsonString() ?? "null"}");
    }

    private static double ToleranceOf(string path, double expected)
    {
        if (path.EndsWith("_h", StringComparison.Ordinal))
            return Second + PrintedHours;
        if (path.EndsWith("_Wh", StringComparison.Ordinal))
            return Math.Max(0.1, 1e-3 * Math.Abs(expected));
        if (path.Contains("_percent", StringComparison.Ordinal))
            return 0.05;

        // Seconds without a device are the sum of stretches, each of which ends to a second.
        return path.Contains(".down_s.", StringComparison.Ordinal) ? 1 : 0;
    }
}
