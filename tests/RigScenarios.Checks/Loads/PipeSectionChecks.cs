using RigScenarios.Loads;
using UnitsNet;

namespace RigScenarios.Checks.Loads;

/// <summary>Sections of tubes against a table of pipes.</summary>
public class PipeSectionChecks
{
    // Outside and inside diameter, in; area, in²; second moment, in⁴; section modulus, in³.
    [Theory]
    [InlineData(0.405, 0.269, 0.072, 0.00106, 0.00525)]
    [InlineData(0.540, 0.364, 0.125, 0.00331, 0.01227)]
    [InlineData(0.675, 0.493, 0.167, 0.00729, 0.02160)]
    [InlineData(0.840, 0.622, 0.250, 0.01709, 0.04070)]
    [InlineData(1.050, 0.824, 0.333, 0.03704, 0.07055)]
    [InlineData(1.315, 1.049, 0.494, 0.08734, 0.1328)]
    [InlineData(1.660, 1.380, 0.669, 0.1947, 0.2346)]
    [InlineData(1.900, 1.610, 0.799, 0.3099, 0.3262)]
    [InlineData(2.375, 2.067, 1.075, 0.6658, 0.5607)]
    [Source(SourceKind.Handbook,
        "R. L. Mott, Machine Elements in Mechanical Design, 4th ed., table A16-6, schedule 40 pipe; read")]
    public void Sections_of_pipes(double outer, double bore, double area, double second, double modulus)
    {
        var section = new RodSection(Length.FromInches(outer), Length.FromInches(bore));
        var inch = Length.FromInches(1).Meters;

        Assert.Equal(area, section.Area.SquareInches, 0.00051);
        Assert.Equal(second, section.SecondMoment.InchesToTheFourth, Math.Max(0.0000051, 0.0005 * second));
        Assert.Equal(modulus, section.Modulus.CubicMeters / Math.Pow(inch, 3), Math.Max(0.0000051, 0.0005 * modulus));
    }
}
