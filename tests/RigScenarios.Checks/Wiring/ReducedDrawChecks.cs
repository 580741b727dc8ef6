using RigScenarios.Wiring;
using UnitsNet;

namespace RigScenarios.Checks.Wiring;

/// <summary>The reduced demand of a wiring against the closed form of one resistance.</summary>
public sealed class ReducedDrawChecks
{
    /// <summary>A constant power P behind a resistance R at a voltage V: I·(V - R·I) = P has the smaller root
    /// I = (V - sqrt(V² - 4·R·P)) / (2·R). Below the error that the formula says of itself, at every voltage.</summary>
    [Theory]
    [Source(SourceKind.ClosedForm, "Smaller root of the quadratic I·(V - R·I) = P")]
    [InlineData(30, 0.02)]
    [InlineData(60, 0.05)]
    [InlineData(120, 0.1)]
    [InlineData(60, 0.25)]
    public void A_constant_power_behind_a_cable_draws_what_the_quadratic_says(double watts, double ohms)
    {
        var network = new WiringNetwork([new Wire("cable", null, ElectricResistance.FromOhms(ohms)),
            new Device("camera", "cable", new([new("on", DeviceDraw.OfPower(Power.FromWatts(watts)))]))]);
        var reduced = WiringReduction.Of(network, new([new("camera", "on")]), ElectricPotential.FromVolts(11.2),
            ElectricPotential.FromVolts(16.8), Temperature.FromDegreesCelsius(20))!;
        var largest = 0.0;
        for (var volts = 11.2; volts <= 16.8; volts += 0.05)
        {
            var exact = (volts - Math.Sqrt((volts * volts) - (4 * ohms * watts))) / (2 * ohms);
            largest = Math.Max(largest, Math.Abs((reduced.CurrentAt(ElectricPotential.FromVolts(volts)).Amperes / exact) - 1));
        }

        Assert.InRange(largest, 0, 1.02 * reduced.Error.DecimalFractions);
        Assert.InRange(reduced.Error.DecimalFractions, 1e-9, 0.01);
    }

    /// <summary>The camera's inlet is at its least where V = v + R·P/v.</summary>
    [Fact]
    [Source(SourceKind.ClosedForm, "Ohm's law: V = v + R·P/v")]
    public void A_camera_behind_a_cable_stops_where_its_inlet_is_at_its_least()
    {
        var network = new WiringNetwork([new Wire("cable", null, ElectricResistance.FromOhms(0.1)),
            new Device("camera", "cable", new([new("on", DeviceDraw.OfPower(Power.FromWatts(50)))]))
            {
                MinimumVoltage = ElectricPotential.FromVolts(11.5),
            }]);
        var reduced = WiringReduction.Of(network, new([new("camera", "on")]), ElectricPotential.FromVolts(10),
            ElectricPotential.FromVolts(16.8), Temperature.FromDegreesCelsius(20))!;

        Assert.Equal(11.5 + (0.1 * 50 / 11.5), reduced.StopsAt!.Value.Volts, 1e-6);
        Assert.Equal("camera", reduced.StopsFirst);
    }
}
