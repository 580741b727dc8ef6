using RigScenarios.Balance;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Checks.Balance;

/// <summary>
/// OpenStax, <i>University Physics</i>, vol. 1, chapters 9, 10 and 12: figures only. That book takes g = 9.8 m/s². Each test says
/// what was read in it and what was not.
/// </summary>
public class StaticsTextbookChecks
{
    private const string Book = "OpenStax, University Physics vol. 1 (2016; sources of June 2026), ";

    private const double ToTheBook = 9.8 / 9.80665;

    // 12.1, "Center of gravity of a car": wheelbase 2.5 m, 52 % on the front axle: 1.3 m ahead of the rear axle.
    [Fact]
    [Source(SourceKind.Handbook, Book + "12.1, \"Center of gravity of a car\"; read in the source")]
    public void Centre_of_gravity_of_a_car()
    {
        var axles = On(0, 2.5, (1000, 1.3));

        Assert.Equal(0.52, axles.HandLoad / (axles.HandLoad + axles.PadLoad), 1e-9);
    }

    // 12.2, "The torque balance": stick 150 g 20 cm left of the fulcrum, 50.0 g at 70 cm and 75.0 g at 40 cm left; m3 30 cm
    // right: 316.7 g, support 5.8 N.
    [Fact]
    [Source(SourceKind.Handbook, Book + "12.2, \"The torque balance\"; read in the source")]
    public void Torque_balance_with_the_stick_s_own_mass()
    {
        (double, double)[] left = [(0.150, -0.2), (0.050, -0.7), (0.075, -0.4)];
        var third = On(0, 1, left).CounterweightAt(Length.FromMeters(0.3));

        Assert.Equal(316.7, third.Mass!.Value.Grams, 0.1);
        var balanced = On(0, 1, [.. left, (third.Mass.Value.Kilograms, 0.3)]);
        Assert.Equal(0, balanced.HandLoad.Newtons, 1e-12);
        Assert.Equal(5.8, balanced.PadLoad.Newtons * ToTheBook, 0.05);
    }

    // 12.2, check your understanding: 50 kg person 1.5 m from one end of a 6.0 m scaffold of 70 kg on two ropes: 711 N and 466 N.
    [Fact]
    [Source(SourceKind.Handbook, Book + "12.2, check your understanding, scaffold on two ropes; read in the source")]
    public void Scaffold_on_two_ropes()
    {
        var ropes = On(0, 6, (70, 3), (50, 1.5));

        Assert.Equal(711, ropes.PadLoad.Newtons * ToTheBook, 0.51);
        Assert.Equal(466, ropes.HandLoad.Newtons * ToTheBook, 0.51);
    }

    // 12.2, problem: scaffold 40 kg, 6.0 m; painter 80 kg 1.0 m from the left; kit 1.5 m from the right; the left rope carries
    // twice the right: 888.5, 444.3 N, kit 16.0 kg.
    [Fact]
    [Source(SourceKind.Handbook, Book + "12.2, problem, painter on a scaffold; read in the source")]
    public void Painter_and_kit()
    {
        var ropes = On(0, 6, (40, 3), (80, 1), (16.0, 4.5));

        Assert.Equal(888.5, ropes.PadLoad.Newtons * ToTheBook, 0.05);
        Assert.Equal(444.3, ropes.HandLoad.Newtons * ToTheBook, 0.05);
    }

    // 9.6, problem: halves of iron (8 g/cm³) and aluminium (2.7 g/cm³) of a 1 m rod; the answer is not printed: 0.3762 m from the
    // iron end, computed.
    [Fact]
    [Source(SourceKind.ClosedForm, "Centre of two uniform halves, worked by hand for a problem of " + Book
        + "9.6, whose answer is not printed")]
    public void Rod_of_two_metals() =>
        Assert.Equal(0.3762, PointMasses.Kilograms((8, 0.25), (2.7, 0.75)).MassProperties.Centre.X.Meters, 5e-5);

