using System.Globalization;
using System.Text.Json;
using RigScenarios.Benchmarks.Cases;
using RigScenarios.Days;
using RigScenarios.Wiring;
using UnitsNet;

namespace RigScenarios.Checks.Wiring;

/// <summary>
/// The wiring against the reference networks. Asked for: 1e-6 V and A at one voltage; 2e-4 in times, 5e-4 in charge and 1e-3 in
/// currents of runs. Held
/// here: 1e-10 relative at one voltage; 1e-7 in times and charge, 2e-6 in currents of runs.
/// </summary>
[Source(SourceKind.IndependentProgram,
    "data/network-cases.json with network-results.json: each part reduced to its loads, DOP853 at "
    + "1e-10, every run checked by an implicit solver; by another hand, for the same equations")]
public class ReferenceNetworkChecks
{
    public static TheoryData<string> Networks => [.. ReferenceNetworks.Static.Keys];

    /// <summary>Those of which the independent solver gives the edge; the others it solved no further than it needed.</summary>
    public static TheoryData<string> WithAnEdge => [.. Networks.Select(row => row.Data).Where(HasEdge)];

    public static TheoryData<string> Runs => [.. ReferenceNetworks.Runs.Keys];

    private static bool HasEdge(string id) =>
        ReferenceNetworks.Static[id].Expected.GetProperty("loadScaleAtEdge").ValueKind == JsonValueKind.Number;

    [Fact]
    public void All_cases_are_there_and_of_three_the_edge_is_not_given()
    {
        Assert.Equal((25, 25), (ReferenceNetworks.Static.Count, ReferenceNetworks.Runs.Count));
        Assert.Equal(4, ReferenceNetworks.Static.Values.Count(one => !one.Expected.GetProperty("solvable").GetBoolean()));
        Assert.Equal(["open-net-013", "open-net-015", "open-net-017"],
            ReferenceNetworks.Static.Keys.Where(id => !HasEdge(id)).Order());
    }

    [Theory]
    [MemberData(nameof(Networks))]
    public void Voltages_and_currents_everywhere_are_those_of_the_independent_solver(string id)
    {
        var (one, expected) = ReferenceNetworks.Static[id];

        var point = one.Network.TrySolve(one.Terminals, one.States);

        Assert.Equal(expected.GetProperty("solvable").GetBoolean(), point is not null);
        if (point is null)
        {
            // Nothing to compare, but what is past the edge says so.
            Assert.InRange(one.Network.LoadFactorAtEdge(one.Terminals, one.States), 0, 1);
            return;
        }

        Near(expected.GetProperty("rootCurrentA"), point.Current.Amperes, 1e-10);
        Assert.Equal(expected.GetProperty("elements").EnumerateObject().Count(), point.Elements.Count);
        foreach (var element in expected.GetProperty("elements").EnumerateObject())
        {
            var found = point.Elements[element.Name];
            Near(element.Value.GetProperty("inletV"), found.Inlet.Volts, 1e-10);
            Near(element.Value.GetProperty("currentA"), found.Current.Amperes, 1e-10);
            Assert.Equal(element.Value.TryGetProperty("outletV", out var outlet), found.Outlet is not null);
            if (found.Outlet is { } volts)
                Near(outlet, volts.Volts, 1e-10);
            Assert.Equal(element.Value.TryGetProperty("outputCurrentA", out var output), found.OutputCurrent is not null);
            if (found.OutputCurrent is { } amperes)
                Near(output, amperes.Amperes, 1e-10);
        }
    }

    [Theory]
    [MemberData(nameof(WithAnEdge))]
    public void The_edge_of_what_can_be_delivered_is_where_the_independent_solver_puts_it(string id)
    {
        var (one, expected) = ReferenceNetworks.Static[id];

        Near(expected.GetProperty("loadScaleAtEdge"), one.Network.LoadFactorAtEdge(one.Terminals, one.States), 1e-7);
    }

    /// <summary>
    /// In this network all hangs on one wire of R = 7.026 mΩ, so that the edge is that of a quadratic equation: b² = 4·a·P·R, a
    /// = 1 + g·R, b = E - Ic·R. The draws, taken from its file, grow with the factor k, but the loss b·I² in its first
    /// regulator with k².
    /// </summary>
    [Fact]
    [Source(SourceKind.ClosedForm, "discriminant of the quadratic equation of one resistance, worked by hand")]
    public void The_edge_behind_one_wire_is_that_of_the_quadratic_equation()
    {
        const double wire = 0.007026, source = 33.23;
        var one = ReferenceNetworks.Static["open-net-013"].Case;

        var k = one.Network.LoadFactorAtEdge(one.Terminals, one.States);

        var second = k * ((3.706 / 0.818) + 0.637) / 7.45;
        var first = (7.45 * second / 0.888) + (k * 0.123) + (0.237 * second) + (0.0254 * second * second);
        var third = k * ((1.054 / 5) + 0.0894 + (0.005801 * 5)) * 5 / 0.904;
        var power = (k * (9.998 + 24.34)) + first + third;
        var b = source - (k * 0.01445 * wire);
        Assert.Equal(b * b, 4 * (1 + (k * 0.00648 * wire)) * power * wire, 1e-9 * b * b);
    }

