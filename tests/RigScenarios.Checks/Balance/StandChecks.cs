using RigScenarios.Balance;
using RigScenarios.Builds;
using UnitsNet;

namespace RigScenarios.Checks.Balance;

/// <summary>Tipping over and wind, each with its source.</summary>
public class StandChecks
{
    // The inradius of an equilateral triangle is half of its circumradius (geometry): the feet at 0.500 m, centre 1.600 m up,
    // 12.00 kg. Table computed from it.
    [Theory]
    [Source(SourceKind.ClosedForm,
        "Inradius of an equilateral triangle (half of its circumradius), worked by hand for one tripod")]
    [InlineData(0, 0.250, 8.881, 18.387)]
    [InlineData(0.10, 0.150, 5.356, 11.032)]
    [InlineData(0.20, 0.050, 1.790, 3.677)]
    public void Worked_tripod(double offset, double edge, double degrees, double newtons)
    {
        var stand = Stable(0.5, 1.6, 12, offset);

        Assert.Equal(edge, stand.EdgeDistance.Meters, 1e-12);
        Assert.Equal(degrees, stand.TipAngle.Degrees, 5e-4);
        Assert.Equal(newtons, stand.TippingForce(Length.FromMeters(1.6))!.Value.Newtons, 5e-4);
    }

    // "Rollover and tip angle" page of a metalworkers' forum (homemadetools.net; read): centre 1 ft up, edge 1.5 ft away: 56.3°.
    [Fact]
    [Source(SourceKind.Handbook, "Metalworkers' page \"Rollover and tip angle\" (homemadetools.net); read")]
    public void Published_tip_angle() => Assert.Equal(56.3, Stable(3 * 0.3048, 0.3048, 10, 0).TipAngle.Degrees, 0.05);

    // A round table of weight W on three legs at its rim, equally spaced: a body of weight W may be put anywhere on it, and no
    // heavier one. Put at the rim between two legs it is just held.
    [Theory]
    [InlineData(0.999, false)]
    [InlineData(1.001, true)]
    [Source(SourceKind.FromMemory,
        "S. L. Loney, The Elements of Statics and Dynamics, examples on centres of gravity; from memory")]
    public void Round_table_with_a_body_as_heavy_as_itself(double weights, bool falls)
    {
        var table = StandStability.Of(
            new Stand { FootRadius = Length.FromMeters(0.6), Mass = Mass.FromKilograms(20), CentreHeight = Length.FromMeters(0.7),
                CameraPlateHeight = Length.FromMeters(0.7) },
            PointMasses.Kilograms((20 * weights, 0.6)).MassProperties, Length.Zero);

        Assert.Equal(falls, table.TipsOnLevel);
        Assert.Equal(0, table.EdgeDistance.Meters, 3.1e-4);
    }

    // Geometry: the nearest edge from the middle of a triangle with corners on a circle, by the distance from a point to the line
    // through two corners.
    [Fact]
    [Source(SourceKind.ClosedForm, "Distance from a point to the line through two points; geometry")]
    public void Edge_distance_at_each_pan_is_that_to_the_nearest_edge_line()
    {
        var stand = Stable(0.45, 1.5, 8, 0.1);
        (double X, double Y)[] feet = [.. Enumerable.Range(0, 3)
            .Select(i => (0.45 * Math.Cos(2 * Math.PI * i / 3), 0.45 * Math.Sin(2 * Math.PI * i / 3)))];
        foreach (var pan in Enumerable.Range(0, 73).Select(i => i * Math.PI / 36))
        {
            double x = 0.1 * Math.Cos(pan), y = 0.1 * Math.Sin(pan);
            var nearest = Enumerable.Range(0, 3).Min(i =>
            {
                var (a, b) = (feet[i], feet[(i + 1) % 3]);
                return (((b.X - a.X) * (y - a.Y)) - ((b.Y - a.Y) * (x - a.X))) / Math.Sqrt(Math.Pow(b.X - a.X, 2)
                    + Math.Pow(b.Y - a.Y, 2));
            });
            Assert.Equal(nearest, stand.AtPan(Angle.FromRadians(pan)).EdgeDistance.Meters, 1e-12);
        }
    }

    // The tripod above, C_d 1.28 (flat plate: NASA Glenn, "Shape effects on drag", read), 0.06 m² at 1.6 m: factor 3.909 at 10
    // m/s, tips at 19.77 m/s. Computed.
    [Fact]
    [Source(SourceKind.ClosedForm,
        "Moments about the edge, worked by hand; C_d 1.28 of a flat plate: NASA Glenn, \"Shape effects on drag\" (read)")]
    public void Wind_that_tips_the_worked_tripod()
    {
        var stand = Stable(0.5, 1.6, 12, 0);

        Assert.Equal(4.704, Sail().ForceAt(Speed.FromMetersPerSecond(10)).Newtons, 5e-4);
        Assert.Equal(3.909, stand.TippingForce(Length.FromMeters(1.6))!.Value / Sail().ForceAt(Speed.FromMetersPerSecond(10)),
            5e-4);
        Assert.Equal(19.77, stand.TippingWind(Sail())!.Value.MetersPerSecond, 5e-3);
    }

