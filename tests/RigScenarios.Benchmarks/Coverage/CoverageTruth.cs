using RigScenarios.Batteries;
using RigScenarios.Cells;
using RigScenarios.Fits;
using RigScenarios.Fits.Logs;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Benchmarks.Coverage;

/// <summary>
/// An invented battery whose true capacity, resistance and loads are drawn from the priors, and what would be noted and logged of
/// it, with errors of the sizes that the fit assumes. The discharges come from the discharge model's own program, not from the
/// fit's.
/// </summary>
internal sealed class CoverageTruth
{
    private const double NoteSeconds = 180;

    // Above full the open-circuit voltage goes on: the last two pieces of the table below are one straight line, so that the
    // table can be made longer without a change anywhere else.
    private const double Above = 0.06;
    private static readonly double[] Charges = [0, 0.02, 0.05, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1];
    private static readonly double[] Volts = [2.6, 2.95, 3.15, 3.33, 3.49, 3.56, 3.62, 3.68, 3.78, 3.89, 3.99, 4.09, 4.19];

    private readonly Random random;
    private readonly Dictionary<string, double> truth = new(StringComparer.Ordinal);
    private readonly List<FieldNote> notes = [];
    private readonly List<PowerLog> logs = [];
    private readonly double capacity;
    private readonly bool wells;
    private readonly double offsetKelvin;
    private readonly double openCircuitOffset;
    private readonly double? away;

    /// <param name="random">Where everything that is drawn comes from.</param>
    /// <param name="wells">Whether the battery's charge lies in two wells.</param>
    /// <param name="perDevice">Whether each device has a scale of its own.</param>
    /// <param name="ambient">Whether the air is only roughly known.</param>
    /// <param name="away">By how many deviations capacity, resistance and loads all lie above what is believed, always the same;
    /// drawn if null.</param>
    public CoverageTruth(Random random, double? away, bool wells = false, bool perDevice = false, bool ambient = false)
    {
        (this.random, this.away, this.wells) = (random, away, wells);
        capacity = Between(5, 12.5);
        var loss = Between(0, 0.18);
        var priors = FitPriors.Of(new Age(Ratio.FromDecimalFractions(Math.Exp(-loss)), Math.Exp(1.5 * loss)));
        var load = new NormalPrior(0, FitPriors.SheetDeviation);
        Priors = priors with
        {
            Load = perDevice ? null : load,
            Devices = perDevice ? new([new("camera", load), new("monitor", load)]) : OrderedMap<NormalPrior>.Empty,
            KnownDevices = ["bench load"],
            AmbientDeviation = ambient ? TemperatureDelta.FromKelvins(2) : null,
        };
        truth["aQ"] = Drawn(priors.Capacity);
        truth["aR"] = Drawn(priors.Resistance);
        if (perDevice)
            (truth["load:camera"], truth["load:monitor"]) = (Drawn(load), Drawn(load));
        else
            truth["load"] = Drawn(load);
        if (ambient)
            truth["ambient"] = offsetKelvin = 2 * Normal();
        openCircuitOffset = Priors.OpenCircuitDeviation.Volts * Normal();
        Camera = Between(0.25, 0.36) * capacity * 14.4;
        Monitor = Between(0.05, 0.1) * capacity * 14.4;
    }

    /// <summary>What the fit is told beforehand.</summary>
    public FitPriors Priors { get; }

    /// <summary>The camera's draw on its sheet, W.</summary>
    public double Camera { get; }

    /// <summary>The monitor's draw on its sheet, W.</summary>
    public double Monitor { get; }

    /// <summary>The true value of each unknown by its name.</summary>
    public IReadOnlyDictionary<string, double> Values => truth;

    /// <summary>The problem of all that was noted and logged.</summary>
    public FitProblem Problem(FitOptions options) => new(Label(), Priors, notes, logs, options: options);

    /// <summary>A number between two.</summary>
    public double Between(double low, double high) => low + ((high - low) * random.NextDouble());

    /// <summary>Notes a run to its end; one that outlasts the given part of what was expected is broken off there.</summary>
    public void Note(BatteryRun run, double stopAt = double.PositiveInfinity, bool showsPercent = false)
    {
        var seconds = Runtime(run, truth, null).EndTime.Seconds;
        var shown = seconds * Math.Exp(Deviation(run, seconds) * Normal());
        var expected = Runtime(run, Expected(), null).EndTime.Seconds;
        var note = new FieldNote { Id = $"n{notes.Count + 1}", Run = run };
        var stop = stopAt * expected;
        if (shown < stop)
        {
            notes.Add(note with { Runtime = Duration.FromSeconds(shown) });
            return;
        }

        var left = Runtime(run, truth, Math.Min(stop, 0.999 * seconds)).EndStateOfCharge.DecimalFractions;
        notes.Add(note with
        {
            StillRunning = Duration.FromSeconds(stop),
            PercentShown = showsPercent ? Ratio.FromDecimalFractions(Math.Clamp(left + (0.05 * Normal()), 0, 1)) : null,
        });
    }

