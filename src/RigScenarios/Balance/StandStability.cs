using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Balance;

/// <summary>
/// How far a stand with its rig is from tipping over, at rest, on hard ground, legs locked and rigid. Distances to an edge are
/// signed, to the edge's line:
/// at 0 and below it tips by itself. Equations: docs/balance.md, "Stand".
/// </summary>
public sealed record StandStability
{
    private readonly double radius;
    private readonly double mass;
    private readonly double height;
    private readonly double offset;
    private readonly double bearing;

    private StandStability(double radius, double mass, double height, double offset, double bearing, Angle tilt)
    {
        (this.radius, this.mass, this.height, this.offset, this.bearing, Tilt) = (radius, mass, height, offset, bearing, tilt);
    }

    /// <summary>The tilt of the head that this holds for, nose-down positive.</summary>
    public Angle Tilt { get; }

    /// <summary>M: rig and stand.</summary>
    public Mass TotalMass => Mass.FromKilograms(mass);

    /// <summary>H: height of the common centre over the ground.</summary>
    public Length CentreHeight => Length.FromMeters(height);

    /// <summary>r: from the stand's axis to the common centre.</summary>
    public Length CentreOffset => Length.FromMeters(offset);

    /// <summary>e: to the nearest edge of the support triangle at the worst pan, <c>ρ/2 - r</c>.</summary>
    public Length EdgeDistance => Length.FromMeters(Edge);

    /// <summary>The lean at which it tips on level ground at the worst pan, <c>atan(e/H)</c>; below 0 it tips by
    /// itself.</summary>
    public Angle TipAngle => Angle.FromRadians(Math.Atan(Edge / height));

    /// <summary>Whether it tips by itself on level ground at the worst pan: e ≤ 0.</summary>
    public bool TipsOnLevel => Edge <= 0;

    private double Edge => (radius / 2) - offset;

    /// <summary>The stand with the rig level on it.</summary>
    /// <param name="stand">The stand.</param>
    /// <param name="rig">The rig.</param>
    /// <param name="plate">s: the rig's x that stands over the axis.</param>
    public static StandStability Of(Stand stand, MassProperties rig, Length plate)
    {
        ArgumentNullException.ThrowIfNull(stand);
        ArgumentNullException.ThrowIfNull(rig);
        var point = rig.Point;
        return At(stand, point.Kilograms, point.Centre.X - plate.Meters, point.Centre.Y,
            stand.CameraPlateHeight.Meters + point.Centre.Z, Angle.Zero);
    }

    /// <summary>The stand with the rig tilted about the head's axis.</summary>
    /// <param name="stand">The stand.</param>
    /// <param name="head">The rig on its head.</param>
    /// <param name="tilt">Nose-down positive.</param>
    public static StandStability Tilted(Stand stand, HeadBalance head, Angle tilt)
    {
        ArgumentNullException.ThrowIfNull(stand);
        ArgumentNullException.ThrowIfNull(head);
        var (sin, cos) = Math.SinCos(tilt.Radians);
        double ahead = head.Rig.Centre.X - head.CameraPlate.Meters, over = head.HeightOverAxis.Meters;
        return At(stand, head.Rig.Kilograms, (ahead * cos) + (over * sin), head.Rig.Centre.Y,
            stand.CameraPlateHeight.Meters - head.Head.AxisDepth.Meters + (over * cos) - (ahead * sin), tilt);
    }

    /// <summary>The tilt of the head's range at which the tip angle is least, found to 0.01°.</summary>
    /// <param name="stand">The stand.</param>
    /// <param name="head">The rig on its head.</param>
    public static StandStability WorstTilt(Stand stand, HeadBalance head)
    {
        ArgumentNullException.ThrowIfNull(head);
        double up = head.Head.TiltUp.Degrees, down = head.Head.TiltDown.Degrees;
        double At(double degrees) => Tilted(stand, head, Angle.FromDegrees(degrees)).TipAngle.Degrees;
        var coarse = Math.Max(1, (int)Math.Ceiling(down - up));
        var worst = Enumerable.Range(0, coarse + 1).Select(i => up + ((down - up) * i / coarse)).MinBy(At);
        for (var step = (down - up) / coarse / 2; step > 0.005; step /= 2)
            worst = new[] { worst, Math.Max(up, worst - step), Math.Min(down, worst + step) }.MinBy(At);
        return Tilted(stand, head, Angle.FromDegrees(worst));
    }

