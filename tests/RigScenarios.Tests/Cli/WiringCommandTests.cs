using System.Text.Json;

namespace RigScenarios.Tests.Cli;

[Collection(nameof(ConsoleRun))]
public class WiringCommandTests
{
    private static readonly string Night = Repository.Data("scenarios", "night-dolly.yaml");

    [Fact]
    public async Task The_answer_comes_first_then_what_fixes_it_then_the_limits_then_what_to_mind()
    {
        var (code, text, error) = await ConsoleRun.RunAsync("wiring", Night, "--build", "thin-lead");

        Assert.Equal(("", 0), (error, code));
        string[] inOrder = ["the camera drops out", "What would fix it", "Past a limit", "Where", "Left", "When", "Mind", "measure it with a meter", "never bridge one"];
        var places = inOrder.Select(words => text.IndexOf(words, StringComparison.Ordinal)).ToList();
        Assert.DoesNotContain(-1, places);
        Assert.Equal(places.Order(), places);
    }

    [Fact]
    public async Task The_heavy_lead_reaches_the_end_of_the_same_night()
    {
        var (code, text, _) = await ConsoleRun.RunAsync("wiring", Night, "--build", "heavy-lead", "--day", "night");

        Assert.Equal(0, code);
        Assert.Contains("Nothing drops out on this day.", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_changed_cable_changes_the_answer()
    {
        var (code, text, _) = await ConsoleRun.RunAsync("wiring", Night, "--build", "thin-lead", "--set", "parts.power-cable-thin.cable.gauge=2.5 mm²", "--set", "parts.power-cable-thin.cable.rated-current=15 A");

        Assert.Equal(0, code);
        Assert.Contains("Nothing drops out on this day.", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_unknown_outlet_ends_with_2_and_the_nearest_name()
    {
        var (code, _, error) = await ConsoleRun.RunAsync("wiring", Night, "--set", "builds.thin-lead.devices.camera.outlet=onee");

        Assert.Equal(2, code);
        Assert.Contains("Did you mean \"one\"?", error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Json_has_the_documented_fields()
    {
        var (code, text, _) = await ConsoleRun.RunAsync("wiring", Night, "--json");
        Assert.Equal(0, code);
        using var json = JsonDocument.Parse(text);
        Assert.Equal("rigscenarios wiring 1", json.RootElement.GetProperty("format").GetString());
        var documented = await File.ReadAllTextAsync(Path.Combine(Repository.Root, "docs", "json.md"), TestContext.Current.CancellationToken);
        var section = documented[documented.IndexOf("## Wiring", StringComparison.Ordinal)..];
        var names = new HashSet<string>();
        Names(json.RootElement, names);
        Assert.True(names.Count > 40);
        Assert.All(names, name => Assert.True(section.Contains($"`{name}`", StringComparison.Ordinal) || section.Contains($"`.{name}`", StringComparison.Ordinal) || section.Contains($"`.{name}[]`", StringComparison.Ordinal) || section.Contains($"`{name}[]`", StringComparison.Ordinal), name));
        Assert.Equal("camera", json.RootElement.GetProperty("answers")[0].GetProperty("fails_first").GetProperty("element").GetString());
    }

    private static void Names(JsonElement element, HashSet<string> names)
    {
        if (element.ValueKind == JsonValueKind.Array)
        {
            foreach (var item in element.EnumerateArray())
                Names(item, names);
        }
        else if (element.ValueKind == JsonValueKind.Object)
        {
            foreach (var property in element.EnumerateObject())
            {
                names.Add(property.Name);
                Names(property.Value, names);
            }
        }
    }
}
