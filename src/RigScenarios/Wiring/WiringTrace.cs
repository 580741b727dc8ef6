using RigScenarios.Batteries;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Wiring;

/// <summary>One moment of a run, with voltages and currents everywhere.</summary>
/// <param name="At">From the start of the run.</param>
/// <param name="Block">The number of the block, from 0.</param>
/// <param name="Point">Voltages and currents; what has stopped or is off shows 0.</param>
/// <param name="Stopped">The elements that have dropped out by then.</param>
/// <param name="Charge">State of charge of the pack.</param>
/// <param name="Pack">Temperature of the pack.</param>
public sealed record WiringMoment(Duration At, int Block, OperatingPoint Point, IReadOnlyList<string> Stopped, Ratio Charge, Temperature Pack);

/// <summary>Works out what the whole wiring did at each moment that a run kept.</summary>
public static class WiringTrace
{
    // Two moments nearer than this are the same one: both sides of a change stand there.
    private const double SameMoment = 1e-3;

    /// <summary>The moments of a run, in order; two at each change. One at which nothing could be delivered is left out.</summary>
    /// <param name="network">The wiring.</param>
    /// <param name="blocks">The blocks of the run.</param>
    /// <param name="result">The run, with its series.</param>
    public static IReadOnlyList<WiringMoment> Of(WiringNetwork network, IReadOnlyList<WiringBlock> blocks, WiringResult result)
    {
        ArgumentNullException.ThrowIfNull(network);
        ArgumentNullException.ThrowIfNull(blocks);
        ArgumentNullException.ThrowIfNull(result);
        var draws = new Dictionary<(int Block, int Stops), WiringDraw>();
        var moments = new List<WiringMoment>(result.Series.Count);
        var stops = result.DropOuts.Select(drop => drop.At.Seconds).ToList();
        var bounds = Bounds(blocks, result.EndTime.Seconds);
        foreach (var point in result.Series)
        {
            var t = point.Time.Seconds;
            (int Block, int Stops, ElementFigures[] Figures)? best = null;
            var nearest = double.PositiveInfinity;
            // Right at a change the current tells which side of it the point is on.
            foreach (var block in bounds.Where(bound => bound.From - SameMoment <= t && t <= bound.To + SameMoment).Select(bound => bound.Block))
            {
                for (var count = stops.Count(stop => stop < t - SameMoment); count <= stops.Count(stop => stop <= t + SameMoment); count++)
                {
                    if (!draws.TryGetValue((block, count), out var draw))
                        draws.Add((block, count), draw = new WiringDraw(network, network.StateOf(blocks[block].States), Open(network, result.DropOuts.Take(count))));
                    if (draw.At(point.Voltage.Volts) is not { } figures)
                        continue;
                    var off = Math.Abs(Root(network, figures) - point.Current.Amperes);
                    if (off < nearest)
                        (nearest, best) = (off, (block, count, figures));
                }
            }

            if (best is { } found)
            {
                moments.Add(new WiringMoment(
                    point.Time, found.Block, new OperatingPoint(network, point.Voltage.Volts, found.Figures), [.. result.DropOuts.Take(found.Stops).Select(drop => drop.Element)], point.StateOfCharge, point.Temperature));
            }
        }

        return moments;
    }

    /// <summary>
    /// What the wiring does when devices change their states for an instant: the pack answers with its resistance of that moment alone, as it is too short for anything
    /// else to move. Null if that can't be delivered.
    /// </summary>
    /// <param name="network">The wiring.</param>
    /// <param name="pack">The pack.</param>
    /// <param name="moment">The moment.</param>
    /// <param name="states">The states of that instant.</param>
    public static OperatingPoint? InAnInstant(WiringNetwork network, Pack pack, WiringMoment moment, OrderedMap<string> states)
    {
        ArgumentNullException.ThrowIfNull(network);
        ArgumentNullException.ThrowIfNull(pack);
        ArgumentNullException.ThrowIfNull(moment);
        var (source, resistance) = Source(pack, moment);
        return WiringLimits.BehindSource(network, source, resistance, network.StateOf(states), Open(network, moment.Stopped));
    }

    /// <summary>How many times all draws could grow at a moment until nothing can deliver them through this wiring from this pack; infinite above 1000.</summary>
    /// <param name="network">The wiring.</param>
    /// <param name="pack">The pack.</param>
    /// <param name="moment">The moment.</param>
    /// <param name="states">The states of that moment.</param>
    public static double LoadFactorAtEdge(WiringNetwork network, Pack pack, WiringMoment moment, OrderedMap<string> states)
    {
        ArgumentNullException.ThrowIfNull(network);
        ArgumentNullException.ThrowIfNull(pack);
        ArgumentNullException.ThrowIfNull(moment);
        var (source, resistance) = Source(pack, moment);
        var (low, high) = (0.0, 1000.0);
        if (IsSolvable(high))
            return double.PositiveInfinity;
        while (high - low > 1e-6 * high)
        {
            var middle = low + ((high - low) / 2);
            (low, high) = IsSolvable(middle) ? (middle, high) : (low, middle);
        }

        return low;

        bool IsSolvable(double factor) => WiringLimits.BehindSource(network, source, resistance, network.StateOf(states), Open(network, moment.Stopped), factor) is not null;
    }

    private static (double Source, double Resistance) Source(Pack pack, WiringMoment moment)
    {
        var parameters = new PackParameters(pack);
        var kelvin = moment.Pack.Kelvins;
        var band = Array.Find(parameters.Bands, one => kelvin >= one.From && kelvin < one.To);
        var factor = double.IsNaN(band.Floor) ? Math.Exp(parameters.ActivationTemperature * ((1 / kelvin) - (1 / PackParameters.ReferenceTemperature))) : band.Floor;
        var resistance = (factor * parameters.Groups * parameters.Resistance0) + parameters.LeadResistance;
        return (moment.Point.Terminals.Volts + (resistance * moment.Point.Current.Amperes), resistance);
    }

    private static List<(int Block, double From, double To)> Bounds(IReadOnlyList<WiringBlock> blocks, double end)
    {
        var bounds = new List<(int, double, double)>();
        for (double start = 0; start <= end + SameMoment;)
        {
            foreach (var (block, one) in blocks.Index())
            {
                bounds.Add((block, start, start + one.Length.Seconds));
                start += one.Length.Seconds;
            }
        }

        return bounds;
    }

    private static bool[] Open(WiringNetwork network, IEnumerable<DropOut> drops) => Open(network, drops.Select(drop => drop.Element));

    private static bool[] Open(WiringNetwork network, IEnumerable<string> names)
    {
        var open = new bool[network.Count];
        foreach (var name in names)
            open[network.NumberOf(name)] = true;
        return open;
    }

    private static double Root(WiringNetwork network, ElementFigures[] figures) =>
        Enumerable.Range(0, network.Count).Where(i => network.ParentOf(i) < 0).Sum(i => figures[i].Current);
}
