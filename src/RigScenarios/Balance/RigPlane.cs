namespace RigScenarios.Balance;

/// <summary>
/// A rig over two variables, in plain numbers. The first is set for a whole line of values of the second, and on the line only
/// what hangs on
/// the second variable's part is placed anew. One owner at a time.
/// </summary>
internal abstract class RigPlane
{
    /// <summary>Sets the first variable.</summary>
    public abstract void Line(double first);

    /// <summary>The rig at a value of the second variable, on the line set.</summary>
    public abstract PointMass At(double second);
}

/// <summary>Two figures of placed parts.</summary>
internal sealed class PlacedRigPlane : RigPlane
{
    private readonly PlacementKernel kernel;
    private readonly (int Part, PlacementField Field) first;
    private readonly (int Part, PlacementField Field) second;
    private readonly int[] moved;
    private readonly int[] still;
    private double stillKilograms;
    private Vector stillMoment;

    public PlacedRigPlane(PlacedBuild build, RigVariable first, RigVariable second)
    {
        kernel = new PlacementKernel(build);
        this.first = (Index(first), first.Field);
        this.second = (Index(second), second.Field);
        var all = Enumerable.Range(0, kernel.Names.Count).ToLookup(i => kernel.HangsOn(i, this.second.Part));
        moved = [.. all[true]];
        still = [.. all[false]];
    }

    public override void Line(double first)
    {
        kernel.Set(this.first.Part, this.first.Field, first);
        kernel.Place();
        stillKilograms = 0;
        stillMoment = default;
        foreach (var i in still)
        {
            stillKilograms += kernel.Kilograms(i);
            stillMoment += kernel.Kilograms(i) * kernel.Centre(i);
        }
    }

    public override PointMass At(double second)
    {
        kernel.Set(this.second.Part, this.second.Field, second);
        var (kilograms, moment) = (stillKilograms, stillMoment);
        foreach (var i in moved)
        {
            kernel.Place(i);
            kilograms += kernel.Kilograms(i);
            moment += kernel.Kilograms(i) * kernel.Centre(i);
        }

        return new PointMass(kilograms, (1 / kilograms) * moment);
    }

    private int Index(RigVariable variable) => kernel.Names.Index().First(name => name.Item == variable.Part).Index;
}

/// <summary>The classic picture: the centre's x and the mass themselves, with the centre's height as it is.</summary>
internal sealed class CentreAndMassPlane(double height) : RigPlane
{
    private double x;

    public override void Line(double first) => x = first;

    public override PointMass At(double second) => new(second, new Vector(x, 0, height));
}
