using System.Runtime.Intrinsics;
using RigScenarios.Numerics;

namespace RigScenarios.Batteries;

/// <summary>The algebra of <see cref="Circuit"/>, one lane after the other, for the browser; see
/// <see cref="PlainCollocation"/>.</summary>
internal static class PlainCircuit
{
    /// <summary>As <see cref="Circuit.Solve"/>, in all lanes or in one that then stands for all.</summary>
    public static void Solve(
        PackParameters pack, in StepPieces pieces, in TerminalDraw draw, in StateLanes state, Vector512<double> air, int lanes,
        out CircuitLanes point)
    {
        point = default;
        Vector512<double> sources = default, resistances = default, factors = default;
        var (charges, kelvins, lags) = (state.Charge, state.Kelvin, state.Lag);
        var (ones, twos) = (state.Voltage1, state.Voltage2);
        var source = PlainCollocation.Of(ref sources);
        var resistance = PlainCollocation.Of(ref resistances);
        var factor = PlainCollocation.Of(ref factors);
        var charge = PlainCollocation.Of(ref charges);
        var kelvin = PlainCollocation.Of(ref kelvins);
        var lag = PlainCollocation.Of(ref lags);
        var one = PlainCollocation.Of(ref ones);
        var two = PlainCollocation.Of(ref twos);
        var band = pieces.Band;
        for (var i = 0; i < lanes; i++)
        {
            factor[i] = double.IsNaN(band.Floor)
                ? Math.Exp((pack.ActivationTemperature / kelvin[i])
                    - (pack.ActivationTemperature / PackParameters.ReferenceTemperature)) : band.Floor;
            resistance[i] = (factor[i] * (pack.Groups * pack.Resistance0)) + pack.LeadResistance;
            source[i] = (OpenCircuit(pieces.Near, charge[i] - lag[i]) - (one[i] + two[i])) * pack.Groups;
        }

        if (draw.Solved is { } solved)
        {
            if (lanes == 1)
                (sources, resistances) = (Vector512.Create(source[0]), Vector512.Create(resistance[0]));
            solved.Solve(sources, resistances, air, ref point);
        }
        else
        {
            Terminals(draw, source, resistance, lanes, ref point);
        }

        var current = PlainCollocation.Of(ref point.Current);
        var pairDriver = PlainCollocation.Of(ref point.PairDriver);
        var chargeRate = PlainCollocation.Of(ref point.ChargeRate);
        var exchange = PlainCollocation.Of(ref point.ExchangeRate);
        var heat = PlainCollocation.Of(ref point.Heat);
        var chemical = PlainCollocation.Of(ref point.ChemicalPower);
        var kept = draw.Solved?.ChargeFactor ?? 1;
        for (var i = 0; i < lanes; i++)
        {
            var usable = ((kelvin[i] - band.Origin) * band.UsableSlope) + band.Usable;
            var pairs = one[i] + two[i];
            var near = OpenCircuit(pieces.Near, charge[i] - lag[i]);
            pairDriver[i] = current[i] * factor[i];
            var given = current[i] * near * pack.Groups;
            // What does not become charge becomes heat.
            chargeRate[i] = -current[i] / (usable * pack.ChargePerUnit) * kept;
            heat[i] = (current[i] * ((current[i] * resistance[i]) + (pairs * pack.Groups))) - (given * (1 - kept));
            chemical[i] = given * kept;
            if (!pack.HasFarWell)
                continue;
            exchange[i] = Math.Exp(pack.ExchangeLogarithm - (pack.ExchangeActivationTemperature / kelvin[i]));
            var far = OpenCircuit(pieces.Far, charge[i] + (lag[i] * pack.FarPerLag));
            var mixing = usable * lag[i] * exchange[i] * (far - near) * (pack.Groups * pack.ChargePerUnit * pack.NearShare);
            heat[i] += mixing;
            chemical[i] += mixing;
        }

        if (lanes == 1)
            SpreadOut(ref point);
    }

    private static void Terminals(
        in TerminalDraw draw, ReadOnlySpan<double> source, ReadOnlySpan<double> resistance, int lanes, ref CircuitLanes point)
    {
        var volts = PlainCollocation.Of(ref point.Voltage);
        var current = PlainCollocation.Of(ref point.Current);
        var margin = PlainCollocation.Of(ref point.PowerMargin);
        for (var i = 0; i < lanes; i++)
        {
            var a = (resistance[i] * draw.Conductance) + 1;
            var b = source[i] - (resistance[i] * draw.Current);
            if (draw.Power > 0)
            {
                var product = a * resistance[i] * draw.Power;
                margin[i] = (b * Math.Abs(b)) - (product * 4);
                volts[i] = margin[i] > 0 ? (b + Math.Sqrt(margin[i])) / (a * 2) : Math.Max(Math.Sqrt(product) / a, 1e-9);
                current[i] = (volts[i] * draw.Conductance) + draw.Current + (draw.Power / volts[i]);
            }
            else
            {
                margin[i] = double.PositiveInfinity;
                volts[i] = b / a;
                current[i] = (volts[i] * draw.Conductance) + draw.Current;
            }
        }

        point.Watched = point.Voltage;
    }

    private static double OpenCircuit(in MonotoneCubic.Piece piece, double charge)
    {
        var along = charge - piece.Start;
        return (((((along * piece.C3) + piece.C2) * along) + piece.C1) * along) + piece.C0;
    }

    private static void SpreadOut(ref CircuitLanes point)
    {
        point.Voltage = Vector512.Create(point.Voltage[0]);
        point.Current = Vector512.Create(point.Current[0]);
        point.PowerMargin = Vector512.Create(point.PowerMargin[0]);
        point.Watched = Vector512.Create(point.Watched[0]);
        point.PairDriver = Vector512.Create(point.PairDriver[0]);
        point.ChargeRate = Vector512.Create(point.ChargeRate[0]);
        point.ExchangeRate = Vector512.Create(point.ExchangeRate[0]);
        point.Heat = Vector512.Create(point.Heat[0]);
        point.ChemicalPower = Vector512.Create(point.ChemicalPower[0]);
    }
}
