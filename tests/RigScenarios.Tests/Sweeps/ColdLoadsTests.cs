using RigScenarios.Batteries;
using RigScenarios.Sweeps;
using RigScenarios.Tests.Answers;
using UnitsNet;

namespace RigScenarios.Tests.Sweeps;

/// <summary>What the cold leaves of a battery under different loads.</summary>
public class ColdLoadsTests
{
    private static readonly Temperature[] Air = [Temperature.FromDegreesCelsius(-20), Temperature.FromDegreesCelsius(25)];

    // 100 Wh: 6 W for 16 h, 20 W of its camera, 50 W for two hours.
    private static IReadOnlyList<ColdLoad> Loads => ColdLoads.Of(
        ColdScenario.Of(25, 20, 1), Air, TestContext.Current.CancellationToken);

    [Fact]
    public void They_are_16_hours_the_usual_load_and_two_hours() =>
        Assert.Equal([("light", 6), ("usual", 20), ("heavy", 50), ("heavy, in wind", 50)],
            Loads.Select(load => (load.Name, Math.Round((double)load.Power.Watts))));

    [Fact]
    public void The_cold_takes_more_from_more_load_and_wind_takes_more_still()
    {
        var given = Loads.Select(load => load.Points.Select(point => point.Given.Percent).ToList()).ToList();

        Each.Of(given, at => Assert.True(at[0] < at[1] && at[1] < 100));
        Assert.True(given[0][0] > given[1][0] && given[1][0] > given[3][0] && given[2][0] > given[3][0]);

        // Warm, eight times the load takes no more than a few percent.
        Assert.InRange(given[0][1] - given[3][1], 0, 6);
    }

    // What it says is a run of the battery's own.
    [Fact]
    public void A_point_is_a_discharge_of_the_battery()
    {
        var pack = PackModel.From(ColdScenario.Of(25, 20, 1).Plan.Batteries.Values.First().Part.Battery!,
            Mass.FromGrams(900), null, null).Pack;
        var run = Discharge.Run(pack, Air[0], DischargeStart.Full, Demand.OfPower(Power.FromWatts(50)), DischargeOptions.Default,
            TestContext.Current.CancellationToken);

        Assert.Equal(run.Energies.ChargeDrawn / pack.Capacity, Loads[2].Points[0].Given.DecimalFractions, 1e-9);
    }
}
