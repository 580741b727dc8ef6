using RigScenarios.Charts.Travel;
using RigScenarios.Files;
using RigScenarios.Scenarios;

namespace RigScenarios.Notebooks.Tests.Domain;

public sealed class PackingTableTests
{
    private static readonly DateOnly Day = new(2026, 12, 12);

    [Fact]
    public void A_table_has_a_row_for_what_is_carried_and_for_what_stays()
    {
        var scenario = ScenarioPath.SetAll(DemoData.Harbour,
            [("kit.brick.count", "5"), ("parts.brick-190wh.battery.energy", "150 Wh")]);
        var table = PackingTable.Of(ScenarioTravel.Answer(scenario, "home", Day, TestContext.Current.CancellationToken));
        Assert.Equal(["operator", "assistant", "stays behind"], table.Rows.Select(row => row[0]));
        Assert.Equal(["2", "2", "1"], table.Rows.Select(row => row[2]));
        Assert.Equal(["10 Wh under 160 Wh", "10 Wh under 160 Wh", "1 over the number: 2 a person, 4 for 2 travellers"],
            table.Rows.Select(row => row[5]));
        Assert.Equal("yes, before the journey", table.Rows[0][6]);
        Assert.Contains("No permission: ask the airline.", table.Caption, StringComparison.Ordinal);
    }

    [Fact]
    public void A_date_without_rules_stands_in_the_caption()
    {
        var scenario = ScenarioPath.Set(DemoData.Harbour, "journeys.home.date", "2028-01-01");
        Assert.Contains("NO RULES ARE HELD FOR 1 JANUARY 2028",
            PackingTable.Of(ScenarioTravel.Answer(scenario, "home", Day, TestContext.Current.CancellationToken)).Caption,
            StringComparison.Ordinal);
    }
}