    /// <summary>Logs a discharge of a device to the end: rows of a minute, means, with a current sensor, a start charge and a
    /// voltage that err, the last over as long as the correlation time.</summary>
    public void Log(double celsius, bool knowsPower)
    {
        var ambient = Temperature.FromDegreesCelsius(celsius);
        var (gain, start) = (0.01 * Normal(), 0.01 * Normal());
        var watts = Camera * Math.Exp(knowsPower ? LoadOf("camera", truth) + (0.04 * Normal()) : 0);
        var air = Temperature.FromKelvins(ambient.Kelvins + offsetKelvin);
        var pack = Longer(truth);
        var demand = Demand.OfPower(Power.FromWatts(watts));
        var options = new DischargeOptions { SeriesPoints = 0, TimeLimit = Duration.FromMinutes(1) };
        var charge = Ratio.FromDecimalFractions((1 + start) / (1 + Above));
        var state = new DischargeStart { StateOfCharge = charge, Temperature = air };
        var (seconds, volts, amperes) = (new List<double>(), new List<double>(), new List<double>());
        while (true)
        {
            var minute = Discharge.Run(pack, air, state, demand, options);
            if (minute.Cause != EndCause.TimeLimit)
                break;
            seconds.Add(60.0 * seconds.Count);
            amperes.Add(minute.Energies.ChargeDrawn.Coulombs / 60);
            volts.Add(minute.Energies.Delivered.Joules / minute.Energies.ChargeDrawn.Coulombs);
            state = minute.FinalState;
        }

        Err(celsius, volts, amperes);
        logs.Add(new PowerLog
        {
            Id = $"l{logs.Count + 1}",
            Rows = LogRows.Of([.. seconds], [.. volts], [.. amperes.Select(one => one * Math.Exp(gain))]),
            Ambient = ambient,
            Devices = knowsPower ? new([new("camera", Power.FromWatts(Camera))]) : OrderedMap<Power>.Empty,
        });
    }

    // A model's voltage errs in level and as an error of 1 % in charge does, both for about the correlation time.
    private void Err(double celsius, List<double> volts, List<double> amperes)
    {
        var table = Label().OpenCircuitVoltage;
        var keep = Math.Exp(-60 / Math.Max(60, 0.03 * 3600 * capacity / amperes.Average()));
        var (level, along) = (Normal(), Normal());
        var sigma = celsius >= 0 ? 0.015 : celsius >= -10 ? 0.03 : 0.05;
        var charge = 1.0;
        for (var i = 0; i < volts.Count; i++)
        {
            charge -= amperes[i] * 60 / (3600 * capacity * Math.Exp(truth["aQ"]));
            var slope = SlopeAt(table, Math.Clamp(charge, 0, 1));
            volts[i] += (4 * (openCircuitOffset + (sigma * level) + (0.01 * slope * along))) + (0.01 * Normal());
            level = (keep * level) + (Math.Sqrt(1 - (keep * keep)) * Normal());
            along = (keep * along) + (Math.Sqrt(1 - (keep * keep)) * Normal());
        }
    }

    private static double SlopeAt(OpenCircuitVoltage table, double charge)
    {
        var (low, high) = (Math.Max(0, charge - 0.001), Math.Min(1, charge + 0.001));
        return (table.At(Ratio.FromDecimalFractions(high)) - table.At(Ratio.FromDecimalFractions(low))).Volts / (high - low);
    }

    // The page's deviation of ln t, written down again so that a slip in the fit's shows: docs/calibration.md.
    private static double Deviation(BatteryRun run, double seconds)
    {
        var celsius = run.Ambient.DegreesCelsius;
        var charge = run.InitialCharge.DecimalFractions;
        var model = Math.Max(celsius >= 0 ? 0.02 : celsius >= -10 ? 0.03 : 0.05, seconds < 3600 * charge ? 0.05 : 0);
        var start = charge >= 0.99 ? 0.01 / charge : 0.05 / charge;
        return Math.Sqrt(Math.Pow(NoteSeconds / seconds, 2) + Math.Pow(run.Steady ? 0.01 : 0.04, 2) + (model * model)
            + (start * start));
    }

