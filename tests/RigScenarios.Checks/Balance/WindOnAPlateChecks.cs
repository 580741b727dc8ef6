using RigScenarios.Balance;
using UnitsNet;

namespace RigScenarios.Checks.Balance;

/// <summary>Force and overturning moment of the wind on a plate, and the air that makes them.</summary>
public class WindOnAPlateChecks
{
    // A round sign in a wind of 150 km/h at 10 °C and 100 kPa (1.231 kg/m³), C_d 1.1. Diameter 0.50 m, its middle 1.75 m up:
    // 231 N and 404 N·m (the problem was read, the answers are from memory). Radius 0.2 m, arm 1.5 m: 147.7 N and 221.55 N·m.
    [Theory]
    [InlineData(0.50, 1.75, 231, 404, 0.5, 0.5)]
    [InlineData(0.40, 1.5, 147.7, 221.55, 0.06, 0.1)]
    [Source(SourceKind.Handbook,
        "Y. A. Çengel, J. M. Cimbala, Fluid Mechanics, problem of a circular sign (read on tutorsglobe.com; "
        + "answers from memory); the same with another sign, worked on code.policylink.org (read)")]
    public void Round_sign_in_a_storm(double diameter, double arm, double newtons, double moment, double within,
        double momentWithin)
    {
        var storm = Speed.FromKilometersPerHour(150);
        var sign = new Wind(Area.FromSquareMeters(Math.PI * diameter * diameter / 4), Length.FromMeters(arm), 1.1,
            Density.FromKilogramsPerCubicMeter(1.231));

        Assert.Equal(newtons, sign.ForceAt(storm).Newtons, within);

        // A stand whose weight turns back with the printed moment is tipped by that wind and no other: 10 cm from its edge it
        // weighs as much as that takes.
        var stand = StandStability.Of(
            new Stand { FootRadius = Length.FromMeters(0.2), Mass = Mass.Zero, CentreHeight = Length.Zero,
                CameraPlateHeight = Length.FromMeters(1) },
            PointMasses.Kilograms((moment / 0.1 / 9.80665, 0)).MassProperties, Length.Zero);
        Assert.Equal(moment, stand.TippingForce(Length.FromMeters(arm))!.Value.Newtons * arm, 1e-9);
        Assert.Equal(150, stand.TippingWind(sign)!.Value.KilometersPerHour, 150 * momentWithin / moment / 2);
    }

    // Wind on a surface square to it, air of 1.2 kg/m³; Pa are newtons on a square metre. The example's wall has 10 m².
    [Theory]
    [InlineData(1, 1, 0.6)]
    [InlineData(5, 1, 15)]
    [InlineData(8, 1, 38)]
    [InlineData(10, 1, 60)]
    [InlineData(12, 1, 86)]
    [InlineData(17, 1, 173)]
    [InlineData(22, 1, 290)]
    [InlineData(28, 1, 470)]
    [InlineData(35, 1, 735)]
    [InlineData(50, 1, 1500)]
    [InlineData(35, 10, 7350)]
    [Source(SourceKind.Handbook, "Engineering ToolBox, \"Wind load vs. wind speed\", table and example; read")]
    public void Wind_load(double metresPerSecond, double area, double newtons) =>
        Assert.Equal(newtons, new Wind(Area.FromSquareMeters(area), Length.FromMeters(1), 1,
            Density.FromKilogramsPerCubicMeter(1.2)).ForceAt(Speed.FromMetersPerSecond(metresPerSecond)).Newtons,
            newtons < 1 ? 0.05 : 0.51);

    // The four zones: basic wind speed and the pressure that belongs to it, with that standard's air of 1.25 kg/m³.
    [Theory]
    [InlineData(22.5, 0.32)]
    [InlineData(25.0, 0.39)]
    [InlineData(27.5, 0.47)]
    [InlineData(30.0, 0.56)]
    [Source(SourceKind.Standard,
        "DIN EN 1991-1-4/NA, wind zones, as a glossary quotes them (lagertechnik-becker.de); read there")]
    public void Pressure_of_the_wind_zones(double metresPerSecond, double kilopascals) =>
        Assert.Equal(1000 * kilopascals, new Wind(Area.FromSquareMeters(1), Length.FromMeters(1), 1,
            Density.FromKilogramsPerCubicMeter(1.25)).ForceAt(Speed.FromMetersPerSecond(metresPerSecond)).Newtons, 5.0);

    // Height, temperature in kelvins and the density as a part of that at sea level, 1.2250 kg/m³.
    [Theory]
    [InlineData(0, 288.15, 1)]
    [InlineData(500, 284.9, 0.9529)]
    [InlineData(1000, 281.7, 0.9075)]
    [InlineData(1500, 278.4, 0.8638)]
    [InlineData(2000, 275.2, 0.8217)]
    [InlineData(2500, 271.9, 0.7812)]
    [InlineData(3000, 268.7, 0.7423)]
    [InlineData(4000, 262.2, 0.6689)]
    [Source(SourceKind.Standard, "International Standard Atmosphere (ISO 2533) as tabled by Engineering ToolBox; read there. Its "
        + "temperatures have one decimal and its heights are geometric, the formula's geopotential: 0.05 % at 4 km")]
    public void Air_has_the_density_of_the_standard_atmosphere(double metres, double kelvins, double share) =>
        Assert.Equal(1.2250 * share,
            AirDensity.At(Temperature.FromKelvins(kelvins), Length.FromMeters(metres)).KilogramsPerCubicMeter,
            6e-4 * 1.2250 * share);
}
