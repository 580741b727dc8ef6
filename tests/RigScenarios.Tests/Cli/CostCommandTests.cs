using System.Text.Json;
using RigScenarios.Tests.Costs;

namespace RigScenarios.Tests.Cli;

/// <summary>What a kit costs, as the commands tell it.</summary>
[Collection(nameof(ConsoleRun))]
public class CostCommandTests
{
    private static readonly string Ferry = Repository.Data("scenarios", "river-ferry.yaml");

    // Head 1150, monitor 720, tripod 380, brick 235, plate 190; the rest is owned.
    [Fact]
    public async Task Run_tells_the_cost_and_what_costs_most()
    {
        var (code, text, error) = await ConsoleRun.RunAsync("run", Ferry, "--quick");
        Assert.Equal((0, ""), (code, error));
        Assert.Contains("\nCost              holds     What it needs costs 2,675 EUR to buy; no budget is given.", text,
            StringComparison.Ordinal);
        var section = text[text.IndexOf("Cost, dearest first", StringComparison.Ordinal)..];
        Assert.Matches(@"^Cost, dearest first\s+- Middle fluid head \(head\): 1,150 EUR to buy\.\s+- Monitor-recorder 5-inch "
            + @"\(monitor\): 720 EUR to buy\.", section);
        Assert.Contains("- Prices are net, without value added tax.", section, StringComparison.Ordinal);
        Assert.Contains("- 8 are owned and cost nothing more.", section, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_budget_that_is_set_is_held_against_it()
    {
        var (code, text, _) = await ConsoleRun.RunAsync("run", Ferry, "--quick", "--json", "--set", "costs.budget=2500 EUR");
        Assert.Equal(0, code);
        using var json = JsonDocument.Parse(text);
        var answer = json.RootElement.GetProperty("answers")[0];
        var question = answer.GetProperty("questions").EnumerateArray()
            .Single(one => one.GetProperty("question").GetString() == "cost");
        Assert.Equal("fails", question.GetProperty("verdict").GetString());
        Assert.Equal("What it needs costs 2,675 EUR to buy, 175 EUR over the budget of 2,500 EUR.",
            question.GetProperty("words").GetString());
        Assert.Equal(-175, answer.GetProperty("cost").GetProperty("left").GetDecimal());
        await DocumentedFields.AssertAsync(json.RootElement, "# The answer as JSON", "## What only one command tells");
    }

    [Fact]
    public async Task Check_refuses_two_currencies_at_their_line_and_ends_with_2()
    {
        using var folder = new TemporaryFolder();
        var file = folder.Write("priced.yaml", PricedScenario.Text(currency: "USD"));
        var (code, text, error) = await ConsoleRun.RunAsync("check", file);
        Assert.Equal(2, code);
        Assert.Matches(@"priced\.yaml:\d+:\d+: error: parts\.plate\.buy: 50 USD is in another currency", text + error);
    }
}
