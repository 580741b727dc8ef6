using RigScenarios.Fits;
using RigScenarios.Parts;
using RigScenarios.Wiring;
using UnitsNet;
using static RigScenarios.Tests.Fits.Noted;

namespace RigScenarios.Tests.Fits;

/// <summary>Notes of devices behind wires.</summary>
public sealed class WiredNoteTests
{
    [Fact]
    public void Wires_without_resistance_change_nothing()
    {
        var direct = Fitted(Run(30));

        Assert.Equal(direct.Seconds, Fitted(Run(30) with { Wiring = Wires(0, null) }).Seconds, 1e-6 * direct.Seconds);
    }

    [Fact]
    public void A_long_cable_takes_a_part_of_the_charge()
    {
        var (direct, wired) = (Fitted(Run(30)), Fitted(Run(30) with { Wiring = Wires(0.3, null) }));

        // 30 W at about 14.4 V are 2.1 A: 1.3 W are lost, some 4 % of the time.
        Assert.InRange(wired.Seconds / direct.Seconds, 0.93, 0.98);
    }

    [Fact]
    public void The_device_that_ended_it_ends_it_the_others_do_not()
    {
        var watched = Fitted(Run(30) with { Wiring = Wires(0.1, 14), EndedBy = "camera" });
        var unwatched = Fitted(Run(30) with { Wiring = Wires(0.1, 14) });

        Assert.True(watched.Seconds < 0.8 * unwatched.Seconds);
    }

    [Fact]
    public void A_device_that_the_wiring_has_not_is_told()
    {
        var lamp = RunStretch.ToTheEnd(new([new("lamp", Power.FromWatts(9))]));
        var run = Run(30) with { Wiring = Wires(0.1, null), Stretches = [lamp] };
        var ended = Run(30) with { EndedBy = "camera" };

        var error = Assert.Throws<ArgumentException>(() => Fit([Note("n1", run, 60), Note("n2", ended, 60)]));

        Assert.Contains("\"lamp\" is no device", error.Message, StringComparison.Ordinal);
        Assert.Contains("n2 was ended by \"camera\"", error.Message, StringComparison.Ordinal);
    }

    private static Duration Fitted(BatteryRun run) => Fit([]).Forecast(run, TestContext.Current.CancellationToken).Runtime;

    private static WiringNetwork Wires(double ohms, double? minimumVolts) => new(
    [
        new Wire("cable", null, ElectricResistance.FromOhms(ohms)),
        new Device("camera", "cable", new OrderedMap<DeviceDraw>([new("on", DeviceDraw.OfPower(Power.FromWatts(1)))]))
        {
            MinimumVoltage = minimumVolts is { } volts ? ElectricPotential.FromVolts(volts) : null,
        },
    ]);
}