    // OpenStax, University Physics vol. 1, 6.4 (2016; read): terminal speeds 98, 44 and 34 m/s, air 1.21 kg/m³, g = 9.8 m/s²:
    // there the drag equals the weight.
    [Theory]
    [Source(SourceKind.Handbook, "OpenStax, University Physics vol. 1 (2016), 6.4, terminal speeds; read in the source")]
    [InlineData(75, 0.70, 0.18, 98)]
    [InlineData(85, 1.0, 0.70, 44)]
    [InlineData(50, 1.0, 0.70, 34)]
    public void Drag_at_published_terminal_speeds(double kilograms, double coefficient, double area, double expected)
    {
        var wind = new Wind(Area.FromSquareMeters(area), Length.FromMeters(1), coefficient,
            Density.FromKilogramsPerCubicMeter(1.21));

        Assert.Equal(expected, Math.Sqrt(kilograms * 9.8 / wind.ForceAt(Speed.FromMetersPerSecond(1)).Newtons), 0.5);
    }

    // Beaufort table in m/s (mean wind at 10 m), delta-s.org, agrees with the Met Office's text; read.
    [Fact]
    [Source(SourceKind.Standard,
        "Beaufort scale, mean wind at 10 m in m/s (delta-s.org; agrees with the Met Office's text); read")]
    public void Beaufort_classes()
    {
        (double From, double To)[] table =
        [
            (0, 0.2), (0.3, 1.5), (1.6, 3.3), (3.4, 5.4), (5.5, 7.9), (8.0, 10.7), (10.8, 13.8), (13.9, 17.1), (17.2, 20.7),
            (20.8, 24.4), (24.5, 28.4), (28.5, 32.6), (32.7, 60),
        ];
        foreach (var (number, (from, to)) in table.Index())
        {
            Assert.Equal(number, Beaufort.Of(Speed.FromMetersPerSecond(from)));
            Assert.Equal(number, Beaufort.Of(Speed.FromMetersPerSecond(to)));
        }
    }

    // Geometry on its own: the tripod above stands on a slope, the wind blows along the level ground, moments are taken about the
    // lower edge.
    [Theory]
    [Source(SourceKind.ClosedForm, "Moments about the lower edge on a slope; geometry")]
    [InlineData(0)]
    [InlineData(3)]
    [InlineData(7)]
    public void Slope_and_wind_together_are_moments_about_the_lower_edge(double degrees)
    {
        double slope = degrees * Math.PI / 180, e = 0.25, height = 1.6, weight = 12 * 9.80665;
        // The edge is the origin, the ground falls towards it: the centre of gravity is e up the slope and 1.6 m off it.
        var (x, up) = ((e * Math.Cos(slope)) - (height * Math.Sin(slope)), (height * Math.Cos(slope)) + (e * Math.Sin(slope)));
        Assert.True(up > 0);
        // The model takes the sail's height square to the slope, so that its wind is the one along the slope.
        var force = weight * x / (height * Math.Cos(slope));
        var stand = Stable(0.5, 1.6, 12, 0);
        Assert.Equal(force, stand.TippingForce(Length.FromMeters(1.6), Angle.FromDegrees(degrees))!.Value.Newtons, 1e-9);
        Assert.Equal(Math.Sqrt(force / (0.5 * 1.225 * 1.28 * 0.06)),
            stand.TippingWind(Sail(), Angle.FromDegrees(degrees))!.Value.MetersPerSecond, 1e-9);
    }

    // B. A. Harper, J. D. Kepert, J. D. Ginger, WMO/TD-No. 1555 (2010), table 1.1, 600 s to 3 s, in-land, off-land, off-sea,
    // at-sea: the row as two independent public
    // transcriptions print it (second-hand; the report itself was not read).
    [Fact]
    [Source(SourceKind.Paper,
        "B. A. Harper, J. D. Kepert, J. D. Ginger, WMO/TD-No. 1555 (2010), table 1.1; second-hand, two transcriptions")]
    public void Gust_factors_are_the_printed_ones() =>
        Assert.Equal([1.66, 1.52, 1.38, 1.23], new[] { Surroundings.Inland, Surroundings.Coast, Surroundings.Shore,
            Surroundings.Sea }.Select(Gusts.Factor));

    // R. G. Allen et al., FAO Irrigation and Drainage Paper 56 (1998), eq. 47 (from memory): wind at 2 m over short grass from
    // that at z, u2 = u_z 4.87/ln(67.8 z - 5.42).
    // Its grass is taller (12 cm) and has a displaced zero, so that the two agree to 5 %.
    [Fact]
    [Source(SourceKind.FromMemory, "R. G. Allen et al., FAO Irrigation and Drainage Paper 56 (1998), eq. 47; from memory")]
    public void Wind_at_the_height_of_a_camera_is_near_that_of_another_formula() =>
        Assert.Equal(10 * 4.87 / Math.Log((67.8 * 10) - 5.42),
            Gusts.MeanAt(Speed.FromMetersPerSecond(10), Length.FromMeters(10), Length.FromMeters(2)).MetersPerSecond, 0.5);

    private static Wind Sail() =>
        new(Area.FromSquareMeters(0.06), Length.FromMeters(1.6), 1.28, Density.FromKilogramsPerCubicMeter(1.225));

    private static StandStability Stable(double radius, double height, double kilograms, double offset) => StandStability.Of(
        new Stand { FootRadius = Length.FromMeters(radius), Mass = Mass.Zero, CentreHeight = Length.Zero,
            CameraPlateHeight = Length.FromMeters(height) },
        PointMasses.Kilograms((kilograms, offset)).MassProperties,
        Length.Zero);
}