    private Dictionary<string, double> Expected() => truth.ToDictionary(one => one.Key, one => one.Key switch
    {
        "aQ" => Priors.Capacity.Mean,
        "aR" => Priors.Resistance.Mean,
        _ => 0,
    }, StringComparer.Ordinal);

    private DischargeResult Runtime(BatteryRun run, Dictionary<string, double> values, double? limit)
    {
        var warmer = values.GetValueOrDefault("ambient");
        var air = Temperature.FromKelvins(run.Ambient.Kelvins + warmer);
        var pack = Scaled(Label(), values) with { CutoffVoltage = run.Cutoff ?? Label().CutoffVoltage };
        var demand = new Demand(run.Stretches.Select(stretch => new DemandSegment(
            stretch.Length ?? Duration.FromDays(60),
            Power.FromWatts(stretch.States.Sum(state => state.Share.DecimalFractions
                * state.Devices.Sum(device => (double)device.Value.Watts * Math.Exp(LoadOf(device.Key, values))))),
            ElectricCurrent.Zero, ElectricConductance.Zero)));
        return Discharge.Run(
            pack, air, new DischargeStart { StateOfCharge = run.InitialCharge, Temperature = run.InitialTemperature ?? air },
            demand, new DischargeOptions { SeriesPoints = 0, TimeLimit = limit is { } s ? Duration.FromSeconds(s) : null });
    }

    private double LoadOf(string device, Dictionary<string, double> values) => Priors.Devices.Count > 0
        ? values.GetValueOrDefault($"load:{device}") : device == "bench load" ? 0 : values["load"];

    private static Pack Scaled(Pack pack, Dictionary<string, double> values) => pack with
    {
        Age = new Age(Ratio.FromDecimalFractions(Math.Exp(values["aQ"])), Math.Exp(values["aR"])),
    };

    // The true pack with a table that goes on above full.
    private Pack Longer(Dictionary<string, double> values)
    {
        var slope = (Volts[^1] - Volts[^2]) / (Charges[^1] - Charges[^2]);
        var label = Label();
        return Scaled(label, values) with
        {
            Capacity = label.Capacity * (1 + Above),
            OpenCircuitVoltage = OpenCircuitVoltage.FromTable(
                [.. Charges.Select(z => z / (1 + Above)), 1], [.. Volts, Volts[^1] + (slope * Above)]),
        };
    }

    // An invented pack by the usual figures of its chemistry: resistance times capacity, shares and time constants of
    // docs/discharge.md.
    private Pack Label()
    {
        var sustained = (wells ? 0.125 : 0.12) / capacity;
        return new Pack
        {
            SeriesGroups = 4,
            Capacity = ElectricCharge.FromAmpereHours(capacity),
            OpenCircuitVoltage = OpenCircuitVoltage.FromTable(Charges, Volts),
            Resistance0 = ElectricResistance.FromOhms(0.5 * sustained),
            Resistance1 = ElectricResistance.FromOhms(0.21 * sustained),
            Resistance2 = ElectricResistance.FromOhms(0.29 * sustained),
            TimeConstant1 = Duration.FromSeconds(20),
            TimeConstant2 = Duration.FromSeconds(600),
            LeadResistance = ElectricResistance.FromOhms(0.018),
            ActivationEnergy = MolarEnergy.FromJoulesPerMole(wells ? 20_000 : 25_000),
            HeatCapacity = Entropy.FromJoulesPerKelvin(62.7 * capacity),
            HeatConductance = ThermalConductance.FromWattsPerKelvin(0.6),
            CutoffVoltage = ElectricPotential.FromVolts(12),
            MaximumCurrent = ElectricCurrent.FromAmperes(1e6),
            MaximumTemperature = Temperature.FromKelvins(1e6),
            ResistanceFloor = 0.87,
            NearShare = wells ? 0.5 : 1,
            UsableCapacity = wells ? UsableCapacity.FromTable([253.15, 283.15, 298.15], [0.915, 0.95, 1])
                : UsableCapacity.FromTable(
                    [254.15, 264.15, 272.95, 282.45, 297.15, 298.15], [0.738, 0.87, 0.911, 0.929, 0.994, 1]),
        };
    }

    private double Drawn(NormalPrior prior) => prior.Mean + (prior.Deviation * (away ?? Normal()));

    // Box and Muller.
    private double Normal() =>
        Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
