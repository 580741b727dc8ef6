using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json.Serialization;
using RigScenarios.Sweeps.Evaluation;

namespace RigScenarios.Sweeps.Tables;

/// <summary>
/// What a table of a sweep rests on: enough to make it again, and to tell whether two tables belong together. It goes into the
/// table, and stays with it. No name of a folder stands in it.
/// </summary>
public sealed record SweepIdentity
{
    /// <summary>The version of the program.</summary>
    public required string Version { get; init; }

    /// <summary>The command that makes the table, without the names of what it writes and without its part.</summary>
    public required string Command { get; init; }

    /// <summary>The name of the scenario's file, without its folder.</summary>
    public required string File { get; init; }

    /// <summary>The whole scenario as the text of a file, with its changes and all parts that take part, so that it can be run
    /// again where its parts files are not.</summary>
    public required string Scenario { get; init; }

    /// <summary>The build that was run.</summary>
    public required string Build { get; init; }

    /// <summary>The days that it was run through, one after the other.</summary>
    public required IReadOnlyList<string> Days { get; init; }

    /// <summary>The day for which ages and journeys without one are asked; null where none is.</summary>
    public DateOnly? AskedOn { get; init; }

    /// <summary>The fields that the sweep moves, each as it was asked for.</summary>
    public required IReadOnlyList<string> Moved { get; init; }

    /// <summary>How uncertain fields were sampled; null where none is.</summary>
    public string? Sampling { get; init; }

    /// <summary>The seed of the sampling; null where nothing is drawn.</summary>
    public long? Seed { get; init; }

    /// <summary>How many scenarios the whole sweep has.</summary>
    public required long Rows { get; init; }

    /// <summary>A digest of the scenarios' values (<see cref="PointsDigest"/>): two plans that differ in a value differ in
    /// it.</summary>
    public required string Points { get; init; }

    /// <summary>The columns of the table, the moved fields among them.</summary>
    public required IReadOnlyList<SweepColumn> Columns { get; init; }

    /// <summary>Which computation the scenarios went through, and why.</summary>
    public required string Way { get; init; }

    /// <summary>The SHA-256 digest of <see cref="Scenario"/>, in hexadecimal digits.</summary>
    [JsonPropertyName("scenario_sha256")]
    public string ScenarioDigest => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(Scenario)));

    /// <summary>What differs between two sweeps so that their rows don't belong into one table, in words; empty where nothing
    /// does. The names of the files and the wording of the commands may differ.</summary>
    /// <param name="other">The other one.</param>
    public IReadOnlyList<string> Differences(SweepIdentity other)
    {
        ArgumentNullException.ThrowIfNull(other);
        var found = new List<string>();
        Compare("the program's version", Version, other.Version);
        if (Scenario != other.Scenario)
            found.Add($"the scenario ({ScenarioDigest[..12]} and {other.ScenarioDigest[..12]}; "
                + $"{FirstDifference(Scenario, other.Scenario)})");
        Compare("the build", Build, other.Build);
        Compare("the days", string.Join(", ", Days), string.Join(", ", other.Days));
        Compare("the day on which it is asked", Date(AskedOn), Date(other.AskedOn));
        Compare("the sampling", Sampling ?? "none", other.Sampling ?? "none");
        Compare("the seed", $"{Seed?.ToString(CultureInfo.InvariantCulture) ?? "none"}",
            $"{other.Seed?.ToString(CultureInfo.InvariantCulture) ?? "none"}");
        Compare("the number of scenarios", $"{Rows}", $"{other.Rows}");
        Compare("the columns", Names(Columns), Names(other.Columns));
        Compare("the way of computing", Way, other.Way);
        // Values that differ because of what is named already need no line of their own.
        if (Points != other.Points && (Sampling, Seed, Rows) == (other.Sampling, other.Seed, other.Rows))
            found.Add("the values of the fields that are moved "
                + $"({string.Join("; ", Moved)} and {string.Join("; ", other.Moved)})");
        return found;

        void Compare(string what, string here, string there)
        {
            if (here != there)
                found.Add($"{what} ({here} and {there})");
        }
    }

    private static string Date(DateOnly? date) => date?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) ?? "none";

    private static string Names(IReadOnlyList<SweepColumn> columns) => string.Join(", ", columns.Select(column => column.Name));

    private static string FirstDifference(string here, string there)
    {
        var (first, second) = (here.Split('\n'), there.Split('\n'));
        var line = Enumerable.Range(0, Math.Max(first.Length, second.Length))
            .First(index => Line(first, index) != Line(second, index));
        return $"first at \"{Line(first, line).Trim()}\" and \"{Line(second, line).Trim()}\"";

        static string Line(string[] lines, int index) => index < lines.Length ? lines[index] : "";
    }
}
