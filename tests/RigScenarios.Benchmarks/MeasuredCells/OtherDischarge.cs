namespace RigScenarios.Benchmarks.MeasuredCells;

/// <summary>A published discharge of another cell, down to 2.5 V.</summary>
/// <param name="Cell">The cell.</param>
/// <param name="Rate">The current as the trade writes it.</param>
/// <param name="Amperes">Current, A.</param>
/// <param name="Celsius">Temperature of the air, °C.</param>
/// <param name="AmpereHours">Charge, Ah.</param>
/// <param name="WattHours">Energy, Wh; null where it is not published.</param>
internal sealed record OtherDischarge(
    OtherCell Cell, string Rate, double Amperes, double Celsius, double AmpereHours, double? WattHours = null)
{
    // Data sheet of cell INR-21700-P50B: its curves at 23 °C and at 5 A, digitised in a public repository; the last point of
    // each, 2.5 V. The two curves at 5 A and 23 °C differ by 0.2 %, neighbouring rates by 2 %: no better than that is known.
    private static readonly OtherCell Large = new("5 Ah 21700, data sheet", 70, 21.55, 70.15, 1, 23, 4.9323);

    // Marketing sheet of cell NCR18650B, pages 2 and 3, as read from its graphs by an annotator of a public data set. The
    // temperature graph is taken to be at 1C: its value at 25 °C is that of the 1C curve of the rate graph.
    private static readonly OtherCell HighEnergy = new("3.3 Ah 18650, data sheet", 48.5, 18.5, 65.3, 0.65, 25, 3.31);

    // ARTS-Laboratory, data set of cell 30Q, commit 4e9effdf, CC BY-SA 4.0: means of two cells in still air of 22 to 23 °C.
    private static readonly OtherCell Measured = new("3 Ah 18650, measured", 48, 18.3, 65, 0.3, 22.5, 2.985);

    // Specification of cell INR21700-50E, V1.0, 2018, page 3: standard capacity at 0.2C, rated capacity at 1C.
    private static readonly OtherCell Second21700 = new("4.9 Ah 21700, data sheet", 69, 21.25, 70.8, 0.98, 25, 4.9);

    /// <summary>All, those by which a capacity is set among them.</summary>
    public static IReadOnlyList<OtherDischarge> All { get; } =
    [
        new(Large, "C/5", 1, 23, 4.9323),
        new(Large, "C/2", 2.5, 23, 4.8345),
        new(Large, "1C", 5, 23, 4.7978),
        new(Large, "2C", 10, 23, 4.8161),
        new(Large, "1C", 5, 60, 4.9762),
        new(Large, "1C", 5, 45, 4.9524),
        new(Large, "1C", 5, 10, 4.6488),
        new(Large, "1C", 5, 0, 4.5238),
        new(HighEnergy, "C/5", 0.65, 25, 3.31),
        new(HighEnergy, "C/2", 1.625, 25, 3.24),
        new(HighEnergy, "1C", 3.25, 25, 3.28),
        new(HighEnergy, "2C", 6.5, 25, 3.29),
        new(HighEnergy, "1C", 3.25, 40, 3.34),
        new(HighEnergy, "1C", 3.25, 0, 3.01),
        new(HighEnergy, "1C", 3.25, -10, 2.89),
        new(HighEnergy, "1C", 3.25, -20, 2.60),
        new(Measured, "C/10", 0.3, 22.5, 2.985, 10.875),
        new(Measured, "1C", 3, 22.5, 2.9615, 10.415),
        new(Measured, "2C", 6, 22.5, 2.9445, 10.05),
        new(Measured, "3C", 9, 22.5, 2.923, 9.705),
        new(Second21700, "C/5", 0.98, 25, 4.9),
        new(Second21700, "1C", 4.9, 25, 4.753),
    ];

    /// <summary>Whether the capacity is set by it.</summary>
    public bool IsSet => Amperes == Cell.SlowAmperes;

    /// <summary>The published discharge at a rate and temperature of a cell whose name begins with a text.</summary>
    public static OtherDischarge Of(string cell, string rate, double celsius) => All.Single(one =>
        one.Cell.Name.StartsWith(cell, StringComparison.Ordinal) && one.Rate == rate && one.Celsius == celsius);
}
