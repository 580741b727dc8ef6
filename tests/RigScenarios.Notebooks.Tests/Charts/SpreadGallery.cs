using RigScenarios.Charts;
using RigScenarios.Charts.Distributions;
using RigScenarios.Charts.HeatMaps;
using RigScenarios.Charts.Lines;
using RigScenarios.Charts.Pages;
using RigScenarios.Charts.ParallelAxes;
using RigScenarios.Charts.Rows;

namespace RigScenarios.Notebooks.Tests.Charts;

/// <summary>Charts of what is not known exactly, over invented figures.</summary>
internal static class SpreadGallery
{
    public const int Count = 8;

    public static ChartPage Page() => new ChartPage { Title = "Charts of spread" }
        .With(Lasting()).With(Bands()).With(Tornado()).With(HardTornado()).With(Shares()).With(Contours()).With(Many())
        .With(AllInOne());

    public static Figure Lasting()
    {
        // 16:00 to 19:00, and twenty that ran on.
        List<double> ends = [.. Enumerable.Range(0, 980).Select(i => 16 + 3 * Math.Pow(i / 979.0, 0.7)),
            .. Enumerable.Repeat(double.PositiveInfinity, 20)];
        return new LastingDays
        {
            Slug = "lasting", Title = "How many of ten such days last?", Time = ChartAxis.ClockTime("end of the day"),
                Ends = ends,
            Marks = [new("planned until 18:00", 18), new("8 of 10 last beyond 16:19", 16.32)],
        }.ToFigure();
    }

    public static Figure Bands()
    {
        var places = Enumerable.Range(0, 26).Select(i => -20.0 + 2 * i).ToList();
        List<double> At(double part) => places.ConvertAll(celsius => 7 + 0.08 * celsius - 0.0012 * celsius * celsius + part);
        return new SpreadOverAxis
        {
            Slug = "spread-bands", Title = "How long does it last in which air?", X = new("air", "°C"), Y = new("runtime", "h"),
            Places = places, Middle = At(0), Bands = [new("8 of 10 days", At(-1.1), At(1.4)), new("5 of 10 days", At(-0.4),
                At(0.6))],
            Limits = [new LimitLine("planned day: 7 h", 7)],
        }.ToFigure();
    }

    public static Figure Tornado() => new TornadoChart
    {
        Slug = "tornado", Title = "What does each of them do?", Value = ChartAxis.ClockTime("end of the day"),
        Middle = 17.03, MiddleName = "as given: 17:02",
        Bars =
        [
            new("energy of the label, 181 to 199 Wh", 16.4, 17.6), new("air, −12 to −4 °C", 16.2, 17.9),
            new("draw of the camera, 40 to 48 W", 17.5, 16.5), new("mass of the lens, 1.1 to 1.3 kg", 17.03, 17.03),
        ],
    }.ToFigure();

    // Both ends on one side, an end that is not known, the longest on the last place.
    public static Figure HardTornado() => new TornadoChart
    {
        Slug = "hard-tornado", Title = "What of those that are hard to draw?", Value = new ChartAxis("left after wrap", "h"),
        Middle = 0.4, MiddleName = "as given: 0.4 h",
        Bars =
        [
            new("setting that is best in its middle", -0.2, -0.9), new("both better", 0.9, 0.6),
            new("one end that nobody knows and that has a long name", double.NaN, 1.3), new("large", -1.5, 2.4),
        ],
    }.ToFigure();

    public static Figure Shares() => new SharesOfSpreadChart
    {
        Slug = "shares", Title = "Where does the spread come from?", Of = "the end of the day",
        Caption = "Each bar holds its share with a chance of 95 %.",
        Shares =
        [
            new("air temperature", new(52, 47, 57), new(55, 52, 59)), new("energy of the label", new(31, 25, 36), new(34, 30,
                38)),
            new("resistance of an aged battery", new(6, -1, 12), new(11, 9, 13)),
            new("mass of the lens", new(-0.3, -4, 4), new(0, 0, 0)),
        ],
    }.ToFigure();

    public static Figure Contours()
    {
        var airs = Enumerable.Range(0, 31).Select(i => -20.0 + i).ToList();
        var energies = Enumerable.Range(0, 21).Select(i => 90.0 + 8 * i).ToList();
        return ContourChart.Of(new HeatMapChart
        {
            Slug = "contours", Title = "Where do 9 of 10 days last?", X = new("air", "°C"), Y = new("energy of the label", "Wh"),
            Value = new("of 10 days that last"), Columns = airs, Rows = energies,
            Cells = [.. energies.Select(energy => airs.ConvertAll(air => air < -18 && energy < 110 ? double.NaN
                : 10 / (1 + Math.Exp(-(energy - 170 + 3 * air) / 18))))],
            BlankMeans = "the camera does not start", Threshold = new("9 of 10 days", 9),
        });
    }

    public static Figure Many(int count = 20_000)
    {
        var (air, energy, load, name, end) = Drawn(count);
        return new ParallelAxesChart
        {
            Slug = "many", Title = "Which days do not last?",
            Axes =
            [
                new(new("air", "°C"), air), new(new("energy of the label", "Wh"), energy),
                new(new("battery"), name) { Names = ["brick", "pocket", "large block"] }, new(new("draw of the camera", "W"),
                    load),
                new(ChartAxis.ClockTime("end of the day"), end),
            ],
            Groups = [new("last until 18:00", i => end[i] >= 18), new("end before", i => end[i] < 18)],
        }.ToFigure();
    }

    public static Figure AllInOne()
    {
        var (air, energy, _, _, end) = Drawn(300);
        air[7] = double.NaN;
        return new ParallelAxesChart
        {
            Slug = "all-in-one", Title = "How do they go together?",
            Axes = [new(new("air", "°C"), air), new(new("energy of the label", "Wh"), energy), new(new("end", "h"), end)],
        }.ToFigure();
    }

    private static (List<double> Air, List<double> Energy, List<double> Load, List<double> Name,
        List<double> End) Drawn(int count)
    {
        var random = new Random(7);
        double Normal() => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
        var air = new List<double>();
        var (energy, load, name, end) = (new List<double>(), new List<double>(), new List<double>(), new List<double>());
        for (var i = 0; i < count; i++)
        {
            air.Add(-8 + 3 * Normal());
            energy.Add(190 + 8 * Normal());
            load.Add(44 + 2 * Normal());
            name.Add(random.Next(3));
            end.Add(9 + energy[i] * (1 + 0.01 * air[i]) / load[i] * 2.3 + 0.3 * (name[i] - 1));
        }

        return (air, energy, load, name, end);
    }
}
