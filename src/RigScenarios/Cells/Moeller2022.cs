using UnitsNet;

namespace RigScenarios.Cells;

/// <summary>
/// Measured open-circuit voltage and resistance of a 3 Ah LFP/graphite 26650 cell, from the data files of a public simulator of
/// stationary storage (M. Möller et al., 2022).
/// </summary>
public static class Moeller2022
{
    private static readonly double[] Volts =
    [
        2.2862, 3.0647, 3.1967, 3.2120, 3.2343, 3.2547, 3.2703, 3.2826, 3.2921, 3.2973, 3.2995,
        3.3014, 3.3035, 3.3063, 3.3108, 3.3185, 3.3345, 3.3403, 3.3425, 3.3447, 3.5305,
    ];

    /// <summary>The citation.</summary>
    public static Citation Source { get; } = new(
        "M. Möller, D. Kucevic, N. Collath, A. Parlikar, P. Dotzauer, B. Tepe, S. Englberger, A. Jossen, H. Hesse",
        "",
        2022,
        "doi:10.1016/j.est.2021.103743, data files of its program, BSD-3-Clause; open-circuit voltage thinned to steps of 5 % "
            + "of charge; resistance at 50 % of charge",
        Standing.ReadInSource);

    /// <summary>The measured open-circuit voltage in steps of 5 % of charge.</summary>
    public static OpenCircuitVoltage OpenCircuitVoltage { get; } =
        OpenCircuitVoltage.FromTable([.. Enumerable.Range(0, Volts.Length).Select(i => i / 20.0)], Volts);

    /// <summary>47.8 mΩ at 25 °C times 3 Ah; whether pulse or sustained is not said.</summary>
    public const double ResistanceOhmAmpereHours = 0.143;

    /// <summary>Between 10 °C (69.4 mΩ) and 25 °C (47.8 mΩ).</summary>
    public static MolarEnergy ActivationEnergy { get; } = MolarEnergy.FromKilojoulesPerMole(17.4);

    /// <summary>38.4 mΩ at 40 °C over 47.8 mΩ at 25 °C.</summary>
    public const double ResistanceFloor = 0.80;
}
