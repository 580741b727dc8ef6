using System.Runtime.InteropServices;

namespace RigScenarios.Batteries;

/// <summary>
/// A pack under a current that is given, as a log gives it: its voltage, without any end. The equations are those of the
/// discharge model (docs/discharge.md). In a stretch of constant current charge, pairs, lag and heat follow in closed form, with
/// what depends on the temperature taken at the stretch's middle.
/// </summary>
internal sealed class DrivenPack
{
    // With steps of this length, s, the mean voltage of a block is exact to some 0.01 mV; longer bins are divided.
    private const double LongestStep = 15;

    // Places of two-point Gauss quadrature on [0, 1].
    private static readonly double[] Places = [0.5 - (0.5 / Math.Sqrt(3)), 0.5 + (0.5 / Math.Sqrt(3))];

    private readonly PackParameters pack;
    private readonly double airKelvin;
    private readonly int steps;
    private readonly double length;
    private readonly double emptyVolts;
    private readonly double emptySlope;
    private readonly double fullVolts;
    private readonly double fullSlope;

    private int bandNumber;
    private double charge;
    private double lag;
    private double pair1;
    private double pair2;
    private double kelvin;

    /// <param name="pack">The pack; it starts rested, at the temperature of the air.</param>
    /// <param name="binSeconds">Length of the stretches of constant current, s.</param>
    /// <param name="airKelvin">Temperature of the air, K.</param>
    public DrivenPack(Pack pack, double binSeconds, double airKelvin)
    {
        this.pack = new PackParameters(pack);
        this.airKelvin = airKelvin;
        steps = Math.Max(1, (int)Math.Ceiling(binSeconds / LongestStep));
        length = binSeconds / steps;
        var curve = this.pack.OpenCircuit;
        (emptyVolts, emptySlope) = (curve.At(0), curve.SlopeAt(0));
        (fullVolts, fullSlope) = (curve.At(1), curve.SlopeAt(1));
    }

    /// <summary>Runs through all currents.</summary>
    /// <param name="amperes">Current in each stretch, A.</param>
    /// <param name="factor">All currents are taken so many times.</param>
    /// <param name="startCharge">z at the start; outside 0…1 the open-circuit voltage goes on along its end slope.</param>
    /// <param name="openCircuitOffset">What is added to U, V of one group.</param>
    /// <param name="volts">Mean voltage at the terminals in each stretch, V.</param>
    /// <param name="slopes">Mean of U' in each stretch, V of one group.</param>
    /// <param name="cancellation">Stops it.</param>
    public void Run(ReadOnlySpan<double> amperes, double factor, double startCharge, double openCircuitOffset,
        Span<double> volts, Span<double> slopes, CancellationToken cancellation)
    {
        (charge, lag, pair1, pair2, kelvin) = (startCharge, 0, 0, 0, airKelvin);
        var decay1 = new Decay(length / pack.TimeConstant1);
        var decay2 = new Decay(length / pack.TimeConstant2);
        var cooling = pack.HeatConductance / pack.HeatCapacity;
        var (halfCool, wholeCool) = (new Decay(0.5 * length * cooling), new Decay(length * cooling));
        for (var bin = 0; bin < amperes.Length; bin++)
        {
            if (bin % 4096 == 0)
                cancellation.ThrowIfCancellationRequested();
            double mean = 0, slope = 0;
            for (var i = 0; i < steps; i++)
                Step(amperes[bin] * factor, decay1, decay2, halfCool, wholeCool, ref mean, ref slope);
            volts[bin] = (mean / steps) + (pack.Groups * openCircuitOffset);
            slopes[bin] = slope / steps;
        }
    }

