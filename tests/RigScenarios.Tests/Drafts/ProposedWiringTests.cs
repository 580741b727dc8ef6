namespace RigScenarios.Tests.Drafts;

public sealed class ProposedWiringTests
{
    [Fact]
    public void What_takes_the_bricks_voltage_hangs_on_the_plate_and_a_small_body_on_the_lightest_regulator_that_fits()
    {
        var lines = Drafting.Answer(Drafting.Small).Wiring.ToDictionary(line => line.Thing);
        Assert.Equal("plate", lines["monitor"].FedBy);
        Assert.Equal("dummy-battery-7v6", lines["camera"].FedBy);
        Assert.Equal("plate", lines["dummy-battery-7v6"].FedBy);
        Assert.True(lines["camera"].Proposed);
        Assert.Contains("6.8 to 8.6 V", lines["camera"].Why, StringComparison.Ordinal);
    }
}
