using System.Globalization;
using System.Text;

namespace RigScenarios.Benchmarks.InventedNotes;

/// <summary>
/// `invent-notes FOLDER [--seed S]`: writes the invented field notes of the market hall with their log, from a battery whose true
/// values only this program and the end of docs/field-notes.md know.
/// </summary>
internal static class InventNotesCommand
{
    public const string Usage = "invent-notes FOLDER [--seed S]";

    private const string Scenario = "../scenarios/market-hall.yaml";
    private const string Log = "market-hall-log.csv";
    private const int UsualSeed = 20;

    // Two days are never alike.
    private const double DayDeviation = 0.035;

    private static readonly (InventedRun Run, string Date, string Remark)[] Noted =
    [
        (new("test-in-the-yard", "tripod", 16, 16, 0.4, "monitor"), "2026-09-28", "Waiting for the light, monitor on all day."),
        (new("fish-stalls", "shoulder", 7, 18, 0.6, "monitor"), "2026-10-06", "Out of the bag in the morning."),
        (new("long-interview", "tripod", 20, 20, 0.9, "monitor", "transmitter"), "2026-10-12", "Nearly always rolling."),
        (new("loading-ramp", "hand", 3, 17, 0.5, "monitor"), "2026-10-20", "In the rain."),
        (new("second-battery", "tripod", 10, 10, 0.5, "monitor") { ChargePercent = 68 }, "2026-10-27",
            "Somebody took it off the charger early?"),
    ];

    private static readonly InventedRun StillRunning = new("early-shift", "shoulder", 9, 9, 0.5, "monitor");

    private static readonly InventedRun Logged = new("log", "tripod", 12, 12, 0.5, "monitor", "transmitter");

    public static int Run(string[] arguments)
    {
        var seed = UsualSeed;
        if (arguments is not ([_] or [_, "--seed", _])
            || (arguments.Length == 3 && !int.TryParse(arguments[2], CultureInfo.InvariantCulture, out seed)))
        {
            Console.Error.WriteLine($"Usage: {Usage}, such as: invent-notes data/field-notes");
            return 2;
        }
        var folder = arguments[0];
        var battery = new HiddenBattery(Path.Combine(folder, Scenario));
        var random = new Random(seed);
        OutputFile.Write(Path.Combine(folder, "market-hall.yaml"), Notes(battery, random));
        OutputFile.Write(Path.Combine(folder, Log), InventedLog.Text(battery.Run(Logged, points: 12000), random));
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"Written, of a battery with {HiddenBattery.CapacityLeftPercent} % of its label, {HiddenBattery.ResistanceGrowth} "
            + $"times the resistance, and {HiddenBattery.LoadScale} times the draws."));
        return 0;
    }

    private static string Notes(HiddenBattery battery, Random random)
    {
        var text = new StringBuilder("""
            # Six weeks with the brick of the market hall: notes of the evening, and a log of a meter on its cable.
            # Invented, as the log is: by a command, from a battery whose true values stand at the end of docs/field-notes.md.
            # The question: does this brick last the morning in the market hall?
            rigscenarios: field notes 1
            note: Invented demo notes; no real production, place or product is meant.
            scenario: ../scenarios/market-hall.yaml
            build: tripod

            notes:

            """.ReplaceLineEndings("\n"));
        foreach (var (run, date, remark) in Noted)
        {
            var hours = battery.Run(run).FirstStop!.At.Hours - StartHour;
            var minutes = 5 * Math.Round(60 * hours * Math.Exp(DayDeviation * InventedLog.Normal(random)) / 5);
            text.Append(Head(run, date, remark)).Append(CultureInfo.InvariantCulture,
                $"    lasted: {Math.Floor(minutes / 60):0} h {minutes % 60:00} min\n");
        }
        var course = battery.Run(StillRunning, points: 400);
        var shown = course.Series.Last(point => point.Time.Hours - StartHour <= 3).StateOfCharge.Percent;
        text.Append(Head(StillRunning, "2026-11-03", "Wrap before it was empty.")).Append(CultureInfo.InvariantCulture,
            $"    still-running-after: 3 h\n    shown: {5 * Math.Round((shown + (4 * InventedLog.Normal(random))) / 5):0} %\n");
        text.Append(string.Create(CultureInfo.InvariantCulture, $$"""

            logs:
              meter-on-the-cable:
                file: {{Log}}
                date: 2026-11-10
                air: {{Logged.AirCelsius}} °C
                devices: {camera: record {{100 * Logged.RecordShare:0}} %, monitor: on, transmitter: on}
                columns: {time: t (s), voltage: U (V), current: I (A)}

            """).ReplaceLineEndings("\n"));
        return text.ToString();
    }

    // Days without a clock begin at eight.
    private const double StartHour = 8;

    private static string Head(InventedRun run, string date, string remark)
    {
        var others = string.Concat(run.Others.Select(device => $", {device}: on"));
        var build = run.Build == "tripod" ? "" : $"\n    build: {run.Build}";
        var start = run.StartCelsius == run.AirCelsius ? "" : $"\n    start-temperature: {run.StartCelsius} °C";
        return string.Create(CultureInfo.InvariantCulture, $$"""
              {{run.Name}}:
                date: {{date}}
                remark: "{{remark}}"{{build}}
                air: {{run.AirCelsius}} °C{{start}}
                devices: {camera: record {{100 * run.RecordShare:0}} %{{others}}}

            """).ReplaceLineEndings("\n");
    }
}
