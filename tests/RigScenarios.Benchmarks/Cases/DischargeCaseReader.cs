using System.Text.Json;
using RigScenarios.Batteries;
using RigScenarios.Cells;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Benchmarks.Cases;

/// <summary>Reads files of discharge cases (JSON; fields and units in docs/discharge.md, "Case files").</summary>
internal static class DischargeCaseReader
{
    public static DischargeCaseFile Read(string path)
    {
        using var document = CaseFile.Parse(path);
        var root = document.RootElement;
        var problems = new List<string>();
        var limit = new CaseFields(path, problems).Number(root, "timeLimitS", value => value > 0, "above 0", otherwise: 172_800);
        var cases = new List<DischargeCase>();
        foreach (var (id, element, fields) in CaseFile.Cases(path, root, problems))
        {
            if (ReadCase(id, element, fields, problems) is { } one)
                cases.Add(one);
        }

        if (problems.Count > 0)
            throw new CaseFileException(string.Join(Environment.NewLine, problems));
        return new DischargeCaseFile(Duration.FromSeconds(limit), cases);
    }

    private static DischargeCase? ReadCase(string id, JsonElement element, CaseFields fields, List<string> problems)
    {
        var before = problems.Count;
        var ambient = fields.Positive(element, "ambientK");
        var charge = fields.Number(element, "initialSoc", value => value is >= 0 and <= 1, "from 0 to 1");
        var near = fields.Number(element, "initialNearSoc", value => value is >= 0 and <= 1, "from 0 to 1", otherwise: charge);
        var startKelvin = fields.Number(element, "initialTemperatureK", value => value > 0, "above 0", otherwise: ambient);
        var segments = ReadDemand(element, fields);
        var pack = ReadPack(element, fields, problems);
        if (problems.Count > before || pack is null)
            return null;
        return new DischargeCase(
            id,
            pack,
            Temperature.FromKelvins(ambient),
            new DischargeStart { StateOfCharge = Ratio.FromDecimalFractions(charge),
                SurfaceLag = Ratio.FromDecimalFractions(charge - near), Temperature = Temperature.FromKelvins(startKelvin) },
            new Demand(segments.Select(one => new DemandSegment(
                Duration.FromSeconds(one.Seconds),
                Power.FromWatts(one.Watts),
                ElectricCurrent.FromAmperes(one.Amperes),
                ElectricConductance.FromSiemens(one.Siemens)))));
    }

    private static List<(double Seconds, double Watts, double Amperes, double Siemens)> ReadDemand(JsonElement element,
        CaseFields fields)
    {
        var segments = new List<(double, double, double, double)>();
        foreach (var segment in fields.Objects(element, "demand"))
        {
            segments.Add((
                fields.Positive(segment, "duration_s"),
                fields.NotNegative(segment, "P_W", otherwise: 0),
                fields.NotNegative(segment, "Ic_A", otherwise: 0),
                fields.NotNegative(segment, "g_S", otherwise: 0)));
        }

        return segments;
    }

