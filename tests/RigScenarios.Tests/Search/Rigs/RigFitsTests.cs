using RigScenarios.Search.Rigs;

namespace RigScenarios.Tests.Search.Rigs;

public class RigFitsTests
{
    [Fact]
    public void A_battery_that_needs_a_mount_fits_only_a_plate_that_gives_it_or_says_nothing()
    {
        var fits = new RigFits(SmallQuestion.Of("{flat: {parts: [small, large]}, plate: {parts: [slotted, railed]}}"));
        Assert.Equal("The Small battery needs \"slot\"; the Railed plate gives \"rail\", \"pin\".", fits.Reason(0, 1, 1, 2));
        Assert.Equal(fits.Reason(0, 1, 1, 2), fits.Reason(1, 2, 0, 1));
        Assert.Equal(("", "", ""), (fits.Reason(0, 1, 1, 1), fits.Reason(0, 1, 1, 0), fits.Reason(0, 2, 1, 2)));
        Assert.Single(fits.Rejected());
    }

    [Fact]
    public void A_mount_of_the_rest_of_the_build_rules_a_candidate_out_alone()
    {
        var question = SmallQuestion.Of("{flat: {parts: [small]}}");
        var railed = question.Scenario with { Kit = question.Scenario.Kit.With("plate", new("railed")) };
        var fits = new RigFits(question with { Scenario = railed });
        Assert.Contains("needs \"slot\"", fits.Reason(0, 1), StringComparison.Ordinal);
        Assert.Equal("", fits.Reason(0, 0));
    }

    [Fact]
    public void Too_much_voltage_rules_out_a_device_or_a_device_with_a_battery()
    {
        Assert.Contains("WRONG VOLTAGE: Fragile light takes 9 V at most",
            new RigFits(SmallQuestion.Of("{light: {parts: [fragile]}}")).Reason(0, 1), StringComparison.Ordinal);
        var both = new RigFits(SmallQuestion.Of("{light: {parts: [fragile]}, flat: {parts: [large]}}"));
        Assert.Equal("", both.Reason(0, 1));
        Assert.Contains("WRONG VOLTAGE", both.Reason(0, 1, 1, 1), StringComparison.Ordinal);
        Assert.Contains("WRONG VOLTAGE", both.Reason(0, 1, 1, 0), StringComparison.Ordinal);
    }

    [Fact]
    public void An_outlet_that_a_plate_has_not_rules_it_out()
    {
        var fits = new RigFits(BestRigQuestion.Of(SmallScenario.Read(SmallQuestion.Text("{plate: {parts: [slotted]}}",
            devices: "{camera: {essential: yes}, light: {outlet: a}}")
            .Replace("plate: {own-draw: 2 W}", "plate: {own-draw: 2 W, outlets: {a: {maximum-current: 5 A}}}",
                StringComparison.Ordinal))));
        Assert.Equal("The Slotted plate has no outlet \"a\", on which the light hangs.", fits.Reason(0, 1));
    }

    [Fact]
    public void One_thing_of_the_kit_is_in_one_place()
    {
        var text = SmallQuestion.Text("{light: {from-kit: [lamp]}, lamp: {kind: monitor}}",
            devices: "{camera: {essential: yes}, light: {}, lamp: {}}")
            .Replace("spare: {", "lamp: {part: thrifty}, spare: {", StringComparison.Ordinal);
        var fits = new RigFits(BestRigQuestion.Of(SmallScenario.Read(text)));
        Assert.Equal("The kit has one \"lamp\", and it can't be in two places.", fits.Reason(0, 1, 1, 0));
        Assert.Equal("", fits.Reason(0, 1, 1, 1));
        var alone = new RigFits(BestRigQuestion.Of(SmallScenario.Read(text.Replace(", lamp: {kind: monitor}}", "}",
            StringComparison.Ordinal))));
        Assert.Equal("The kit has one \"lamp\", and it is in its own place of the build.", alone.Reason(0, 1));
    }
}
