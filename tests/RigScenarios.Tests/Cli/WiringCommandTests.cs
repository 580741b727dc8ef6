using System.Text.Json;

namespace RigScenarios.Tests.Cli;

[Collection(nameof(ConsoleRun))]
public class WiringCommandTests
{
    private static readonly string Night = Repository.Data("scenarios", "night-dolly.yaml");

    [Fact]
    public async Task The_headline_comes_first_then_what_stops_then_the_limits_then_the_cautions()
    {
        var (code, text, error) = await ConsoleRun.RunAsync("wiring", Night, "--build", "thin-lead");

        Assert.Equal(("", 0), (error, code));
        string[] inOrder =
        [
            "No: the camera stops at ", "Wiring            fails", "Stops for want of voltage", "Wiring, least left first",
            "cable of the splitter: ",
            "limits hold", "What would make it work: rigscenarios run", "Cautions", "never bridge one", "measure it with a meter",
        ];
        var flat = text.ReplaceLineEndings(" ");
        var places = inOrder.Select(words => flat.IndexOf(words, StringComparison.Ordinal)).ToList();
        Assert.True(!places.Contains(-1) && places.Order().SequenceEqual(places), $"{string.Join(' ', places)}\n{text}");
        Assert.True(text.Split('\n').Length < 60, "The limits that hold with ease are one line.");
    }

    [Fact]
    public async Task The_heavy_lead_reaches_the_end_of_the_same_night_with_an_outlet_past_its_limit()
    {
        var (code, text, _) = await ConsoleRun.RunAsync("wiring", Night, "--build", "heavy-lead", "--day", "night");

        Assert.Equal(0, code);
        Assert.Contains("No: it lasts until wrap at 22:25", text, StringComparison.Ordinal);
        Assert.DoesNotContain("Stops for want of voltage", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_changed_cable_changes_the_answer()
    {
        var (code, text, _) = await ConsoleRun.RunAsync("wiring", Night, "--build", "thin-lead", "--set",
            "parts.power-cable-thin.cable.gauge=2.5 mm²", "--set", "parts.power-cable-thin.cable.rated-current=15 A");

        Assert.Equal(0, code);
        Assert.Contains("it lasts until wrap at 22:25", text, StringComparison.Ordinal);
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
        await DocumentedFields.AssertAsync(json.RootElement, "# The answer as JSON", "## What only one command tells");
        Assert.Equal("camera", json.RootElement.GetProperty("answers")[0].GetProperty("wiring").GetProperty("drop_outs")[0]
            .GetProperty("element").GetString());
    }
}