    /// <summary>The distance to the nearest edge, and the tip angle, at one pan.</summary>
    /// <param name="pan">0: the lens over a foot; counter-clockwise seen from above.</param>
    public PanStability AtPan(Angle pan)
    {
        var reach = double.NegativeInfinity;
        // The edges' outward normals, with feet at 0°, 120° and 240°.
        for (var normal = Math.PI / 3; normal < 6; normal += 2 * Math.PI / 3)
            reach = Math.Max(reach, offset * Math.Cos(pan.Radians + bearing - normal));
        var distance = (radius / 2) - reach;
        return new(pan, Length.FromMeters(distance), Angle.FromRadians(Math.Atan(distance / height)));
    }

    /// <summary>On a slope towards the worst side; stand and camera lean as one body, the legs are not levelled.</summary>
    /// <param name="slope">0 up to below 90°.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside of that.</exception>
    public SlopeStability OnSlope(Angle slope)
    {
        Require.Within(slope.Degrees, 0, 89.999, "°", nameof(slope));
        var (sin, cos) = Math.SinCos(slope.Radians);
        return new(slope, Length.FromMeters((Edge * cos) - (height * sin)), TipAngle - slope);
    }

    /// <summary>The horizontal force that tips it over at the worst pan: <c>M g (e cos α - H sin α)/(H_F cos α)</c>, on level
    /// ground <c>M g e/H_F</c>.</summary>
    /// <param name="at">Height of the force over the ground; above 0.</param>
    /// <param name="slope">α: slope towards the worst side, legs not re-levelled; 0 up to below 90°.</param>
    /// <returns>The force; null where it tips by itself.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The height is not above 0, or the slope outside of that.</exception>
    public Force? TippingForce(Length at, Angle slope = default)
    {
        Require.Positive(at.Meters, "m", nameof(at));
        return Restoring(slope) is { } restoring ? Force.FromNewtons(restoring / at.Meters) : null;
    }

    /// <summary>
    /// The wind that tips it over at the worst pan, blowing towards the worst side: <c>v = √(2 M g (e cos α - H sin α)/(ρ C_d A
    /// H_A cos α))</c>. It is to be
    /// held against gusts, not against the mean of a forecast.
    /// </summary>
    /// <param name="wind">What the wind meets.</param>
    /// <param name="slope">α: slope towards the same side, legs not re-levelled; 0 up to below 90°.</param>
    /// <returns>The wind speed; null where it tips by itself.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Area, height, drag coefficient or air density is not above 0, or the slope
    /// outside of that.</exception>
    public Speed? TippingWind(Wind wind, Angle slope = default)
    {
        ArgumentNullException.ThrowIfNull(wind);
        Require.Positive(wind.Height.Meters, "m", "wind.Height");
        Require.Positive(wind.PerSquare, "kg/m", "half air density x drag coefficient x area");
        return Restoring(slope) is { } restoring
            ? Speed.FromMetersPerSecond(Math.Sqrt(restoring / (wind.PerSquare * wind.Height.Meters))) : null;
    }

    /// <summary>The ballast on the axis that gives a wanted tip angle.</summary>
    /// <param name="at">h_b: height of the hook, if the bag hangs free; of the bag's centre, if it is tied to the stand.</param>
    /// <param name="wanted">The tip angle; 0 up to below 90°.</param>
    /// <exception cref="ArgumentOutOfRangeException">The angle is outside of that.</exception>
    public Ballast BallastFor(Length at, Angle wanted)
    {
        Require.Within(wanted.Degrees, 0, 89.999, "°", nameof(wanted));
        var tan = Math.Tan(wanted.Radians);
        if (height * tan <= Edge)
            return new(BallastNeed.NoneNeeded, Mass.Zero);
        var gain = (radius / 2) - (at.Meters * tan);
        return gain <= 0
            ? new(BallastNeed.Impossible, null)
            : new(BallastNeed.Needed, Mass.FromKilograms(mass * ((height * tan) - Edge) / gain));
    }

