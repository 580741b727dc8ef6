using System.Text.Json.Nodes;

namespace RigScenarios.Page.Tests.InBrowser;

/// <summary>
/// Compares every field of two answers: figures to a share of themselves, all else (words, verdicts, stop reasons, names, order)
/// exactly.
/// </summary>
/// <param name="within">The share.</param>
internal sealed class FigureComparison(double within)
{
    // A figure that would be 0 but for roundings, such as what is left of a limit that is just met.
    private const double Nothing = 1e-12;

    private readonly List<string> differences = [];

    /// <summary>What differs, each with the path of its field.</summary>
    public IReadOnlyList<string> Differences => differences;

    /// <summary>How many figures were compared.</summary>
    public int Figures { get; private set; }

    /// <summary>How many other values were compared.</summary>
    public int Words { get; private set; }

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
                        differences.Add($"{path}.{name}: only in {(one.ContainsKey(name) ? "the first" : "the second")}");
                }

                break;
            case (JsonArray one, JsonArray other):
                if (one.Count != other.Count)
                    differences.Add($"{path}: {one.Count} and {other.Count} entries");
                for (var i = 0; i < Math.Min(one.Count, other.Count); i++)
                    Compare($"{path}[{i}]", one[i], other[i]);
                break;
            case (JsonValue one, JsonValue other) when one.TryGetValue<double>(out var value)
                && other.TryGetValue<double>(out var figure):
                Figures++;
                if (!(Math.Abs(value - figure) <= Math.Max(within * Math.Abs(value), Nothing)))
                    differences.Add($"{path}: {value:R} and {figure:R}");
                break;
            default:
                Words++;
                if (!JsonNode.DeepEquals(expected, found))
                    differences.Add($"{path}: {expected?.ToJsonString() ?? "null"} and {found?.ToJsonString() ?? "null"}");
                break;
        }
    }
}
