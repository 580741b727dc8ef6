using System.Text.Json;
using RigScenarios.Batteries;
using RigScenarios.Parts;
using RigScenarios.Wiring;
using UnitsNet;

namespace RigScenarios.Benchmarks.Cases;

/// <summary>Reads files of network cases (JSON; fields and units in docs/wiring.md, "Case files").</summary>
internal static class NetworkCaseReader
{
    public static NetworkCaseFile Read(string path)
    {
        using var document = CaseFile.Parse(path);
        var problems = new List<string>();
        var statics = Cases(path, document.RootElement, "static", problems, ReadStatic);
        var runs = Cases(path, document.RootElement, "runs", problems,
            (id, element, fields) => ReadRun(id, element, fields, problems));
        if (problems.Count > 0)
            throw new CaseFileException(string.Join(Environment.NewLine, problems));
        return new NetworkCaseFile(statics, runs);
    }

    private static List<T> Cases<T>(string path, JsonElement root, string list,
        List<string> problems, Func<string, JsonElement, CaseFields, T?> read)
        where T : class
    {
        var cases = new List<T>();
        if (!CaseFields.Find(root, list, out var all) || all.ValueKind != JsonValueKind.Array)
            return cases;
        var ids = new HashSet<string>();
        foreach (var (index, element) in all.EnumerateArray().Index())
        {
            var id = Text(element, "id") ?? "";
            var fields = new CaseFields($"{path}, {list}, case {(id.Length > 0 ? id : $"number {index + 1}")}", problems);
            if (id.Length == 0)
                fields.Problem("id", "missing; accepted: a name");
            else if (!ids.Add(id))
                fields.Problem("id", "used twice; accepted: a name for each case");
            var before = problems.Count;
            try
            {
                if (read(id, element, fields) is { } one && problems.Count == before)
                    cases.Add(one);
            }
            catch (ArgumentException error)
            {
                if (problems.Count == before)
                    fields.Problem("elements", error.Message.TrimEnd('.'));
            }
        }

        return cases;
    }

    private static StaticNetworkCase ReadStatic(string id, JsonElement element, CaseFields fields) => new(
        id,
        ReadNetwork(element, fields),
        ElectricPotential.FromVolts(fields.Positive(element, "packTerminalV")),
        States(element, fields));

    private static NetworkRunCase? ReadRun(string id, JsonElement element, CaseFields fields, List<string> problems)
    {
        var ambient = fields.Positive(element, "ambientK");
        var charge = fields.Number(element, "initialSoc", value => value is >= 0 and <= 1, "from 0 to 1");
        var kelvin = fields.Number(element, "initialTemperatureK", value => value > 0, "above 0", otherwise: ambient);
        var limit = fields.Number(element, "timeLimitS", value => value > 0, "above 0", otherwise: 172_800);
        var pack = DischargeCaseReader.ReadPack(element, fields, problems);
        var network = ReadNetwork(element, fields);
        var blocks = new List<(double Seconds, OrderedMap<string> States)>();
        foreach (var block in fields.Objects(element, "blocks"))
            blocks.Add((fields.Positive(block, "duration_s"), States(block, fields)));
        if (pack is null || double.IsNaN(ambient + charge + kelvin + limit)
            || blocks.Exists(block => double.IsNaN(block.Seconds)))
            return null;
        return new NetworkRunCase(
            id,
            network,
            pack,
            Temperature.FromKelvins(ambient),
            new DischargeStart { StateOfCharge = Ratio.FromDecimalFractions(charge),
                Temperature = Temperature.FromKelvins(kelvin) },
            [.. blocks.Select(block => new WiringBlock(Duration.FromSeconds(block.Seconds), block.States))],
            new DischargeOptions { TimeLimit = Duration.FromSeconds(limit), SeriesPoints = 0 });
    }

    private static WiringNetwork ReadNetwork(JsonElement element, CaseFields fields) =>
        new(fields.Objects(element, "elements").Select(one => ReadElement(one, fields)).OfType<WiringElement>());

