using RigScenarios.Answers;
using RigScenarios.Batteries;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Sweeps;

/// <summary>One steady load over the temperatures.</summary>
/// <param name="Name">What it is, in plain words.</param>
/// <param name="Power">What the battery delivers.</param>
/// <param name="Points">What it gives at each temperature, in the order asked for.</param>
public sealed record ColdLoad(string Name, Power Power, IReadOnlyList<ColdLoadPoint> Points);

/// <summary>What a battery gives at one temperature under one steady load.</summary>
/// <param name="Air">The air, and the battery at the start.</param>
/// <param name="Given">The part of the charge of the battery as it is, at 25 °C, that comes out before it stops.</param>
/// <param name="Error">How far off that may be.</param>
public sealed record ColdLoadPoint(Temperature Air, Ratio Given, ExpectedError Error);

/// <summary>
/// How the cold takes more from a heavy load than from a light one: the battery of an answer, full and as cold as the air, under
/// steady loads until it stops by itself. Without wiring and devices, so nothing stops it before.
/// </summary>
public static class ColdLoads
{
    // By the label's energy and the age; within the rates that were measured, and well below the current of usual protections.
    private const double LightHours = 16;
    private const double HeavyHours = 2;

    // Still air takes 10 W/(m²·K) from a case, wind of a few m/s some 30 (common practice, no source).
    private const double Wind = 3;

    /// <summary>A light load, which would empty the battery in 16 hours; the usual one, the mean of the blocks in which anything
    /// is drawn; a heavy one, which would empty it in two hours; and that in wind, which takes three times the heat. In whole
    /// watts.</summary>
    /// <param name="answer">The answer; its first battery is looked at.</param>
    /// <param name="air">The temperatures.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <exception cref="InvalidOperationException">Nothing is drawn in any block.</exception>
    public static IReadOnlyList<ColdLoad> Of(
        RigAnswer answer, IReadOnlyList<Temperature> air, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(answer);
        ArgumentNullException.ThrowIfNull(air);
        var drawing = answer.Simulation.Blocks.Where(block => block.Demand > Power.Zero).ToList();
        if (drawing.Count == 0)
            throw new InvalidOperationException("Nothing is drawn in any block of these days.");
        var hours = drawing.Sum(block => (block.End - block.Start).Hours);
        var usual = drawing.Sum(block => (double)block.Demand.Watts * (block.End - block.Start).Hours) / hours;
        var battery = answer.Plan.Batteries.Values.First();
        var pack = battery.MakePack().Pack;
        var energy = battery.Part.Battery!.Energy.WattHours * pack.Age.CapacityLeft.DecimalFractions;
        return
        [
            Load("light", energy / LightHours, 1), Load("usual", usual, 1), Load("heavy", energy / HeavyHours, 1),
            Load("heavy, in wind", energy / HeavyHours, Wind),
        ];

        ColdLoad Load(string name, double watts, double heatLost)
        {
            var power = Power.FromWatts(watts < 1 ? watts : Math.Round(watts));
            var there = pack with
            {
                HeatConductance = ThermalConductance.FromWattsPerKelvin(heatLost * pack.HeatConductance.WattsPerKelvin),
            };
            return new(name, power, [.. air.Select(at => PointOf(there, power, at, cancellation))]);
        }
    }

    private static ColdLoadPoint PointOf(Pack pack, Power power, Temperature air, CancellationToken cancellation)
    {
        var run = Discharge.Run(pack, air, DischargeStart.Full, Demand.OfPower(power), new DischargeOptions { SeriesPoints = 0 },
            cancellation);
        var capacity = pack.Capacity.AmpereHours * pack.Age.CapacityLeft.DecimalFractions;
        var given = run.Energies.ChargeDrawn.AmpereHours / capacity;
        var rate = run.EndTime.Hours > 0 ? given / run.EndTime.Hours : 0;
        var (low, high) = air < run.EndTemperature ? (air, run.EndTemperature) : (run.EndTemperature, air);
        return new(air, Ratio.FromDecimalFractions(given), ExpectedError.At(low, high, rate, pack.NearShare >= 1));
    }
}
