using RigScenarios.Files;
using RigScenarios.Scenarios;

namespace RigScenarios.Tests.Files;

/// <summary>The wiring's fields: what is read, and what is refused in which words.</summary>
public class WiringFieldTests
{
    [Fact]
    public void A_wiring_with_outlets_cables_and_a_splitter_is_read()
    {
        var (scenario, problems) = Read(WiredScenario.Text());

        Assert.Empty(problems);
        var plate = scenario!.Parts["plate"].Plate!;
        Assert.Equal(["a", "b", "usb"], plate.Outlets.Keys);
        Assert.Equal(5, plate.Outlets["usb"].Voltage!.Value.Volts);
        var cable = scenario.Parts["lead"].Cable!;
        Assert.Equal((22, 3.0), (cable.Gauge.Awg, cable.Length.Meters));
        Assert.Equal(["lead", "short"], scenario.Builds["one"].Cables);
        Assert.Contains("lead", scenario.Builds["one"].Things);
    }

    [Theory]
    [InlineData("0.5 mm²", "0.5 mm²")]
    [InlineData("0.75 mm2", "0.75 mm²")]
    [InlineData("AWG 20", "AWG 20")]
    [InlineData("20 AWG", "AWG 20")]
    public void Gauges_are_written_in_several_ways(string text, string gauge)
    {
        var (scenario, problems) = Read(WiredScenario.Text().Replace("AWG 22", text, StringComparison.Ordinal));

        Assert.Empty(problems);
        Assert.Equal(gauge, scenario!.Parts["lead"].Cable!.Gauge.ToString());
    }

    [Theory]
    [InlineData("gauge: AWG 22", "gauge: AWG 2", "AWG 20")]
    [InlineData("gauge: AWG 22", "gauge: 0.6 mm²", "0.5, 0.75, 1, 1.5, 2.5 mm²")]
    [InlineData("{outlet: a, cable: lead}", "{outlet: aa, cable: lead}", "has no outlet \"aa\". Did you mean \"a\"?")]
    [InlineData("{outlet: a, cable: lead}", "{outlet: a, cable: leed}",
        "There is nothing named \"leed\" in the kit. Did you mean \"lead\"?")]
    [InlineData("{outlet: a, cable: lead}", "{outlet: a, cable: camera}", "is not a power cable")]
    [InlineData("{outlet: a, cable: lead}", "{fed-by: box, cable: lead}",
        "feed each other in a circle: box <- box. Nothing feeds them from the battery")]
    [InlineData("light: {outlet: b}", "light: {outlet: a}",
        "The outlet \"a\" of \"plate\" has one socket, but 2 plugs shall go in: box, light")]
    [InlineData("light: {outlet: b}", "light: {fed-by: camera}", "\"camera\" is a device: nothing is known of an outlet on it")]
    [InlineData("light: {outlet: b}", "light: {fed-by: [plate, battery]}", "SHORT CIRCUIT: two feeds for one thing")]
    [InlineData("light: {outlet: b}", "light: {fed-by: battery, outlet: b}", "\"battery\" has no named outlets")]
    [InlineData("light: {outlet: b}", "light: {outlet: b, cable: lead}",
        "The build needs 2 of \"lead\" (box, light), the kit has 1")]
    [InlineData("minimum: 10 V, maximum: 18 V", "minimum: 5 V, maximum: 8 V", "WRONG VOLTAGE: Camera takes 8 V at most")]
    [InlineData("light: {outlet: b}", "light: {outlet: usb}",
        "Light needs at least 9 V, but the outlet \"usb\" of \"plate\" gives 5 V")]
    [InlineData("usb: {voltage: 5 V}", "usb: {efficiency: 80 %}", "Only an outlet that holds a voltage has an efficiency")]
    [InlineData("peak: 30 W", "peak: 12 W", "The peak (12 W) is below the draw at work (20 W)")]
    public void What_cannot_be_is_refused_in_plain_words(string right, string wrong, string words)
    {
        var text = WiredScenario.Text();
        Assert.Contains(right, text, StringComparison.Ordinal);

        var (_, problems) = Read(text.Replace(right, wrong, StringComparison.Ordinal));

        Assert.Contains(problems, problem => problem.Severity == Severity.Error && problem.At.Line > 0
            && problem.ToString().Contains(words, StringComparison.Ordinal));
    }

    [Fact]
    public void A_regulator_needs_an_efficiency_or_its_losses()
    {
        const string right = "efficiency: 80 %";
        var text = SmallScenario.Text();

        var (_, problems) = Read(text.Replace($"{right}, ", "", StringComparison.Ordinal));
        var (scenario, none) = Read(text.Replace(right, "loss-per-ampere: 0.21 V, loss-per-ampere-squared: 120 mΩ",
            StringComparison.Ordinal));

        Assert.Contains(problems, problem => problem.ToString()
            .Contains("Neither an efficiency nor a loss is given", StringComparison.Ordinal));
        Assert.Empty(none);
        Assert.Equal(0.21, scenario!.Parts["regulator"].Regulator!.LossPerAmpere!.Value.Volts, 1e-12);
    }

    [Fact]
    public void What_is_written_is_read_back_the_same()
    {
        var scenario = SmallScenario.Read(WiredScenario.Text());

        var again = SmallScenario.Read(ScenarioFile.Text(scenario));

        // The demo battery of the tests has tables, which records compare by reference: the texts below hold those.
        Each.Of(scenario.Parts.Where(part => part.Value.Battery is null),
            part => Assert.Equal(part.Value, again.Parts[part.Key]));
        Assert.Equal(ScenarioFile.Text(scenario), ScenarioFile.Text(again));
    }

    private static (Scenario? Scenario, IReadOnlyList<Diagnostic> Problems) Read(string text)
    {
        using var folder = new TemporaryFolder();
        return ScenarioFile.TryRead(folder.Write("scenario.yaml", text));
    }
}
