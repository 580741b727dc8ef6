using System.Text.Json.Serialization;

namespace RigScenarios.Charts.Style;

/// <summary>What the numbers of a chart's traces are: of it a page makes a file with a row for each point. The numbers themselves
/// stand in the traces and are not written twice.</summary>
/// <param name="X">The title of the horizontal values, with their unit.</param>
/// <param name="Values">Titles of the other values, each with its unit.</param>
/// <param name="Series">For each trace, in order, its name and the column of its values; null for one that shows nothing of its
/// own.</param>
internal sealed record ChartPoints(string X, IReadOnlyList<string> Values, IReadOnlyList<PointSeries?> Series)
{
    /// <summary>The rows of the file, titles first, for a chart whose traces hold what is drawn and not what it stands for; null
    /// otherwise. A missing number is null.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public IReadOnlyList<IReadOnlyList<object?>>? Rows { get; init; }
}

/// <summary>A trace as a series of points.</summary>
/// <param name="Name">Its name in plain words.</param>
/// <param name="Column">Which of the values it has, from 0.</param>
internal sealed record PointSeries(string Name, int Column)
{
    /// <summary>Names of its points where they stand for things and not for numbers, as bars do; null otherwise.</summary>
    public IReadOnlyList<string>? Names { get; init; }
}
