using System.Globalization;
using UnitsNet;

namespace RigScenarios.Batteries;

/// <summary>
/// How far off a predicted runtime may be: what is claimed for such a run, and never less than the largest deviation of the
/// measured discharges around it.
/// </summary>
/// <param name="Share">As a share of the runtime, either way; null where nothing was measured around the run.</param>
/// <param name="Rows">The measured discharges around the run; empty where nothing was measured.</param>
/// <param name="Why">What this rests on, as a part of a sentence.</param>
/// <remarks>
/// What was measured is one fresh NMC cell at steady currents. Its rows are in docs/measured-cells.md. Age, other cells, LFP and
/// draws that change come on top; the page shows how much for four other cells and one load, too few to promise anything.
/// </remarks>
public sealed record ExpectedError(Ratio? Share, IReadOnlyList<MeasuredDeviation> Rows, string Why)
{
    // A battery that begins in air of 25 °C is not outside the row of 25 °C for its first hundredth of a kelvin.
    private const double WithinKelvin = 0.05;

    // The claims of docs/measured-cells.md, %: up to 1C, and above it where the battery is not below 0 °C; above it in the cold.
    private const double Claim = 5;
    private const double ClaimOfLargeCurrentsInTheCold = 10;

    /// <summary>What a verdict allows for where nobody has measured: twice the widest claim. Our choice, no source.</summary>
    public static Ratio WhereNotMeasured { get; } = Ratio.FromPercent(2 * ClaimOfLargeCurrentsInTheCold);

    /// <summary>The error of a run, by where its battery was.</summary>
    /// <param name="coldest">Temperature of the battery at its coldest.</param>
    /// <param name="warmest">Temperature of the battery at its warmest; not below the coldest.</param>
    /// <param name="averageRate">Mean current over its capacity, 1/h, over the time in which it feeds the rig.</param>
    /// <param name="oneWell">Whether its charge lies in one well, with a cold table by temperature alone: then nothing is claimed
    /// beyond the measured discharges.</param>
    public static ExpectedError At(Temperature coldest, Temperature warmest, double averageRate, bool oneWell = false) =>
        Of(coldest, warmest, averageRate, averageRate, oneWell);

    /// <summary>The error at a temperature where the rate is not known: of all rates up to 1C.</summary>
    /// <param name="battery">Temperature of the battery.</param>
    /// <param name="oneWell">As above.</param>
    public static ExpectedError At(Temperature battery, bool oneWell = false) => Of(battery, battery, 1.0 / 20, 1, oneWell);

    private static ExpectedError Of(Temperature coldest, Temperature warmest, double slowest, double fastest, bool oneWell)
    {
        var all = oneWell ? MeasuredDeviation.OneWell : MeasuredDeviation.All;
        var measured = all.Select(row => row.Temperature.DegreesCelsius);
        if (Around(measured, coldest.DegreesCelsius, warmest.DegreesCelsius, WithinKelvin) is not { } celsius)
            return NotMeasured(coldest.DegreesCelsius < all.Min(row => row.Temperature.DegreesCelsius) ? coldest : warmest);
        if (Around(all.Select(row => row.Rate), slowest, fastest, 1e-9) is not { } rates)
            return NotMeasured(slowest);
        List<MeasuredDeviation> rows =
        [
            .. all.Where(row => row.Temperature.DegreesCelsius >= celsius.Low && row.Temperature.DegreesCelsius <= celsius.High
                && row.Rate >= rates.Low && row.Rate <= rates.High),
        ];
        var worst = rows.MaxBy(row => row.Largest.Percent)!;
        var at = Text($"{RateName(worst.Rate)} at {worst.Temperature.DegreesCelsius:0} °C");
        const string besides = "age, other cells and changing draws come on top";
        if (!oneWell && ClaimAt(celsius.Low, rates.High) is var claim && claim.Share > worst.Largest)
        {
            return new ExpectedError(
                claim.Share, rows,
                Text($"what is claimed for {claim.Where}: measured discharges of one fresh cell around it differ by up to ")
                + Text($"{worst.Largest.Percent:0.#} % ({at}), and {besides}"));
        }

        return new ExpectedError(
            worst.Largest, rows,
            $"the largest deviation from measured discharges of one fresh cell at {Range(celsius)} °C and {RateRange(rates)} "
            + $"({at}); {besides}");
    }

    private static (Ratio Share, string Where) ClaimAt(double coldestCelsius, double fastest) => (fastest, coldestCelsius) switch
    {
        ( <= 1, _) => (Ratio.FromPercent(Claim), "C/20 to 1C from -20 to 40 °C"),
        (_, >= 0) => (Ratio.FromPercent(Claim), "up to 2C from 0 °C up"),
        _ => (Ratio.FromPercent(ClaimOfLargeCurrentsInTheCold), "more than 1C below 0 °C"),
    };

    // The smallest range of what was measured that holds all of a run; null if the run leaves it.
    private static (double Low, double High)? Around(IEnumerable<double> measured, double low, double high, double within)
    {
        var values = measured.Distinct().Order().ToList();
        if (!(low >= values[0] - within && high <= values[^1] + within))
            return null;
        return (values.Last(value => value <= low + within), values.First(value => value >= high - within));
    }

    private static ExpectedError NotMeasured(Temperature at) =>
        new(null, [], Text($"no discharge was measured at {at.DegreesCelsius:0} °C, only {Measured}"));

    private static ExpectedError NotMeasured(double rate) =>
        new(null, [], Text($"no discharge was measured at {RateName(rate)}, only {Measured}"));

    private static string Measured
    {
        get
        {
            var all = MeasuredDeviation.All;
            var celsius = all.Select(row => row.Temperature.DegreesCelsius).ToList();
            var rates = all.Select(row => row.Rate).ToList();
            return $"{Range((celsius.Min(), celsius.Max()))} °C and {RateRange((rates.Min(), rates.Max()))}";
        }
    }

    private static string Range((double Low, double High) celsius) =>
        celsius.Low == celsius.High ? Text($"{celsius.Low:0}") : Text($"{celsius.Low:0} to {celsius.High:0}");

    private static string RateRange((double Low, double High) range) =>
        range.Low == range.High ? RateName(range.Low) : $"{RateName(range.Low)} to {RateName(range.High)}";

    // As the trade writes it: C/20 is a twentieth of the capacity in an hour, 2C twice the capacity.
    private static string RateName(double rate) => rate switch
    {
        <= 0 => "no current",
        < 1 => Text($"C/{1 / rate:0.#}"),
        _ => Text($"{rate:0.#}C"),
    };

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
