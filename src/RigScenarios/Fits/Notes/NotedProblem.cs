using RigScenarios.Batteries;
using RigScenarios.Builds;
using RigScenarios.Cells;
using RigScenarios.Fits.Logs;
using RigScenarios.Parts;
using RigScenarios.Scenarios;
using UnitsNet;

namespace RigScenarios.Fits.Notes;

/// <summary>Field notes made ready to be fitted: the problem, the logs as they were read, and what was assumed where the notes
/// say nothing.</summary>
/// <param name="Noted">The notes with their scenario.</param>
/// <param name="Problem">The problem.</param>
/// <param name="Readings">The logs as they were read, by their names.</param>
/// <param name="Expected">What the scenario says of the battery's age before the notes speak; new where it says nothing.</param>
/// <param name="Assumed">What was taken where the notes say nothing.</param>
public sealed record NotedProblem(
    NotedBattery Noted, FitProblem Problem, OrderedMap<LogReading> Readings, Age Expected, IReadOnlyList<NoteAssumption> Assumed)
{
    /// <summary>Makes notes ready to be fitted; reads their logs.</summary>
    /// <param name="noted">The notes.</param>
    /// <param name="options">How the fit is made; in full if null.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <exception cref="ScenarioProblemsException">A log can't be used, or the notes say nothing that can be fitted.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static NotedProblem Of(NotedBattery noted, FitOptions? options = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(noted);
        var readings = Read(noted, cancellation);
        var made = ExpectedBattery.Of(noted.Scenario, noted.Build);
        var expected = made.Pack.Age;
        var powered = noted.Powered(noted.Build);
        try
        {
            return new NotedProblem(noted, new FitProblem(
                made.Pack, Priors(noted, powered, expected),
                [.. noted.Notes.Notes.Select(note => Note(noted, note.Key, note.Value))],
                [.. readings.Select(reading => Log(noted, reading.Key, reading.Value.Rows))],
                [.. Tests(noted, made.Pack, powered)], options), readings, expected, NoteAssumption.In(noted));
        }
        catch (ArgumentException exception)
        {
            throw new ScenarioProblemsException(
                [.. exception.Message.Split(" (Parameter")[0].Split('\n').Select(line =>
                    new Diagnostic(Severity.Error, "", TextPlace.None, "notes", line.Trim()))]);
        }
    }

    private static FitPriors Priors(NotedBattery noted, PoweredBuild powered, Age expected)
    {
        var known = noted.Notes.Known.Concat(NoteRun.OwnDraws(powered)).ToList();
        var priors = FitPriors.Of(expected) with
        {
            KnownDevices = known,
            AmbientDeviation = noted.Notes.AirIsUncertain ? TemperatureDelta.FromKelvins(2) : null,
        };
        var scaled = powered.Devices.Keys.Except(known).ToList();
        if (noted.Notes.Scales == LoadScales.Together)
        {
            // A draw that a meter has shown is put right where it stands, and the one scale is for the others.
            known.AddRange(noted.Notes.Meters.Keys.Except(known));
            return scaled.Except(noted.Notes.Meters.Keys).Any() ? priors : priors with { Load = null };
        }
        var ran = Ran(noted);
        return priors with
        {
            Load = null,
            Devices = new OrderedMap<NormalPrior>(scaled.Where(ran.Contains)
                .Select(name => KeyValuePair.Create(name, new NormalPrior(0, FitPriors.SheetDeviation)))),
        };
    }

    /// <summary>Devices that ran in some note or log: of another nobody learns anything.</summary>
    private static HashSet<string> Ran(NotedBattery noted) =>
    [
        .. noted.Notes.Notes.Values.SelectMany(note => NoteRun.Of(noted, note).Stretches)
            .SelectMany(stretch => stretch.States).SelectMany(state => state.Devices.Keys),
        .. noted.Notes.Logs.Values.SelectMany(log => NoteRun.AtTerminals(noted, log).Keys),
        .. noted.Notes.Meters.Keys,
    ];

    private static FieldNote Note(NotedBattery noted, string name, WrittenNote note) => new()
    {
        Id = name, Run = NoteRun.Of(noted, note), Runtime = note.Lasted, StillRunning = note.StillRunningAfter,
        PercentShown = note.Shown, ClockError = note.ClockWithin ?? Duration.FromMinutes(3),
    };

    private static PowerLog Log(NotedBattery noted, string name, LogRows rows)
    {
        var log = noted.Notes.Logs[name];
        return new PowerLog
        {
            Id = name, Rows = rows, Ambient = noted.AirOf(log).Air, InitialCharge = log.Charge ?? Ratio.FromDecimalFractions(1),
            Devices = NoteRun.AtTerminals(noted, log),
        };
    }

    private static IEnumerable<DoneTest> Tests(NotedBattery noted, Pack pack, PoweredBuild powered)
    {
        if (noted.Notes.Scales == LoadScales.Each)
        {
            foreach (var (name, read) in noted.Notes.Meters.Where(meter => !noted.Notes.Known.Contains(meter.Key)))
                yield return DoneTest.OfMeter(name, MeterReading.Of(read, powered.Devices[name].Draw)!.Value);
        }
        if (noted.Notes.Capacity is { } capacity)
        {
            var label = powered.Battery.Battery!;
            yield return DoneTest.OfCapacity(capacity.Charge is { } charge ? charge.AmpereHours / pack.Capacity.AmpereHours
                : capacity.Energy!.Value.WattHours / label.Energy.WattHours);
        }
        if (noted.Notes.Pulse is { } pulse)
            yield return DoneTest.OfPulse(pulse.ResistanceGrowth, pulse.Temperature ?? Temperature.FromDegreesCelsius(20));
    }

    private static OrderedMap<LogReading> Read(NotedBattery noted, CancellationToken cancellation)
    {
        var (read, problems) = (new List<KeyValuePair<string, LogReading>>(), new List<Diagnostic>());
        foreach (var (name, log) in noted.Notes.Logs)
        {
            var (reading, wrong) = PowerLogFile.TryRead(Path.Combine(noted.Folder, log.File), LogLayouts.Of(log), cancellation);
            problems.AddRange(wrong);
            if (reading is not null)
                read.Add(new(name, reading));
        }
        return read.Count < noted.Notes.Logs.Count ? throw new ScenarioProblemsException(problems)
            : new OrderedMap<LogReading>(read);
    }
}