    // 10.5, "Rod and solid sphere": rod 2.0 kg, 0.5 m, sphere 1.0 kg, radius 0.2 m: 0.673 kg·m² about the rod's far end, 0.223
    // where rod and sphere meet.
    // The sphere stands as the cube with its moment of inertia: m a²/6 = 2/5 m R².
    [Fact]
    [Source(SourceKind.Handbook, Book + "10.5, \"Rod and solid sphere\"; read in the source")]
    public void Rod_and_sphere_by_the_parallel_axis_theorem()
    {
        var cube = 0.2 * Math.Sqrt(12.0 / 5);
        var rig = Boxes((2.0, 0.25, 0.5, 0), (1.0, 0.7, cube, cube)).MassProperties;

        Assert.Equal(0.673, rig.InertiaAbout(RigPoint.Origin).YY.KilogramSquareMeters, 5e-4);
        Assert.Equal(0.223, rig.InertiaAbout(RigPoint.FromMetres(0.5, 0, 0)).YY.KilogramSquareMeters, 5e-4);
    }

    // 10.5, child of 25 kg 1.0 m from the centre of a disc of 500 kg, radius 2.0 m: 1025 kg·m². The disc stands as the square
    // with its moment: m a²/6 = 1/2 m R².
    [Fact]
    [Source(SourceKind.Handbook, Book + "10.5, child on a disc; read in the source")]
    public void Child_on_a_disc()
    {
        var square = 2.0 * Math.Sqrt(3);

        Assert.Equal(1025, Boxes((500, 0, square, square),
            (25, 1, 0, 0)).MassProperties.InertiaAbout(RigPoint.Origin).ZZ.KilogramSquareMeters, 1e-9);
    }

    // Thin rod: (1/12) m L² about the middle, (1/3) m L² about an end.
    [Theory]
    [InlineData(0.5, 1.0 / 12)]
    [InlineData(0, 1.0 / 3)]
    [Source(SourceKind.Handbook, Book + "10.5, table of moments of inertia; read in the source")]
    public void Thin_rod(double at, double expected) => AssertThinRod(at, expected);

    // A problem's answer, (7/36) m L², was read; its axis stands in a figure that was not. L/6 from an end was inferred from the
    // answer itself, 1/12 + 1/9, so that this shows the theorem and not the book's figure.
    [Fact]
    [Source(SourceKind.ClosedForm, "Parallel-axis theorem, 1/12 + 1/9 = 7/36; the answer of a problem in " + Book
        + "10.5, its axis inferred and not read")]
    public void Thin_rod_about_a_point_a_sixth_from_its_end() => AssertThinRod(1.0 / 6, 7.0 / 36);

    private static void AssertThinRod(double at, double expected) =>
        Assert.Equal(expected,
            Boxes((1, 0.5, 1, 0)).MassProperties.InertiaAbout(RigPoint.FromMetres(at, 0, 0)).ZZ.KilogramSquareMeters, 1e-12);

    private static ShoulderBalance On(double pad, double hands, params (double, double)[] points) =>
        ShoulderBalance.Of(new ShoulderSupport(Length.FromMeters(pad), Length.FromMeters(hands)),
            PointMasses.Kilograms(points).MassProperties);

    /// <summary>Boxes on the x axis: mass, middle, length, and one value for width and height; in the plane where only the width
    /// counts, a square.</summary>
    private static PlacedBuild Boxes(params (double Kilograms, double X, double Length, double Width)[] boxes) =>
        new(new OrderedMap<PlacedPart>(boxes.Select((box, i) => KeyValuePair.Create($"{i}", new PlacedPart
        {
            Mass = Mass.FromKilograms(box.Kilograms),
            Size = new BoxSize(Length.FromMeters(box.Length), Length.FromMeters(box.Width), Length.FromMeters(box.Width)),
            Placement = Placement.At(RigPoint.FromMetres(box.X, 0, 0)),
        }))));
}
