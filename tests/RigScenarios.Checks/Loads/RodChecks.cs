using RigScenarios.Cells;
using RigScenarios.Loads;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Checks.Loads;

/// <summary>Rods against beam tables. A single rod with a load is a pair with twice the load.</summary>
public class RodChecks
{
    private const string BeamTable = "StrengthBook (open textbook, engineeringmechanicsoer.github.io), appendix B.2; ";

    [Theory]
    [Source(SourceKind.ClosedForm, "I = π (D⁴ - d⁴)/64, Z = 2 I/D, worked by hand")]
    [InlineData(15, 0, 176.715, 2485.05, 331.34)]
    [InlineData(15, 12, 63.617, 1467.17, 195.62)]
    [InlineData(19, 16, 82.467, 3180.13, 334.75)]
    public void Sections(double outer, double bore, double area, double second, double modulus)
    {
        var section = new RodSection(Length.FromMillimeters(outer), Length.FromMillimeters(bore));

        Assert.Equal(area, section.Area.SquareMillimeters, 5e-4);
        Assert.Equal(second, section.SecondMoment.MillimetersToTheFourth, 5e-3);
        Assert.Equal(modulus, section.Modulus.CubicMillimeters, 5e-3);
    }

    // 1.000 kg at the tip, and at 120 and 100 mm, of one rod 15 x 12 mm, 200 mm free.
    [Theory]
    [Source(SourceKind.ClosedForm, BeamTable + "worked by hand")]
    [InlineData(200, 0.2587)]
    [InlineData(120, 0.1118)]
    [InlineData(100, 0.0808)]
    public void Deflection_of_one_rod(double at, double millimetres) =>
        Assert.Equal(millimetres, Tube(RodMaterial.Aluminium6061)
            .Under(Force.FromNewtons(2 * 9.80665), Length.FromMillimeters(at)).EndDeflection.Millimeters, 5.1e-5);

    [Fact]
    [Source(SourceKind.ClosedForm, BeamTable + "worked by hand")]
    public void Slope_and_stress_of_one_rod()
    {
        var bending = Tube(RodMaterial.Aluminium6061).Under(Force.FromNewtons(2 * 9.80665), Length.FromMillimeters(200));

        Assert.Equal(0.1112, bending.Slope.Degrees, 5e-5);
        Assert.Equal(10.03, bending.Stress.Megapascals, 5e-3);
        Assert.Equal(276 - 10.03, bending.StressMargin!.Value.Megapascals, 5e-3);
    }

    // Same load; other materials.
    [Fact]
    [Source(SourceKind.ClosedForm, BeamTable + "worked by hand")]
    public void Other_materials()
    {
        double Deflection(RodMaterial material) =>
            Tube(material).Under(Force.FromNewtons(2 * 9.80665), Length.FromMillimeters(200)).EndDeflection.Millimeters;

        Assert.Equal(0.0924, Deflection(RodMaterial.Stainless304), 5e-5);
        Assert.Equal(0.2546, Deflection(RodMaterial.WovenCarbon), 5e-5);
        Assert.Null(Tube(RodMaterial.WovenCarbon).Under(Force.FromNewtons(1), Length.FromMillimeters(100)).StressMargin);
    }

    // 15 in, diameter 5 in, 20 lbf, 30e6 psi: 2.44461e-5 in, 24.446 psi.
    [Fact]
    [Source(SourceKind.Handbook, "Web calculator meracalculator.com, solid round cantilever, its example; read")]
    public void Published_cantilever()
    {
        var steel = new RodMaterial("steel", Pressure.FromPoundsForcePerSquareInch(30e6), null,
            Citation.FromMemory("steel of the example"));
        var bending = new RodPair(new RodSection(Length.FromInches(5)), steel, Length.FromInches(15))
            .Under(Force.FromPoundsForce(40), Length.FromInches(15));

        Assert.Equal(2.44461e-5, bending.EndDeflection.Inches, 1e-5 * 2.44461e-5);
        Assert.Equal(24.446, bending.Stress.PoundsForcePerSquareInch, 1e-3);
    }

    // The same as a pair of rods on a rig, 40 lbf at their front end; of stainless steel (193 GPa) it bends the more.
    [Fact]
    [Source(SourceKind.Handbook, "Web calculator meracalculator.com, solid round cantilever, its example; read")]
    public void Published_cantilever_on_a_rig()
    {
        var rods = BuildsOfBodies.Body(PartKind.Rods, Mass.Zero, Length.Zero) with
        {
            Size = new(Length.FromInches(30), Length.FromInches(5), Length.FromInches(5)),
            Rods = new(Length.FromInches(5), Length.Zero, RodMaterialKind.StainlessSteel),
        };
        var rig = BuildsOfBodies.Of(
            ("body", BuildsOfBodies.Body(PartKind.Body, Mass.FromKilograms(1), Length.Zero), null, Length.Zero),
            ("rods", rods, "body", Length.Zero),
            ("load", BuildsOfBodies.Body(PartKind.FollowFocus, Mass.FromPounds(40), Length.Zero), "rods", Length.FromInches(15)));

        var front = Assert.Single(RodFinding.All(rig, 1));

        Assert.Equal(15, front.FreeLength.Inches, 1e-9);
        Assert.Equal(24.446, front.Stress.PoundsForcePerSquareInch, 1e-3);
        var steelOfTheExample = Pressure.FromPoundsForcePerSquareInch(30e6) / front.Material.ElasticModulus;
        Assert.Equal(2.44461e-5 * steelOfTheExample, front.EndDeflection.Inches, 1e-9);
    }

    // 5 P L³/(48 E I) at the tip for a load at the middle.
    [Fact]
    [Source(SourceKind.Handbook, BeamTable + "cantilever with a load at mid-length; read in the source")]
    public void Load_at_mid_length_is_the_table_s_case()
    {
        var rods = Tube(RodMaterial.Aluminium6061);
        double expected = 5 * 10 * Math.Pow(0.2, 3) / (48 * 68.9e9 * rods.Section.SecondMoment.MetersToTheFourth);

        Assert.Equal(expected, rods.Under(Force.FromNewtons(20), Length.FromMeters(0.1)).EndDeflection.Meters, 1e-9 * expected);
    }

    private static RodPair Tube(RodMaterial material) =>
        new(new RodSection(Length.FromMillimeters(15), Length.FromMillimeters(12)), material, Length.FromMillimeters(200));
}
