using CsCheck;
using MathNet.Numerics.Integration;
using RigScenarios.Batteries;
using RigScenarios.Cells;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Tests.Batteries;

/// <summary>What must hold for a pack whose charge lies in two wells.</summary>
public class TwoWellTests
{
    private const int Runs = 120;

    private static readonly Pack Wells = Packs.Default with { UsableCapacity = UsableCapacity.Full };

    // A load from an hour to five of them, a share and a cold.
    private static readonly Gen<(Pack Pack, double Celsius, Demand Demand)> AnyCase = Gen.Select(
        Gen.Double[0.3, 0.9], Gen.Double[5, 100], Gen.Double[30, 80], Gen.Double[-25, 35], Gen.Double[18, 90],
        (share, seconds, kilojoules, celsius, watts) => (Wells with
        {
            NearShare = share,
            ExchangeTime = Duration.FromSeconds(seconds),
            ExchangeActivationEnergy = MolarEnergy.FromKilojoulesPerMole(kilojoules),
        }, celsius, new Demand([Packs.Watts(700, watts), Packs.Watts(400, 0), Packs.Watts(300, 0.4 * watts)])));

    [Fact]
    public void Chemical_energy_is_what_the_two_wells_lose()
    {
        AnyCase.Holds(
            (one, looked) =>
            {
                var run = one.Pack.Run(one.Celsius, one.Demand);
                var energies = run.Energies;
                var lost = Stored(one.Pack, DischargeStart.Full) - Stored(one.Pack, run.FinalState);
                Assert.Equal(lost, energies.Chemical.Joules, (1e-6 * lost) + 1e-6);
                Assert.True(Math.Abs(energies.Imbalance.Joules) <= (1e-6 * energies.Chemical.Joules) + 1e-9);
                Assert.Equal(
                    one.Pack.Capacity.AmpereHours * (1 - run.EndStateOfCharge.DecimalFractions), energies.ChargeDrawn.AmpereHours,
                    1e-8);
                if (run.EndTime.Seconds > 0)
                    looked.One();
            },
            cases: Runs, atLeast: 80);
    }

    [Fact]
    public void Mixing_makes_heat_out_of_the_charge_that_moves()
    {
        AnyCase.Holds(
            (one, looked) =>
            {
                var after = one.Pack.Run(one.Celsius, one.Demand).FinalState;
                if (after.SurfaceLag.DecimalFractions < 1e-3)
                    return;
                looked.One();
                var start = after with
                {
                    StateOfCharge = after.StateOfCharge + Ratio.FromDecimalFractions(1e-9), DemandOffset = Duration.Zero,
                };
                var rest = one.Pack.Run(one.Celsius, Rest, start, For(3600));
                Assert.Equal(EndCause.TimeLimit, rest.Cause);
                Assert.Equal(0, rest.Energies.Delivered.Joules);
                Assert.True(rest.Energies.Chemical.Joules > 0);
                Assert.Equal(rest.Energies.Chemical.Joules, rest.Energies.Heat.Joules, 1e-5 * rest.Energies.Chemical.Joules);
                Assert.Equal(start.StateOfCharge.DecimalFractions, rest.EndStateOfCharge.DecimalFractions, 1e-12);
                Assert.True(rest.EndNearCharge.DecimalFractions > start.NearCharge.DecimalFractions);
            },
            cases: Runs, atLeast: 60);
    }

    [Fact]
    public void A_far_well_of_nearly_nothing_is_one_well()
    {
        var whole = Wells with { NearShare = 1 };
        var nearly = Wells with { NearShare = 1 - 1e-7 };
        foreach (var celsius in (double[])[-20, 5, 30])
        {
            var expected = whole.Run(celsius, Packs.Takes);
            var result = nearly.Run(celsius, Packs.Takes);
            Assert.Equal(expected.Cause, result.Cause);
            Assert.Equal(expected.EndTime.Seconds, result.EndTime.Seconds, 1e-5 * expected.EndTime.Seconds);
        }
    }

    [Fact]
    public void With_one_well_the_exchange_is_of_no_effect()
    {
        var whole = Packs.Default with { NearShare = 1 };
        var expected = whole.Run(-15, Packs.Takes);
        var result = (whole with { ExchangeTime = Duration.FromSeconds(1000) }).Run(
            -15, Packs.Takes, DischargeStart.Full with { SurfaceLag = Ratio.FromPercent(40) });
        Assert.Equal(expected.EndTime, result.EndTime);
        Assert.Equal(Ratio.Zero, result.FinalState.SurfaceLag);
        Assert.Equal(result.EndStateOfCharge, result.EndNearCharge);
    }

