using RigScenarios.Batteries;
using RigScenarios.Cells;
using RigScenarios.Wiring;

namespace RigScenarios.Fits;

/// <summary>
/// One battery, what is believed of it, and what was seen: notes, logs and tests. <see cref="BatteryFit"/> finds what they say
/// together.
/// </summary>
public sealed record FitProblem
{
    /// <param name="pack">The battery as its label has it, new: aQ and aR multiply these values. Its own age, if it has one, is
    /// left aside.</param>
    /// <param name="priors">What label, age and data sheets say.</param>
    /// <param name="notes">Notes of runs; their order means nothing.</param>
    /// <param name="logs">Power logs; none if null.</param>
    /// <param name="tests">Tests that were made; none if null.</param>
    /// <param name="options">How the fit is made; in full if null.</param>
    /// <exception cref="ArgumentException">Something can't be fitted; the message has a line for each problem.</exception>
    public FitProblem(
        Pack pack, FitPriors priors, IReadOnlyList<FieldNote> notes, IReadOnlyList<PowerLog>? logs = null,
        IReadOnlyList<DoneTest>? tests = null, FitOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(pack);
        ArgumentNullException.ThrowIfNull(priors);
        ArgumentNullException.ThrowIfNull(notes);
        Pack = pack with { Age = Age.New };
        Priors = priors;
        Notes = notes;
        Logs = logs ?? [];
        Tests = tests ?? [];
        Options = options ?? FitOptions.Default;
        var problems = Problems().ToList();
        Drives = [.. Logs.Select(log => DriveOf(log, problems)).OfType<LogDrive>()];
        if (problems.Count > 0)
            throw new ArgumentException(string.Join(Environment.NewLine, problems), nameof(notes));
    }

    /// <summary>The battery as its label has it, new.</summary>
    public Pack Pack { get; }

    /// <summary>What label, age and data sheets say.</summary>
    public FitPriors Priors { get; }

    /// <summary>Notes of runs.</summary>
    public IReadOnlyList<FieldNote> Notes { get; }

    /// <summary>Power logs.</summary>
    public IReadOnlyList<PowerLog> Logs { get; }

    /// <summary>Tests that were made.</summary>
    public IReadOnlyList<DoneTest> Tests { get; }

    /// <summary>How the fit is made.</summary>
    public FitOptions Options { get; }

    /// <summary>What the fit needs of each log.</summary>
    internal IReadOnlyList<LogDrive> Drives { get; }

    /// <summary>What keeps a run from being computed, each with what is accepted; none if nothing does.</summary>
    internal static IEnumerable<string> ProblemsOf(string name, BatteryRun run)
    {
        if (run.Stretches.Count == 0)
            yield return $"{name} has no stretch; accepted: one or more, the last one without a length.";
        foreach (var (i, stretch) in run.Stretches.Index())
        {
            var last = i == run.Stretches.Count - 1;
            if ((stretch.Length is null) != last)
                yield return $"{name}, stretch {i + 1}: {(last ? "has a" : "has no")} length; accepted: a length for each "
                    + "stretch but the last one, which goes on to the end.";
            else if (stretch.Length is { } length && !(length.Seconds > 0 && double.IsFinite(length.Seconds)))
                yield return $"{name}, stretch {i + 1}: lasts {length.Seconds:G6} s; accepted: above 0 s.";
            if (stretch.States.Any(state => state.Share.DecimalFractions is not (>= 0 and <= 1)))
                yield return $"{name}, stretch {i + 1}: a state has a share outside 0…100 %.";
            if (stretch.States.Any(state => state.Devices.Values.Any(power => !((double)power.Watts >= 0))))
                yield return $"{name}, stretch {i + 1}: a device draws less than nothing; accepted: 0 W or more.";
            if (last && !(stretch.States.Sum(state => state.Share.DecimalFractions * state.Devices.Values.Sum(power =>
                (double)power.Watts)) > 0))
                yield return $"{name} draws nothing in its last stretch, so that it never ends; accepted: above 0 W.";
            if (run.Wiring is { } wiring)
            {
                var devices = wiring.Elements.OfType<Device>().Select(device => device.Name).ToHashSet(StringComparer.Ordinal);
                foreach (var missing in stretch.States.SelectMany(state => state.Devices.Keys).Distinct()
                    .Where(one => !devices.Contains(one)))
                {
                    yield return $"{name}, stretch {i + 1}: \"{missing}\" is no device of its wiring; its devices: "
                        + $"{string.Join(", ", devices)}.";
                }
            }
        }

        if (run.EndedBy is { } device
            && run.Wiring?.Elements.OfType<Device>().FirstOrDefault(one => one.Name == device)?.MinimumVoltage is null)
            yield return $"{name} was ended by \"{device}\", which is no device with a minimum voltage in its wiring.";
    }

    private LogDrive? DriveOf(PowerLog log, List<string> problems)
    {
        try
        {
            var drive = LogDrive.Of(log, Pack);
            if (log.Devices.Count > 0 && !(drive.MeanPower > 0))
                problems.Add($"Log {log.Id} takes no power from the battery, though devices ran; accepted: a discharge.");
            return drive;
        }
        catch (ArgumentException error)
        {
            problems.Add($"Log {log.Id}: {error.Message.Split(" (Parameter")[0]}");
            return null;
        }
    }

    private IEnumerable<string> Problems()
    {
        foreach (var twice in Notes.GroupBy(note => note.Id).Where(group => group.Count() > 1))
            yield return $"Two notes are called {twice.Key}; accepted: a name of its own for each.";
        foreach (var twice in Logs.GroupBy(log => log.Id).Where(group => group.Count() > 1))
            yield return $"Two logs are called {twice.Key}; accepted: a name of its own for each.";
        foreach (var note in Notes)
        {
            if ((note.Runtime is null) == (note.StillRunning is null))
                yield return $"Note {note.Id} has {(note.Runtime is null ? "neither" : "both")}: a run-time, a time at which it "
                    + "still ran; accepted: one of the two.";
            if (note.PercentShown is not null && note.StillRunning is null)
                yield return $"Note {note.Id} has a percentage shown, but no time at which it still ran.";
            foreach (var problem in ProblemsOf($"Note {note.Id}", note.Run))
                yield return problem;
        }

        foreach (var log in Logs.Where(log => log.Devices.Count > 0
            && !(log.Devices.Values.Sum(power => (double)power.Watts) > 0)))
            yield return $"The devices of log {log.Id} draw nothing; accepted: above 0 W, or no devices.";
        foreach (var test in Tests)
        {
            if (!(test.Factor > 0 && double.IsFinite(test.Factor)) || !(test.Deviation > 0 && double.IsFinite(test.Deviation)))
                yield return $"A test of {test.Quantity} gave {test.Factor:G6} with a deviation of {test.Deviation:G6}; "
                    + "accepted: above 0.";
            if (test.Quantity == BenchQuantity.DevicePower && !Scales(test.Device))
                yield return $"A meter was on \"{test.Device}\", whose draw is no unknown of this fit; accepted: "
                    + (Priors.Devices.Count > 0 ? string.Join(", ", Priors.Devices.Keys) : "no device, for all together") + ".";
        }
    }

    private bool Scales(string? device) => Priors.Devices.Count > 0 ? device is not null && Priors.Devices.ContainsKey(device)
        : Priors.Load is not null && (device is null || !Priors.KnownDevices.Contains(device, StringComparer.Ordinal));
}