    [Theory]
    [MemberData(nameof(Runs))]
    public void A_run_ends_as_the_independent_solver_says(string id)
    {
        var (one, expected) = ReferenceNetworks.Runs[id];

        var found = Run(id);

        Assert.Equal(expected.GetProperty("cause").GetString(), found.Cause);
        Assert.Equal(expected.GetProperty("at_step").GetBoolean(), found.AtStep);
        Assert.Equal(expected.GetProperty("blocksFinished").GetInt32(), found.BlocksFinished);
        var scale = 1 + expected.GetProperty("t_end_s").GetDouble();
        Assert.Equal(expected.GetProperty("t_end_s").GetDouble(), found.End.Seconds, 1e-7 * scale);
        Assert.Equal(expected.GetProperty("buildRuntime_s").GetDouble(), found.BuildRuntime.Seconds, 1e-7 * scale);
        Assert.Equal(expected.GetProperty("z_end").GetDouble(), found.Charge.DecimalFractions, 1e-7);
        Assert.Equal(expected.GetProperty("T_end_K").GetDouble(), found.Temperature.Kelvins, 1e-5);
        if (expected.GetProperty("V_end").ValueKind == JsonValueKind.Null)
            Assert.Null(found.Voltage);
        else
            Assert.Equal(expected.GetProperty("V_end").GetDouble(), found.Voltage!.Value.Volts, 1e-6);
        Assert.Equal(one.Network.Elements.OfType<Device>().Count(), found.Result.Devices.Count);
    }

    [Theory]
    [MemberData(nameof(Runs))]
    public void The_same_elements_drop_out_in_the_same_order_and_stop_the_same_devices(string id)
    {
        var (one, expected) = ReferenceNetworks.Runs[id];

        var found = Run(id);

        var drops = expected.GetProperty("dropOuts").EnumerateArray().ToList();
        Assert.Equal(
            drops.Select(drop => (drop.GetProperty("element").GetString(), drop.GetProperty("rightAfterChange").GetBoolean())),
            found.Result.DropOuts.Select(drop => ((string?)drop.Element, drop.RightAfterChange)));
        Each.Pair(drops, found.Result.DropOuts, (drop, own) => Near(drop.GetProperty("at_s"), own.At), atLeast: 0);
        Assert.NotEmpty(expected.GetProperty("devices").EnumerateObject());
        foreach (var device in expected.GetProperty("devices").EnumerateObject())
        {
            var (at, because) = found.Stops[device.Name];
            Assert.Equal(device.Value.GetProperty("because").GetString(), because ?? "end of the run");
            Near(device.Value.GetProperty("stop_s"), at);
            WantedStop(one, found, device.Name);
        }
    }

    /// <summary>A device's own first stop is that moment if it was wanted then, and else the next one at which it is; with the
    /// reason of that moment.</summary>
    private static void WantedStop(NetworkRunCase one, NetworkRunAnswer found, string name)
    {
        var (at, because) = found.Stops[name];
        if (because is null && found.Cause == "time limit")
        {
            Assert.Null(found.Result.Devices[name].FirstStop);
            return;
        }

        var device = (Device)one.Network.Elements.First(element => element.Name == name);
        bool Wants(PlannedStretch block) =>
            one.Blocks[int.Parse(block.Block, CultureInfo.InvariantCulture) % one.Blocks.Count].States
            .TryGetValue(name, out var state) && device.DrawIn(state) is var draw
            && ((double)draw.ConstantPower.Watts > 0 || draw.ConstantCurrent.Amperes > 0 || draw.Conductance.Siemens > 0);
        var wanting = found.Result.Stretches.FirstOrDefault(block => block.End > at && Wants(block));
        var stop = found.Result.Devices[name].FirstStop;
        Assert.Equal(wanting is null, stop is null);
        if (wanting is null)
            return;
        Assert.Equal(Math.Max(at.Seconds, wanting.Start.Seconds), stop!.At.Seconds, 1e-6);
        Assert.Equal(because is null ? found.Cause : $"drop-out of {because}", stop.Reason.ToString());
    }

    [Theory]
    [MemberData(nameof(Runs))]
    public void The_largest_currents_and_their_moments_are_those_of_the_independent_solver(string id)
    {
        var expected = ReferenceNetworks.Runs[id].Expected;

        var result = Run(id).Result;

        foreach (var element in expected.GetProperty("elements").EnumerateObject())
        {
            var found = result.Loads[element.Name];
            var sharp = element.Value.GetProperty("timeIsSharp").GetBoolean();
            Near(element.Value.GetProperty("maxCurrentA"), found.Current.Amperes, 2e-6);
            if (sharp)
                Assert.Equal(element.Value.GetProperty("at_s").GetDouble(), found.At.Seconds, 1e-3 * (1 + found.At.Seconds));
            Assert.Equal(element.Value.TryGetProperty("maxOutputCurrentA", out var output), found.OutputCurrent is not null);
            if (found.OutputCurrent is not { } amperes)
                continue;
            Near(output, amperes.Amperes, 2e-6);
            if (sharp)
                Assert.Equal(element.Value.GetProperty("outputAt_s").GetDouble(), found.OutputAt!.Value.Seconds,
                    1e-3 * (1 + found.OutputAt.Value.Seconds));
        }
    }

    private static NetworkRunAnswer Run(string id) =>
        NetworkRunAnswer.Of(ReferenceNetworks.Runs[id].Case, TestContext.Current.CancellationToken);

    private static void Near(JsonElement expected, Duration found) =>
        Assert.Equal(expected.GetDouble(), found.Seconds, 1e-7 * (1 + found.Seconds));

    private static void Near(JsonElement expected, double found, double relative) =>
        Assert.Equal(expected.GetDouble(), found, relative * Math.Max(Math.Abs(expected.GetDouble()), 1e-3));
}
