namespace RigScenarios.Balance;

/// <summary>Three plain doubles, for the kernels; SI units, said where it is used.</summary>
internal readonly record struct Vector(double X, double Y, double Z)
{
    public static Vector operator +(Vector a, Vector b) => new(a.X + b.X, a.Y + b.Y, a.Z + b.Z);

    public static Vector operator -(Vector a, Vector b) => new(a.X - b.X, a.Y - b.Y, a.Z - b.Z);

    public static Vector operator *(double factor, Vector a) => new(factor * a.X, factor * a.Y, factor * a.Z);

    public double Dot(Vector other) => (X * other.X) + (Y * other.Y) + (Z * other.Z);

    public Vector Cross(Vector other) =>
        new((Y * other.Z) - (Z * other.Y), (Z * other.X) - (X * other.Z), (X * other.Y) - (Y * other.X));

    public double Length => Math.Sqrt(Dot(this));
}