    private void Step(double current, Decay decay1, Decay decay2, Decay halfCool, Decay wholeCool, ref double volts,
        ref double slopes)
    {
        // The temperature at the middle, from the heat at the start.
        ref readonly var atStart = ref BandAt(kelvin);
        var heat = Heat(current, atStart, kelvin, charge, lag, pair1 + pair2);
        var middle = Warmed(heat, 0.5 * length, halfCool);

        ref readonly var band = ref BandAt(middle);
        var rho = Rho(band, middle);
        var usable = Usable(band, middle);
        var rate = current / (pack.ChargePerUnit * usable);
        var exchange = pack.HasFarWell ? pack.ExchangeRateAt(middle) : 0;
        var lagEnd = pack.HasFarWell ? pack.LagPerCharge * rate / exchange : 0;
        var meanPair1 = decay1.Follow(ref pair1, current * rho * pack.Resistance1);
        var meanPair2 = decay2.Follow(ref pair2, current * rho * pack.Resistance2);
        double open = 0, slope = 0;
        foreach (var place in Places)
        {
            var near = charge - (rate * place * length);
            if (pack.HasFarWell)
                near -= lagEnd + ((lag - lagEnd) * Math.Exp(-place * length * exchange));
            var (value, derivative) = OpenCircuit(near);
            open += 0.5 * value;
            slope += 0.5 * derivative;
        }

        var internalResistance = (pack.Groups * pack.Resistance0 * rho) + pack.LeadResistance;
        volts += (pack.Groups * (open - meanPair1 - meanPair2)) - (current * internalResistance);
        slopes += slope;

        // The heat at the middle carries the whole step.
        var lagMiddle = pack.HasFarWell ? lagEnd + ((lag - lagEnd) * Math.Exp(-0.5 * length * exchange)) : 0;
        heat = Heat(current, band, middle, charge - (0.5 * rate * length), lagMiddle, meanPair1 + meanPair2);
        kelvin = Warmed(heat, length, wholeCool);
        charge -= rate * length;
        if (pack.HasFarWell)
            lag = lagEnd + ((lag - lagEnd) * Math.Exp(-length * exchange));
    }

    private double Heat(double current, in TemperatureBand band, double at, double z, double w, double pairs)
    {
        var rho = Rho(band, at);
        var heat = current * ((current * ((pack.Groups * pack.Resistance0 * rho) + pack.LeadResistance)) + (pack.Groups * pairs));
        if (!pack.HasFarWell)
            return heat;
        var near = OpenCircuit(z - w).Volts;
        var far = OpenCircuit(z + (w * pack.FarPerLag)).Volts;
        return heat + (pack.Groups * pack.ChargePerUnit * Usable(band, at) * pack.NearShare * w * pack.ExchangeRateAt(at)
            * (far - near));
    }

    // The temperature after a time under a heat, W.
    private double Warmed(double heat, double seconds, Decay cool) =>
        airKelvin + ((kelvin - airKelvin) * cool.Left) + (heat / pack.HeatCapacity * seconds * cool.Mean);

    // The temperature moves little from one step to the next.
    private ref readonly TemperatureBand BandAt(double at)
    {
        while (at < pack.Bands[bandNumber].From)
            bandNumber--;
        while (at > pack.Bands[bandNumber].To)
            bandNumber++;
        return ref pack.Bands[bandNumber];
    }

    private double Rho(in TemperatureBand band, double at) => double.IsNaN(band.Floor)
        ? Math.Exp(pack.ActivationTemperature * ((1 / at) - (1 / PackParameters.ReferenceTemperature))) : band.Floor;

    private static double Usable(in TemperatureBand band, double at) => band.Usable + (band.UsableSlope * (at - band.Origin));

    private (double Volts, double Slope) OpenCircuit(double z)
    {
        if (z < 0)
            return (emptyVolts + (emptySlope * z), emptySlope);
        if (z > 1)
            return (fullVolts + (fullSlope * (z - 1)), fullSlope);
        ref readonly var piece = ref pack.OpenCircuit.Pieces[pack.OpenCircuit.IndexOf(z)];
        return (piece.At(z), piece.SlopeAt(z));
    }

    /// <summary>An exponential lag over one step.</summary>
    [StructLayout(LayoutKind.Auto)]
    private readonly struct Decay
    {
        public Decay(double ratio)
        {
            Left = Math.Exp(-ratio);
            Mean = ratio > 1e-8 ? -ExpLess1(-ratio) / ratio : 1 - (0.5 * ratio);
        }

        /// <summary>What is left of the start at the end.</summary>
        public double Left { get; }

        /// <summary>What is left of it in the mean.</summary>
        public double Mean { get; }

        /// <summary>Follows a driver to the step's end; the mean on the way.</summary>
        public double Follow(ref double value, double driver)
        {
            var mean = driver + ((value - driver) * Mean);
            value = driver + ((value - driver) * Left);
            return mean;
        }

        private static double ExpLess1(double x) => MathNet.Numerics.SpecialFunctions.Expm1(x);
    }
}
