using UnitsNet;

namespace RigScenarios.Cells.Aging;

/// <summary>A cell whose capacity was measured at the end of a test; no set was fitted to it.</summary>
/// <param name="Number">Its number in the test.</param>
/// <param name="Temperature">Mean temperature of the cell.</param>
/// <param name="MeanCharge">Mean charge, 0…1.</param>
/// <param name="Depth">Depth of its cycles, 0…1; 0 for one that was only stored.</param>
/// <param name="Cycles">Number of the last cycle; the first one is the measurement at the start. 0 for one that was
/// stored.</param>
/// <param name="Time">How long the test took.</param>
/// <param name="Measured">Capacity at its end over the first one measured.</param>
public sealed record AgedTestCell(
    int Number, Temperature Temperature, Ratio MeanCharge, Ratio Depth, int Cycles, Duration Time, Ratio Measured)
{
    // Not in the data.
    private const double RatePerHour = 1;

    /// <summary>Whether it was stored and not cycled.</summary>
    public bool IsStored => Cycles == 0;

    /// <summary>Full equivalent cycles.</summary>
    public double FullCycles => IsStored ? 0 : (Cycles - 1) * Depth.DecimalFractions;

    /// <summary>The test as a phase of a life; the rate of the cycles, which the data do not give, is taken as 1C.</summary>
    public LifePhase Phase => IsStored
        ? new Storage(Time, Temperature, MeanCharge)
        : new Cycling(Time, Temperature, FullCycles, Depth, RatePerHour, MeanCharge);

    /// <summary>What a set says is left, nothing fitted.</summary>
    /// <param name="set">The set.</param>
    public Ratio By(AgingSet set) => BatteryLife.After(set, false, [Phase]).Age.CapacityLeft;

    /// <summary>The test in words: "cycled by 80 % at 24 °C, 294 days".</summary>
    public override string ToString() => FormattableString.Invariant(
        $"{Use} at {Temperature.DegreesCelsius:0} °C, {Time.Days:0} days");

    private string Use => FormattableString.Invariant(
        $"{(IsStored ? "stored" : "cycled by")} {(IsStored ? MeanCharge : Depth).Percent:0} %{(IsStored ? " full" : "")}");
}

/// <summary>Eleven cells of 75 Ah (NMC) of one type, and their end points: what the sets are held against.</summary>
public static class AgedTestCells
{
    /// <summary>Where the measurements come from.</summary>
    public static Citation Source { get; } = new("K. Smith et al.",
        "Life prediction model for grid-connected Li-ion battery energy storage system", 2017,
        "Proc. American Control Conference, 4062-4068; end points as in the validation files of a public program (BSD-3-Clause, "
            + "© Alliance for Sustainable Energy)",
        Standing.SecondHand);

    /// <summary>The cells by their number.</summary>
    public static IReadOnlyList<AgedTestCell> All { get; } =
    [
        Cycled(1, 24.64, 0.52, 0.8, 3020, 294.12, 0.94654), Cycled(2, 24.02, 0.52, 0.8, 3020, 294.11, 0.94538),
        Cycled(3, 32.21, 0.5, 1, 2417, 286.03, 0.78826), Cycled(4, 31.71, 0.4866666666666668, 0.8, 1492, 286.1, 0.91649),
        Stored(5, 32.42, 1, 286.29, 0.97888),
        Cycled(6, 2.74, 0.52, 0.8, 3020, 272.83, 0.708), Cycled(7, 2.16, 0.52, 0.8, 3020, 272.85, 0.76323),
        Stored(8, 44.38, 0.65, 209.83, 0.95702), Cycled(9, 45.32, 0.52, 0.8, 2216, 209.69, 0.82187),
        Stored(10, 43.9, 1, 209.85, 0.85792), Stored(11, 55, 1, 265.08, 0.67211),
    ];

    /// <summary>Root of the mean square of what a set says less what was measured, as a share of the first capacity.</summary>
    /// <param name="set">The set; null: as if nothing aged.</param>
    /// <param name="stored">True: those that were stored; false: those that were cycled; null: all.</param>
    public static Ratio Error(AgingSet? set, bool? stored = null)
    {
        var misses = All.Where(cell => stored is null || cell.IsStored == stored)
            .Select(cell => (set is null ? 1 : cell.By(set).DecimalFractions) - cell.Measured.DecimalFractions);
        return Ratio.FromDecimalFractions(Math.Sqrt(misses.Average(miss => miss * miss)));
    }

    private static AgedTestCell Stored(int number, double celsius, double charge, double days, double measured) => new(
        number, Temperature.FromDegreesCelsius(celsius), Ratio.FromDecimalFractions(charge), Ratio.Zero, 0,
        Duration.FromDays(days), Ratio.FromDecimalFractions(measured));

    private static AgedTestCell Cycled(
        int number, double celsius, double charge, double depth, int cycles, double days, double measured) => new(
        number, Temperature.FromDegreesCelsius(celsius), Ratio.FromDecimalFractions(charge), Ratio.FromDecimalFractions(depth),
        cycles, Duration.FromDays(days), Ratio.FromDecimalFractions(measured));
}