    private static WiringElement? ReadElement(JsonElement element, CaseFields fields)
    {
        if (Text(element, "id") is not { Length: > 0 } id)
        {
            fields.Problem("elements.id", "missing; accepted: a name");
            return null;
        }

        if (Text(element, "parent") is not { } parent)
        {
            fields.Problem($"elements.{id}.parent", "missing; accepted: an id, or \"pack\"");
            return null;
        }

        var fedBy = parent == "pack" ? null : parent;
        switch (Text(element, "kind"))
        {
            case "wire":
                return new Wire(id, fedBy,
                    ElectricResistance.FromOhms(fields.NotNegative(element, "resistanceOhm", otherwise: 0)));
            case "switch":
                return new LowVoltageSwitch(id, fedBy, Volts(element, "openBelowV", fields));
            case "regulator":
                return new Regulator(id, fedBy, ElectricPotential.FromVolts(fields.Positive(element, "outputV")))
                {
                    Efficiency = Ratio.FromDecimalFractions(fields.Number(element, "efficiency", value => value is > 0 and <= 1,
                        "above 0, up to 1")),
                    OwnDraw = Power.FromWatts(fields.NotNegative(element, "quiescentW", otherwise: 0)),
                    LossPerAmpere = ElectricPotential.FromVolts(fields.NotNegative(element, "lossV", otherwise: 0)),
                    LossResistance = ElectricResistance.FromOhms(fields.NotNegative(element, "lossOhm", otherwise: 0)),
                    InputMinimum = Volts(element, "minInputV", fields),
                    InputMaximum = Volts(element, "maxInputV", fields),
                };
            case "device":
                return new Device(id, fedBy, Draws(element, fields))
                {
                    MinimumVoltage = Volts(element, "minV", fields),
                    MaximumVoltage = Volts(element, "maxV", fields),
                    Essential = CaseFields.Find(element, "essential", out var essential)
                        && essential.ValueKind == JsonValueKind.True,
                };
            default:
                fields.Problem($"elements.{id}.kind", "accepted: wire, switch, regulator, device");
                return null;
        }
    }

    private static OrderedMap<DeviceDraw> Draws(JsonElement device, CaseFields fields)
    {
        if (!CaseFields.Find(device, "states", out var states) || states.ValueKind != JsonValueKind.Object)
            return OrderedMap<DeviceDraw>.Empty;
        return new OrderedMap<DeviceDraw>(states.EnumerateObject().Select(state => KeyValuePair.Create(state.Name, new DeviceDraw
        {
            ConstantPower = Power.FromWatts(fields.NotNegative(state.Value, "P_W", otherwise: 0)),
            ConstantCurrent = ElectricCurrent.FromAmperes(fields.NotNegative(state.Value, "Ic_A", otherwise: 0)),
            Conductance = ElectricConductance.FromSiemens(fields.NotNegative(state.Value, "g_S", otherwise: 0)),
        })));
    }

    // A threshold of 0 never acts, like one that is left out.
    private static ElectricPotential? Volts(JsonElement element, string path, CaseFields fields) =>
        fields.NotNegative(element, path, otherwise: 0) is var value and not 0 ? ElectricPotential.FromVolts(value) : null;

    private static OrderedMap<string> States(JsonElement element, CaseFields fields)
    {
        if (!CaseFields.Find(element, "states", out var states) || states.ValueKind != JsonValueKind.Object)
        {
            fields.Problem("states", "missing; accepted: device -> state");
            return OrderedMap<string>.Empty;
        }

        return new OrderedMap<string>(states.EnumerateObject()
            .Select(state => KeyValuePair.Create(state.Name, state.Value.GetString() ?? "")));
    }

    private static string? Text(JsonElement element, string name) =>
        element.ValueKind == JsonValueKind.Object && element.TryGetProperty(name, out var value)
            && value.ValueKind == JsonValueKind.String ? value.GetString() : null;
}
