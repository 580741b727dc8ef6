namespace RigScenarios.Charts.Search;

/// <summary>One entry of a front: something that is in no wish worse than another without being better in one.</summary>
/// <param name="Name">What it is, as people read it: "rig 3: 735 EUR, 4.05 kg".</param>
/// <param name="Values">Its figures, one for each axis of the chart; not-a-number where one is not known.</param>
public sealed record FrontPoint(string Name, IReadOnlyList<double> Values)
{
    /// <summary>Whether it is named in the legend, with a look of its own.</summary>
    public bool IsPick { get; init; }
}
