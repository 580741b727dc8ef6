using RigScenarios.Batteries;
using RigScenarios.Builds;
using RigScenarios.Days;
using RigScenarios.Limits;
using RigScenarios.Simulation;
using UnitsNet;

namespace RigScenarios.Answers;

/// <summary>What a battery that stopped gives after a rest.</summary>
/// <param name="Rest">How long it rests.</param>
/// <param name="Place">Temperature of the place; null for the air where it stopped.</param>
/// <param name="More">How long the rig then runs again, the block in which it stopped begun anew, in the same air.</param>
public sealed record RestTried(Duration Rest, Temperature? Place, Duration More);

/// <summary>
/// A battery that stopped because the charge near its surface was gone, with charge further inside: what rest and warmth would
/// give back, each run by the simulation itself. Equations: docs/discharge.md.
/// </summary>
/// <param name="Battery">Its short name in the plan.</param>
/// <param name="Inside">The charge that it stopped with.</param>
/// <param name="HeldBack">How far the charge near the surface lies below that.</param>
/// <param name="Rests">What was tried, in order.</param>
public sealed record ComesBack(string Battery, Ratio Inside, Ratio HeldBack, IReadOnlyList<RestTried> Rests)
{
    private static readonly (double Minutes, double? Celsius)[] Tried = [(10, null), (60, null), (60, 20)];

    /// <summary>The least that must be held back for a word of it.</summary>
    public static Ratio LeastHeldBack { get; } = Ratio.FromPercent(3);

    /// <summary>The least that one of the rests must give for a word of it.</summary>
    public static Duration LeastWorth { get; } = Duration.FromMinutes(5);

    /// <summary>Looks what would come back.</summary>
    /// <param name="powered">The build.</param>
    /// <param name="plan">The plan that was run.</param>
    /// <param name="result">How it went.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <returns>What would; null where the days are lasted, the battery did not stop for want of charge at its surface, or too
    /// little would come back.</returns>
    internal static ComesBack? Of(PoweredBuild powered, DayPlan plan, SimulationResult result, CancellationToken cancellation)
    {
        if (result.Completes || result.FirstStop is not { } stop || stop.State.SurfaceLag < LeastHeldBack
            || stop.Reason.Kind is not (StopKind.VoltageCutoff or StopKind.Empty or StopKind.PowerLimit
                or StopKind.ShortOfVoltage)
            || !plan.Batteries.TryGetValue(stop.Battery, out var battery)
            || result.Stretches.LastOrDefault(one => one.Start <= stop.At) is not { } stretch)
            return null;
        var block = plan.Days[stretch.Day - 1].Blocks[stretch.Block];
        var air = AirTemperature.Of(plan, new DaySchedule(plan).Days).At(stop.At.Seconds).Kelvin;
        var pack = new PackParameters(battery.MakePack().Pack);
        List<RestTried> rests = [];
        foreach (var (minutes, celsius) in Tried)
        {
            Temperature? place = celsius is { } degrees ? Temperature.FromDegreesCelsius(degrees) : null;
            var state = PackRest.After(pack, stop.State.State(air), place?.Kelvins ?? air, 0, 1, 60 * minutes);
            var again = Again(plan, stretch.Block, block, stop.Battery, battery with { Begins = DischargeStart.Of(state) }, air);
            var run = DaySimulation.Run(powered, again, SimulationOptions.EndOnly, null, cancellation);
            rests.Add(new(Duration.FromMinutes(minutes), place, run.Runtime));
        }

        return rests.Exists(rest => rest.More >= LeastWorth)
            ? new ComesBack(stop.Battery, stop.State.StateOfCharge, stop.State.SurfaceLag, rests) : null;
    }

    // Nothing but the battery as it is then: no other, no charger, no swap, no battery inside a device.
    private static DayPlan Again(DayPlan plan, string name, DayBlock block, string key, KitBattery battery, double airKelvin) =>
        new()
        {
            Days =
            [
                new ShootingDay
                {
                    Ambient = Temperature.FromKelvins(airKelvin),
                    Blocks = new([KeyValuePair.Create(name, block)]),
                },
            ],
            Ambient = plan.Ambient,
            NightTemperature = plan.NightTemperature,
            Batteries = new([KeyValuePair.Create(key, battery)]),
            TakesAnyCharge = true,
        };
}
