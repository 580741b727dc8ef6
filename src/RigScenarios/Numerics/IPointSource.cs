namespace RigScenarios.Numerics;

/// <summary>Points in the unit cube, each by its number alone.</summary>
internal interface IPointSource
{
    /// <summary>How many coordinates a point has.</summary>
    int Dimensions { get; }

    /// <summary>Writes the point of a number: each coordinate above 0 and below 1.</summary>
    /// <param name="number">The number, 0 or more.</param>
    /// <param name="point">Where the coordinates go.</param>
    void Fill(long number, Span<double> point);
}
