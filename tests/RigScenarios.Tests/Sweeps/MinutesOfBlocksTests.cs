using RigScenarios.Sweeps;
using RigScenarios.Sweeps.Sampling;

namespace RigScenarios.Tests.Sweeps;

/// <summary>Minutes are those of the clock, not of arc.</summary>
public class MinutesOfBlocksTests
{
    private const string Path = "days.day.blocks.all.length";

    [Fact]
    public void An_axis_and_a_spread_in_minutes_give_what_a_file_accepts()
    {
        var scenario = SmallScenario.Read(SmallScenario.Text(blocks: "{all: {length: 45 min, others: record}}"));

        Assert.Equal(["30 min", "45 min", "60 min"], SweepAxis.Parse(scenario, $"{Path}=30 min..60 min:3").Values);
        Assert.Equal("45 min", UncertainField.Parse(scenario, $"{Path}=between 30 min and 60 min").Spread.TextAt(0.5));
    }
}