    [Fact]
    public void Charge_comes_back_with_rest_and_sooner_where_it_is_warm()
    {
        // At the temperature of the air all the time.
        var pack = Packs.Default with { HeatConductance = ThermalConductance.FromWattsPerKelvin(1e4) };
        var cold = pack.Run(-20, Demand.OfPower(Power.FromWatts(40)));
        Assert.True(cold.FinalState.SurfaceLag.Percent > 10);
        double After(double celsius, double minutes) => pack.Run(
            celsius, Rest, cold.FinalState with { DemandOffset = Duration.Zero }, For(60 * minutes)).EndNearCharge.Percent;
        var near = cold.EndNearCharge.Percent;
        Assert.True(After(-20, 10) > near + 2);
        Assert.True(After(-20, 60) > After(-20, 10));
        Assert.True(After(10, 10) > After(-20, 10));
        Assert.Equal(cold.EndStateOfCharge.Percent, After(20, 600), 1e-3);
    }

    // The rest in closed form, or as a run without a load, against a run of the discharge itself.
    [Theory]
    [InlineData(-20, 20, 300)]
    [InlineData(-20, -20, 7200)]
    [InlineData(10, -10, 1800)]
    [InlineData(25, 25, 60)]
    public void A_rest_is_a_run_without_a_load(double ran, double rests, double seconds)
    {
        var loaded = Packs.Default.Run(ran, Demand.OfPower(Power.FromWatts(60)), options: For(1200)).FinalState with
        {
            DemandOffset = Duration.Zero,
        };
        var expected = Packs.Default.Run(rests, Rest, loaded, For(seconds)).FinalState;

        var parameters = new PackParameters(Packs.Default);
        var state = PackRest.After(parameters, loaded.State(0), 273.15 + rests, 0, 1, seconds);

        Assert.Equal(expected.SurfaceLag.DecimalFractions, state.Lag, 1e-6);
        Assert.Equal(expected.Temperature!.Value.Kelvins, state.Kelvin, 2e-3);
        Assert.Equal(expected.Voltage2.Volts, state.Voltage2, 1e-9);
        Assert.Equal(expected.StateOfCharge.DecimalFractions, state.Charge, 1e-4);
    }

    [Fact]
    public void Charged_in_the_cold_the_near_well_is_full_first()
    {
        var setting = new ChargeSetting(ElectricCurrent.FromAmperes(3)) { Lowest = Temperature.FromDegreesCelsius(-30) };
        ChargeResult At(double celsius) => ChargeRun.Run(
            Packs.Default, Temperature.FromDegreesCelsius(celsius), new DischargeStart { StateOfCharge = Ratio.FromPercent(20) },
            setting, TestContext.Current.CancellationToken);
        var (cold, warm) = (At(-10), At(25));
        Assert.Equal((ChargeEnd.Full, ChargeEnd.Full), (cold.End, warm.End));
        Assert.True(cold.FinalState.SurfaceLag.DecimalFractions < 0);
        Assert.True(cold.FinalState.StateOfCharge < warm.FinalState.StateOfCharge);
        Assert.Equal(cold.EnergyIn.Joules, cold.Stored.Joules + cold.Heat.Joules, 1e-6 * cold.EnergyIn.Joules);
    }

    [Fact]
    public void A_lag_that_a_well_cannot_have_is_refused()
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() => Packs.Default.Run(
            0, Packs.Takes, new DischargeStart { StateOfCharge = Ratio.FromPercent(30), SurfaceLag = Ratio.FromPercent(40) }));
        Assert.Contains("the near well would hold -0.1", error.Message);
        Assert.Throws<ArgumentOutOfRangeException>(() => new DischargeStart { SurfaceLag = Ratio.FromPercent(101) });
    }

    private static Demand Rest => Demand.OfPower(Power.Zero);

    private static DischargeOptions For(double seconds) => new() { TimeLimit = Duration.FromSeconds(seconds) };

    // S·3600·Q·aQ·(c·W(zn) + (1 - c)·W(zf)), W the integral of the open-circuit voltage, piece by piece of its table.
    private static double Stored(Pack pack, DischargeStart state)
    {
        var (charge, lag) = (state.StateOfCharge.DecimalFractions, state.SurfaceLag.DecimalFractions);
        var c = pack.NearShare;
        return pack.SeriesGroups * 3600 * pack.Capacity.AmpereHours * pack.Age.CapacityLeft.DecimalFractions
            * ((c * Integral(pack, charge - lag)) + ((1 - c) * Integral(pack, charge + (lag * c / (1 - c)))));
    }

    private static double Integral(Pack pack, double to)
    {
        var sum = 0.0;
        foreach (var piece in pack.OpenCircuitVoltage.Curve.Pieces)
        {
            if (to > piece.Start)
                sum += GaussLegendreRule.Integrate(piece.At, piece.Start, Math.Min(to, piece.End), 4);
        }

        return sum;
    }
}