    /// <summary>
    /// The ballast on the axis with which a gust does not tip it: <c>m_b = (½ ρ v² C_d A H_A/g - M (e - H tan α))/(ρ/2 - h_b tan
    /// α)</c>, from the moments about
    /// the edge.
    /// </summary>
    /// <param name="at">h_b: height of the hook, if the bag hangs free; of the bag's centre, if it is tied to the stand.</param>
    /// <param name="wind">What the wind meets.</param>
    /// <param name="gust">v.</param>
    /// <param name="slope">α: slope towards the same side; 0 up to below 90°.</param>
    /// <exception cref="ArgumentOutOfRangeException">The slope is outside of that.</exception>
    public Ballast BallastAgainst(Length at, Wind wind, Speed gust, Angle slope = default)
    {
        ArgumentNullException.ThrowIfNull(wind);
        Require.Within(slope.Degrees, 0, 89.999, "°", nameof(slope));
        var tan = Math.Tan(slope.Radians);
        var missing =
            (wind.ForceAt(
            gust).Newtons * wind.Height.Meters / StandardGravity.MetresPerSecondSquared) - (mass * (Edge - (height * tan)));
        if (missing <= 0)
            return new(BallastNeed.NoneNeeded, Mass.Zero);
        var gain = (radius / 2) - (at.Meters * tan);
        return gain <= 0 ? new(BallastNeed.Impossible, null) : new(BallastNeed.Needed, Mass.FromKilograms(missing / gain));
    }

    /// <summary>M g (e cos α - H sin α)/cos α, N·m; null where it tips by itself.</summary>
    private double? Restoring(Angle slope)
    {
        var (tips, edge) = slope.Degrees == 0 ? (TipsOnLevel, Edge)
            : (OnSlope(slope).Tips, Edge - (height * Math.Tan(slope.Radians)));
        return tips ? null : mass * StandardGravity.MetresPerSecondSquared * edge;
    }

    private static StandStability At(Stand stand, double rig, double x, double y, double z, Angle tilt)
    {
        var total = rig + stand.Mass.Kilograms;
        return new(
            stand.FootRadius.Meters,
            total,
            ((rig * z) + (stand.Mass.Kilograms * stand.CentreHeight.Meters)) / total,
            rig * Math.Sqrt((x * x) + (y * y)) / total,
            Math.Atan2(y, x),
            tilt);
    }
}

/// <summary>How far from tipping at one pan.</summary>
/// <param name="Pan">0: the lens over a foot; counter-clockwise seen from above.</param>
/// <param name="EdgeDistance">To the nearest edge of the support triangle.</param>
/// <param name="TipAngle">The lean at which it tips.</param>
public sealed record PanStability(Angle Pan, Length EdgeDistance, Angle TipAngle);

/// <summary>How far from tipping on a slope.</summary>
/// <param name="Slope">The slope.</param>
/// <param name="EdgeDistance">e_α = e cos α - H sin α.</param>
/// <param name="TipAngleLeft">What is left of the tip angle, atan(e/H) - α.</param>
public sealed record SlopeStability(Angle Slope, Length EdgeDistance, Angle TipAngleLeft)
{
    /// <summary>Whether it tips by itself on that slope.</summary>
    public bool Tips => EdgeDistance.Meters <= 0;
}

/// <summary>Whether ballast gives the wanted tip angle.</summary>
public enum BallastNeed
{
    /// <summary>It is reached without any.</summary>
    NoneNeeded,

    /// <summary>The mass given reaches it.</summary>
    Needed,

    /// <summary>No mass at that height reaches it: lower the hook or spread the feet.</summary>
    Impossible,
}

/// <summary>Ballast for a wanted tip angle.</summary>
/// <param name="Need">Whether it helps.</param>
/// <param name="Mass">The mass; null where none reaches the angle.</param>
public sealed record Ballast(BallastNeed Need, Mass? Mass)
{
    /// <summary>"none needed", "needed", "impossible".</summary>
    public string InWords => Need switch
    {
        BallastNeed.NoneNeeded => "none needed",
        BallastNeed.Needed => "needed",
        _ => "impossible",
    };
}
