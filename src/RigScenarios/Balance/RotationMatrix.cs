namespace RigScenarios.Balance;

/// <summary>A rotation, by the images of the three axes (the columns of its matrix).</summary>
internal readonly record struct RotationMatrix(Vector X, Vector Y, Vector Z)
{
    public static RotationMatrix None { get; } = new(new(1, 0, 0), new(0, 1, 0), new(0, 0, 1));

    /// <summary>Rz(yaw)·Ry(pitch)·Rx(roll), angles in rad.</summary>
    public static RotationMatrix From(double yaw, double pitch, double roll)
    {
        if (yaw == 0 && pitch == 0 && roll == 0)
            return None;
        var (sy, cy) = Math.SinCos(yaw);
        var (sp, cp) = Math.SinCos(pitch);
        var (sr, cr) = Math.SinCos(roll);
        return new(
            new(cy * cp, sy * cp, -sp),
            new((cy * sp * sr) - (sy * cr), (sy * sp * sr) + (cy * cr), cp * sr),
            new((cy * sp * cr) + (sy * sr), (sy * sp * cr) - (cy * sr), cp * cr));
    }

    public static Vector operator *(RotationMatrix r, Vector v) => new(
        (r.X.X * v.X) + (r.Y.X * v.Y) + (r.Z.X * v.Z),
        (r.X.Y * v.X) + (r.Y.Y * v.Y) + (r.Z.Y * v.Z),
        (r.X.Z * v.X) + (r.Y.Z * v.Y) + (r.Z.Z * v.Z));

    public static RotationMatrix operator *(RotationMatrix first, RotationMatrix then) =>
        new(first * then.X, first * then.Y, first * then.Z);
}
