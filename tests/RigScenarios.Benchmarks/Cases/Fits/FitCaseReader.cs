using System.Text.Json;
using RigScenarios.Fits;
using RigScenarios.Fits.Logs;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Benchmarks.Cases.Fits;

/// <summary>Reads the fits of a case file (JSON; fields and units in tests/RigScenarios.Checks/data/fit-cases/fit-format.md).
/// Cases of kind pulse and bench are no fits and are passed over.</summary>
internal static class FitCaseReader
{
    /// <summary>The file of a folder's cases.</summary>
    public static string FileOf(string folder) => Path.Combine(folder, "cases.json");

    public static IReadOnlyList<FitCase> Read(string folder) => CaseFile.Read(FileOf(folder), (id, element, fields, problems) =>
        fields.Text(element, "kind") is "pulse" or "bench" ? null : new FitFields(element, fields, problems, folder).Read(id));
}

/// <summary>Reads one fit.</summary>
internal sealed class FitFields(JsonElement element, CaseFields fields, List<string> problems, string folder)
{
    public FitCase? Read(string id)
    {
        var before = problems.Count;
        var pack = DischargeCaseReader.ReadPack(element, fields, problems, isLabel: true);
        var priors = Priors();
        var notes = List(element, "notes").Select(Note).ToList();
        var logs = List(element, "logs").Select(log => LogCase.Read(log, folder)).ToList();
        var forecast = CaseFields.Find(element, "forecast", out var run) ? Run(run) : null;
        var candidates = List(element, "candidates").Select(Candidate).ToList();
        if (problems.Count > before || pack is null)
            return null;
        try
        {
            var problem = new FitProblem(pack, priors, notes, [.. logs.Zip(List(element, "logs"), Log)]);
            return new FitCase(id, problem, logs, forecast, candidates);
        }
        catch (ArgumentException error)
        {
            fields.Problem("notes", error.Message);
            return null;
        }
    }

    private static IReadOnlyList<JsonElement> List(JsonElement parent, string name) =>
        CaseFields.Find(parent, name, out var list) && list.ValueKind == JsonValueKind.Array ? [.. list.EnumerateArray()] : [];

    private FitPriors Priors()
    {
        var overall = fields.Text(element, "loadScale") == "overall";
        CaseFields.Find(element, "prior.load", out var load);
        return new FitPriors
        {
            Capacity = Prior("prior.aQ"),
            Resistance = Prior("prior.aR"),
            Load = overall ? Prior("prior.load") : null,
            Devices = overall ? OrderedMap<NormalPrior>.Empty : new(load.EnumerateObject().Select(device =>
                KeyValuePair.Create(device.Name, Prior($"prior.load.{device.Name}")))),
            KnownDevices = [.. List(element, "known").Select(name => name.GetString()!)],
            AmbientDeviation = CaseFields.Find(element, "prior.ambientOffsetK", out _)
                ? TemperatureDelta.FromKelvins(Positive(element, "prior.ambientOffsetK.sd")) : null,
            OpenCircuitDeviation = ElectricPotential.FromVolts(
                fields.Number(element, "ocvSdV", value => value > 0, "above 0", otherwise: 0.02)),
        };
    }

    private NormalPrior Prior(string path) =>
        new(Finite(fields.Number(element, $"{path}.mean")), Positive(element, $"{path}.sd"));

    private FieldNote Note(JsonElement note) => new()
    {
        Id = fields.Text(note, "id"),
        Run = Run(note),
        Runtime = Seconds(note, "runtimeS"),
        StillRunning = Seconds(note, "stillRunningS"),
        PercentShown = CaseFields.Find(note, "percentShown", out _) ? Ratio.FromPercent(Finite(
            fields.Number(note, "percentShown", value => value is >= 0 and <= 100, "0 to 100"))) : null,
        ClockError = Seconds(note, "clockSdS") ?? Duration.FromMinutes(3),
    };

    private BatteryRun Run(JsonElement run) => new()
    {
        Ambient = Temperature.FromKelvins(Positive(run, "ambientK")),
        InitialTemperature = CaseFields.Find(run, "initialTemperatureK", out _)
            ? Temperature.FromKelvins(Positive(run, "initialTemperatureK")) : null,
        InitialCharge = Charge(run),
        Cutoff = CaseFields.Find(run, "cutoffVoltageV", out _)
            ? ElectricPotential.FromVolts(Positive(run, "cutoffVoltageV")) : null,
        Stretches = [.. fields.Objects(run, "stretches").Select(stretch => new RunStretch(
            Seconds(stretch, "durationS"), [.. fields.Objects(stretch, "states").Select(State)]))],
        Steady = CaseFields.Find(run, "steady", out var steady) && steady.ValueKind == JsonValueKind.True,
    };

    private RunState State(JsonElement state)
    {
        CaseFields.Find(state, "devicesW", out var devices);
        return new RunState(
            Ratio.FromDecimalFractions(Finite(fields.Number(state, "share", otherwise: 1))), Devices(devices));
    }

    private CandidateTest Candidate(JsonElement candidate)
    {
        var id = fields.Text(candidate, "id");
        switch (fields.Text(candidate, "kind"))
        {
            case "run":
                var clock = Seconds(candidate, "clockSdS") ?? Duration.FromMinutes(3);
                return new CandidateRun(id, Run(candidate)) { ClockError = clock };
            case "capacity":
                return new CandidateBenchTest(id, BenchQuantity.Capacity, null, Positive(candidate, "sd"));
            case "pulse":
                return new CandidateBenchTest(id, BenchQuantity.Resistance, null, Positive(candidate, "sd"));
            case "meter":
                var device = CaseFields.Find(candidate, "device", out var name) ? name.GetString() : null;
                return new CandidateBenchTest(id, BenchQuantity.DevicePower, device, Positive(candidate, "sd"));
            default:
                fields.Problem("candidates", "accepted: run, capacity, pulse, meter");
                return new CandidateBenchTest(id, BenchQuantity.Capacity, null, 1);
        }
    }

    private PowerLog Log(LogReading log, JsonElement described) => new()
    {
        Id = fields.Text(described, "id"),
        Rows = log.Rows,
        Ambient = Temperature.FromKelvins(Positive(described, "ambientK")),
        InitialCharge = Charge(described),
        Devices = CaseFields.Find(described, "devices", out var devices) ? Devices(devices) : OrderedMap<Power>.Empty,
    };

    private Ratio Charge(JsonElement parent) => Ratio.FromDecimalFractions(Finite(
        fields.Number(parent, "initialSoc", value => value is > 0 and <= 1, "above 0, up to 1", otherwise: 1)));

    private OrderedMap<Power> Devices(JsonElement devices)
    {
        if (devices.ValueKind != JsonValueKind.Object)
        {
            fields.Problem("devicesW", "accepted: a power in W for each device");
            return OrderedMap<Power>.Empty;
        }

        return new(devices.EnumerateObject().Select(device =>
            KeyValuePair.Create(device.Name, Power.FromWatts(device.Value.GetDouble()))));
    }

    private Duration? Seconds(JsonElement parent, string name) =>
        CaseFields.Find(parent, name, out _) ? Duration.FromSeconds(Positive(parent, name)) : null;

    private double Positive(JsonElement parent, string path) => fields.Positive(parent, path) is var found
        && double.IsNaN(found) ? 1 : found;

    // A field that is wrong has been told already; a number in its place lets the rest be looked at.
    private static double Finite(double found) => double.IsFinite(found) ? found : 1;
}
