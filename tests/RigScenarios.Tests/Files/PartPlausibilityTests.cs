using RigScenarios.Batteries;
using RigScenarios.Files;
using RigScenarios.Parts;
using RigScenarios.Scenarios;
using UnitsNet;

namespace RigScenarios.Tests.Files;

/// <summary>The invented parts add up, and behave as the trade's parts do.</summary>
public sealed class PartPlausibilityTests
{
    private static readonly Scenario Library = ScenarioFile.Read(Repository.Data("scenarios", "winter-harbour.yaml"));

    private static IEnumerable<KeyValuePair<string, Part>> Of(PartKind kind) =>
        Library.Library.Where(part => part.Value.Kind == kind);

    // Two tubes of the rod's length: π/4 (D² - d²) L, with 2.70 g/cm³ for aluminium and 7.9 g/cm³ for stainless steel (from
    // memory).
    [Fact]
    public void Rods_weigh_what_their_tubes_do()
    {
        foreach (var (id, part) in Of(PartKind.Rods))
        {
            var (outer, bore) = (part.Rods!.Diameter.Centimeters, part.Rods.Bore.Centimeters);
            var density = part.Rods.Material == RodMaterialKind.StainlessSteel ? 7.9 : 2.70;
            var grams = 2 * Math.PI / 4 * ((outer * outer) - (bore * bore)) * part.Size!.Length.Centimeters * density;
            Assert.True(Math.Abs(part.Mass!.Value.Grams / grams - 1) < 0.05,
                $"{id}: {part.Mass.Value.Grams:0} g, its tubes {grams:0} g");
        }
    }

    // A cage costs about 75 to 200 (common practice, no source).
    [Fact]
    public void A_cage_costs_what_the_trades_cages_do() => Each.Of(Of(PartKind.Cage),
        cage => Assert.InRange(cage.Value.Buy!.Value.Amount, 75, 200), atLeast: 3);

    // A day's rent is about a thirtieth of the price of dear things and more of cheap ones, 2 to 10 % (common practice, no
    // source).
    [Fact]
    public void Every_part_has_a_price_and_a_days_rent_in_one_currency() => Each.Of(Library.Library, part =>
    {
        Assert.True(part.Value.Buy is { Currency: "EUR" } && part.Value.RentPerDay is { Currency: "EUR" }, part.Key);
        Assert.InRange(part.Value.RentPerDay!.Value.Amount / part.Value.Buy!.Value.Amount, 0.02m, 0.10m);
    }, atLeast: 80);

    // 11.5 to 12 V for bricks of 14.4 V (common practice, no source): a guard below the brick's own protection never acts.
    [Fact]
    public void A_plate_guards_before_the_battery_does()
    {
        var cutoff = Of(PartKind.Battery).Where(part => part.Value.Battery!.Voltage.Volts > 14)
            .Max(part => PackModel.From(part.Value.Battery!, part.Value.Mass, part.Value.Size, null).Pack.CutoffVoltage.Volts);
        Assert.Equal(11.2, cutoff, 1e-9);
        foreach (var (id, part) in Of(PartKind.Plate).Where(part => part.Value.Plate!.SwitchOffVoltage is { Volts: > 10 }))
            Assert.True(part.Plate!.SwitchOffVoltage!.Value.Volts is >= 11.5 and <= 12, id);
    }

    // Sensor and screen run in both (common practice, no source).
    [Fact]
    public void A_body_on_standby_draws_60_to_85_percent_of_record()
    {
        foreach (var (id, part) in Of(PartKind.Body))
            Assert.True((double)part.Power!.Standby!.Value.Watts / (double)part.Power.Record!.Value.Watts is >= 0.60 and <= 0.85,
                id);
    }

    [Fact]
    public void No_lens_motor_of_a_demo_is_fed_past_its_controller()
    {
        foreach (var file in Repository.ScenarioFiles)
        {
            var scenario = ScenarioFile.Read(file);
            foreach (var (name, build) in scenario.Builds)
            {
                foreach (var (motor, device) in build.Devices
                    .Where(device => scenario.PartOf(device.Key)!.Kind == PartKind.Motor))
                    Assert.True(device.FedBy is { } feed && scenario.PartOf(feed)?.Kind == PartKind.MotorController,
                        $"{file}: {name}: {motor}");
            }
        }
    }
}
