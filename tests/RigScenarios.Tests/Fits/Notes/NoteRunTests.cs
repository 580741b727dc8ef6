using RigScenarios.Fits;
using RigScenarios.Fits.Notes;

namespace RigScenarios.Tests.Fits.Notes;

/// <summary>What notes ask of a battery whose runtime is energy over power: 100 Wh at 10 V without resistance.</summary>
public sealed class NoteRunTests
{
    [Fact]
    public void The_mean_draw_of_a_device_counts() =>
        // Camera: 60 % of 20 W and 40 % of 10 W.
        Assert.Equal(100 / 16.0, Hours("devices: {camera: record 60 %}"), 1e-3);

    [Fact]
    public void Devices_that_are_not_named_are_off_or_as_the_others()
    {
        const string Two = "{camera: {essential: yes}, light: {count: 2}}";
        Assert.Equal(100 / 20.0, Hours("devices: {camera: record}", Two), 1e-3);
        // Two lights of 5 W.
        Assert.Equal(100 / 30.0, Hours("devices: {camera: record}, others: on", Two), 1e-3);
    }

    [Fact]
    public void Regulators_and_the_plates_own_draw_come_on_top() =>
        // 16 W behind 80 %, 0.5 W of the regulator, 2 W of the plate.
        Assert.Equal(100 / ((16 / 0.8) + 0.5 + 2), Hours("devices: {camera: record 60 %}",
            "{camera: {fed-by: regulator, essential: yes}}", "plate: plate\n    regulators: {regulator: {fed-by: plate}}"), 1e-3);

    [Fact]
    public void Stretches_follow_each_other() =>
        // Two hours of 20 W, then 10 W for the 60 Wh that are left.
        Assert.Equal(2 + (60 / 10.0), Hours(
            "stretches: [{length: 2 h, devices: {camera: record}}, {devices: {camera: standby}}]"), 1e-3);

    [Fact]
    public void A_day_that_was_kept_is_begun_again_until_the_battery_ends()
    {
        // In an hour 15 Wh: 20 W and 10 W in turn, then half an hour off.
        var hours = Hours("as-planned: day", blocks: "{takes: {length: 1 h, others: record, cycle: {take: 5 min, reset: 5 min}}, "
            + "meal: {length: 30 min, others: off}}");
        Assert.Equal((6 * 1.5) + (10 / 15.0), hours, 1e-3);
    }

    [Fact]
    public void Half_a_charge_is_half_the_time() =>
        Assert.Equal(2.5, Hours("charge: 50 %, devices: {camera: record}"), 1e-3);

    [Fact]
    public void A_device_that_stops_at_its_voltage_ends_the_run()
    {
        using var folder = new TemporaryFolder();
        var noted = Read(folder, "devices: {camera: record}, ended-by: camera",
            SmallScenario.Text(parts: "").Replace("standby: 10 W, record: 20 W}",
                "standby: 10 W, record: 20 W}, voltage: {minimum: 8 V}",
                StringComparison.Ordinal));
        var run = NoteRun.Of(noted, noted.Notes.Notes["one"]);
        Assert.Equal(8, run.Cutoff!.Value.Volts, 1e-3);
        Assert.Null(NoteRun.Of(noted, noted.Notes.Notes["one"] with { EndedBy = "battery" }).Cutoff);
        // Left out: the camera is essential and stops before the battery's own cut-off of 1 V.
        Assert.Null(noted.Scenario.Builds["one"].Plate);
        Assert.Equal(8, NoteRun.Of(noted, noted.Notes.Notes["one"] with { EndedBy = null }).Cutoff!.Value.Volts, 1e-3);
    }

    [Fact]
    public void A_metered_draw_stands_for_itself_and_the_scale_is_for_the_others()
    {
        using var folder = new TemporaryFolder();
        var noted = Read(folder, "devices: {camera: record}, others: on", SmallScenario.Text(
            "{camera: {essential: yes}, light: {}}"), "meters: {camera: {record: 24 W}}\n");
        var problem = NotedProblem.Of(noted, cancellation: TestContext.Current.CancellationToken).Problem;
        Assert.Equal(24, (double)problem.Notes[0].Run.Stretches[0].States[0].Devices["camera"].Watts, 1e-9);
        Assert.Contains("camera", problem.Priors.KnownDevices);
        Assert.DoesNotContain("light", problem.Priors.KnownDevices);
    }

    [Fact]
    public void What_an_earlier_fit_left_is_put_aside()
    {
        using var folder = new TemporaryFolder();
        var noted = Read(folder, "devices: {camera: record}", SmallScenario.Text(
            battery: ", capacity-left: 80 %, resistance-growth: 1.4, load-scale: 1.2, runtime-known-to: 5 %"));
        var input = NotedProblem.Of(noted, cancellation: TestContext.Current.CancellationToken);
        Assert.Equal(1, input.Expected.CapacityLeft.DecimalFractions);
        Assert.Equal(20, (double)input.Problem.Notes[0].Run.Stretches[0].States[0].Devices["camera"].Watts, 1e-9);
        Assert.Contains(input.Assumed, taken => taken.Kind == NoteAssumptionKind.EarlierFit);
    }

    [Fact]
    public void What_the_scenario_says_of_the_age_is_believed_before()
    {
        using var folder = new TemporaryFolder();
        var noted = Read(folder, "devices: {camera: record}",
            SmallScenario.Text(battery: ", capacity-left: 80 %, resistance-growth: 1.4"));
        var priors = NotedProblem.Of(noted, cancellation: TestContext.Current.CancellationToken).Problem.Priors;
        Assert.Equal(Math.Log(0.8), priors.Capacity.Mean, 1e-12);
        Assert.Equal(Math.Log(1.4), priors.Resistance.Mean, 1e-12);
    }

    [Fact]
    public void Each_device_has_its_own_scale_where_that_is_asked_for()
    {
        using var folder = new TemporaryFolder();
        var noted = Read(folder, "devices: {camera: record}", SmallScenario.Text("{camera: {essential: yes}, light: {}}"),
            "scale: each\n");
        var priors = NotedProblem.Of(noted, cancellation: TestContext.Current.CancellationToken).Problem.Priors;
        // The light never ran, so nobody learns anything of it.
        Assert.Equal(["camera"], priors.Devices.Keys);
        Assert.Null(priors.Load);
    }

    private static double Hours(string note, string devices = "{camera: {essential: yes}}", string build = "",
        string blocks = "{all: {length: 2 h, others: record}}")
    {
        using var folder = new TemporaryFolder();
        var noted = Read(folder, note, SmallScenario.Text(devices, build, blocks));
        var problem = NotedProblem.Of(noted).Problem;
        // Nothing may move: what the note asks of the battery as its label has it.
        var still = new NormalPrior(0, 1e-6);
        var fixedProblem = new FitProblem(problem.Pack,
            problem.Priors with { Capacity = still, Resistance = still, Load = still },
            problem.Notes);
        return BatteryFit.Find(fixedProblem, null, TestContext.Current.CancellationToken).Notes[0].Predicted.Hours;
    }

    private static NotedBattery Read(TemporaryFolder folder, string note, string scenario, string more = "")
    {
        folder.Write("rig.yaml", scenario);
        var (noted, problems) = FieldNotesFile.TryRead(folder.Write("notes.yaml",
            $"rigscenarios: field notes 1\nscenario: rig.yaml\n{more}notes:\n  one: {{lasted: 4 h, {note}}}\n"));
        Assert.Empty(problems);
        return noted!;
    }
}
