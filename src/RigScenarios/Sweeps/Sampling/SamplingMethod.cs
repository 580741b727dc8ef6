namespace RigScenarios.Sweeps.Sampling;

/// <summary>How the samples of uncertain fields are spread over what they may be.</summary>
public enum SamplingMethod
{
    /// <summary>Each sample by itself, as by dice.</summary>
    Random,

    /// <summary>As many slices of each field as there are samples, and one sample in each slice: no field's range is left out by
    /// chance (M. D. McKay, R. J. Beckman and W. J. Conover, "A comparison of three methods for selecting values of input
    /// variables in the analysis of output from a computer code", Technometrics 21, 1979).</summary>
    LatinHypercube,

    /// <summary>A Sobol sequence, which fills all fields together evenly: mostly the smallest error for as many runs; numbers of
    /// samples that are powers of two suit it best.</summary>
    Sobol,
}