    /// <param name="element">The case.</param>
    /// <param name="fields">Reads its fields.</param>
    /// <param name="problems">What is wrong is added.</param>
    /// <param name="isLabel">Whether the pack is as its label has it: without age and without limits of current and
    /// temperature.</param>
    internal static Pack? ReadPack(JsonElement element, CaseFields fields, List<string> problems, bool isLabel = false)
    {
        var before = problems.Count;
        var groups = fields.Number(element, "pack.seriesGroups", value => value >= 1 && value == Math.Floor(value),
            "a whole number of 1 or more");
        var capacity = fields.Positive(element, "pack.capacityAh");
        var r0 = fields.NotNegative(element, "pack.r0Ohm");
        var r1 = fields.NotNegative(element, "pack.r1Ohm");
        var r2 = fields.NotNegative(element, "pack.r2Ohm");
        var tau1 = fields.Positive(element, "pack.tau1S");
        var tau2 = fields.Positive(element, "pack.tau2S");
        var lead = fields.NotNegative(element, "pack.leadResistanceOhm");
        var activation = fields.NotNegative(element, "pack.activationEnergyJPerMol");
        var heatCapacity = fields.Positive(element, "pack.heatCapacityJPerK");
        var conductance = fields.NotNegative(element, "pack.heatConductanceWPerK");
        var left = fields.Number(element, "pack.capacityFactor", value => value is > 0 and <= 1.5, "above 0, up to 1.5",
            isLabel ? 1 : null);
        var growth = fields.Number(element, "pack.resistanceFactor", value => value > 0, "above 0", isLabel ? 1 : null);
        var cutoff = fields.Positive(element, "pack.cutoffVoltageV");
        var current = fields.Number(element, "pack.maxCurrentA", value => value > 0, "above 0", isLabel ? 1e6 : null);
        var kelvin = fields.Number(element, "pack.maxTemperatureK", value => value > 0, "above 0", isLabel ? 1e6 : null);
        var floor = fields.Number(element, "pack.resistanceFloor", value => value is >= 0 and <= 1, "from 0 to 1", otherwise: 0);
        var nearShare = fields.Number(element, "pack.nearShare", value => value is > 0 and <= 1, "above 0, up to 1",
            otherwise: 1);
        var exchange = fields.Number(element, "pack.exchangeTimeS", value => value > 0, "above 0", otherwise: 1);
        var exchangeActivation = fields.NotNegative(element, "pack.exchangeActivationEnergyJPerMol", otherwise: 0);
        var openCircuit = Table(fields, "pack.ocvTable", () => OpenCircuitVoltage.FromTable(
            fields.Numbers(element, "pack.ocvTable.soc"), fields.Numbers(element, "pack.ocvTable.voltageV")), problems);
        var usable = CaseFields.Find(element, "pack.usableFraction", out _)
            ? Table(fields, "pack.usableFraction", () => UsableCapacity.FromTable(
                fields.Numbers(element, "pack.usableFraction.temperatureK"),
                fields.Numbers(element, "pack.usableFraction.fraction")), problems)
            : UsableCapacity.Full;
        if (problems.Count > before || openCircuit is null || usable is null)
            return null;
        return new Pack
        {
            SeriesGroups = (int)groups,
            Capacity = ElectricCharge.FromAmpereHours(capacity),
            OpenCircuitVoltage = openCircuit,
            Resistance0 = ElectricResistance.FromOhms(r0),
            Resistance1 = ElectricResistance.FromOhms(r1),
            Resistance2 = ElectricResistance.FromOhms(r2),
            TimeConstant1 = Duration.FromSeconds(tau1),
            TimeConstant2 = Duration.FromSeconds(tau2),
            LeadResistance = ElectricResistance.FromOhms(lead),
            ActivationEnergy = MolarEnergy.FromJoulesPerMole(activation),
            HeatCapacity = Entropy.FromJoulesPerKelvin(heatCapacity),
            HeatConductance = ThermalConductance.FromWattsPerKelvin(conductance),
            CutoffVoltage = ElectricPotential.FromVolts(cutoff),
            MaximumCurrent = ElectricCurrent.FromAmperes(current),
            MaximumTemperature = Temperature.FromKelvins(kelvin),
            Age = new Age(Ratio.FromDecimalFractions(left), growth),
            UsableCapacity = usable,
            ResistanceFloor = floor,
            NearShare = nearShare,
            ExchangeTime = Duration.FromSeconds(exchange),
            ExchangeActivationEnergy = MolarEnergy.FromJoulesPerMole(exchangeActivation),
        };
    }

    private static T? Table<T>(CaseFields fields, string path, Func<T> read, List<string> problems) where T : class
    {
        var before = problems.Count;
        try
        {
            return read();
        }
        catch (ArgumentException error)
        {
            // A missing list has been told already.
            if (problems.Count == before)
                fields.Problem(path, error.Message.Split(" (Parameter")[0].TrimEnd('.'));
            return null;
        }
    }
}
