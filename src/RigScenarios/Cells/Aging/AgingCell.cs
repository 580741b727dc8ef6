namespace RigScenarios.Cells.Aging;

/// <summary>
/// Voltage at rest of the cell on which the <c>nmc</c> set was measured. Its fit is in volts of that cell: the voltages of
/// another cell at the same charge would change the loss (50 mV more at half charge, 10 % more).
/// </summary>
/// <remarks>
/// M. Ecker et al., J. Power Sources 248 (2014) 839-851 and J. Schmalstieg et al., J. Power Sources 257 (2014) 325-334, as
/// digitised in a public program under the BSD-3-Clause licence; ±2 mV; second-hand.
/// </remarks>
internal static class AgingCell
{
    // Over charge 0, 0.05 … 1, V.
    private static readonly double[] Table =
    [
        3.331, 3.420, 3.491, 3.544, 3.581, 3.608, 3.627, 3.641, 3.655, 3.673, 3.697,
        3.732, 3.775, 3.821, 3.869, 3.915, 3.965, 4.019, 4.073, 4.118, 4.162,
    ];

    /// <summary>Equal steps between the knots of the table; between two knots the voltage is a straight line.</summary>
    public const int Steps = 20;

    /// <summary>Voltage at a charge of 0…1, V.</summary>
    public static double VoltsAt(double charge)
    {
        var place = Math.Clamp(charge, 0, 1) * Steps;
        var knot = Math.Min((int)place, Steps - 1);
        return Table[knot] + ((Table[knot + 1] - Table[knot]) * (place - knot));
    }

    /// <summary>Charge at a voltage, held in 0…1.</summary>
    public static double ChargeAt(double volts)
    {
        if (volts <= Table[0])
            return 0;
        for (var knot = 0; knot < Steps; knot++)
        {
            if (volts < Table[knot + 1])
                return (knot + ((volts - Table[knot]) / (Table[knot + 1] - Table[knot]))) / Steps;
        }

        return 1;
    }
}
