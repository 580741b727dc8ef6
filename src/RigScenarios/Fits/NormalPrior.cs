using RigScenarios.Parts;

namespace RigScenarios.Fits;

/// <summary>
/// What is believed of one unknown before anything is measured: a normal distribution. It counts like one measurement.
/// </summary>
/// <remarks>For capacity, resistance and loads the unknown is a natural logarithm, so that a small deviation
/// is a share.</remarks>
public sealed record NormalPrior
{
    /// <param name="mean">Its middle; finite.</param>
    /// <param name="deviation">One standard deviation; above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value lies outside its range.</exception>
    public NormalPrior(double mean, double deviation)
    {
        Mean = mean;
        Deviation = deviation;
    }

    /// <summary>Its middle.</summary>
    public double Mean
    {
        get;
        init
        {
            Require.Finite(value, "");
            field = value;
        }
    }

    /// <summary>One standard deviation; above 0.</summary>
    public double Deviation
    {
        get;
        init
        {
            Require.Positive(value, "");
            field = value;
        }
    }
}
