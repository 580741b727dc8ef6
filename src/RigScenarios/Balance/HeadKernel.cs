namespace RigScenarios.Balance;

/// <summary>
/// The equations of a head in plain numbers: m, kg, N·m, rad. <c>M(θ) = A cos θ + (B + k) sin θ</c> with <c>A = m g (x - s)</c>;
/// the residual of a counterbalance
/// k is <c>A cos θ + B sin θ</c> with <c>B = m g h - k</c>.
/// </summary>
internal sealed class HeadKernel
{
    private readonly double[] steps;
    private readonly double least;
    private readonly double greatest;
    private readonly double up;
    private readonly double down;
    private readonly double sinUp;
    private readonly double cosUp;
    private readonly double sinDown;
    private readonly double cosDown;
    private readonly double largestSine;

    /// <param name="head">The head.</param>
    /// <param name="isCreepAllowed">Whether the tilt margin counts to where the head falls, and not to where it begins to
    /// creep.</param>
    public HeadKernel(FluidHead head, bool isCreepAllowed = false)
    {
        Rear = head.CameraPlateTravel.Least.Meters;
        Front = head.CameraPlateTravel.Greatest.Meters;
        AxisDepth = head.AxisDepth.Meters;
        Held = (isCreepAllowed ? head.CreepMoment : head.Friction).NewtonMeters;
        RatedLoad = head.RatedLoad?.Kilograms ?? double.PositiveInfinity;
        steps = [.. head.Counterbalance.Steps.Select(step => step.NewtonMeters)];
        least = head.Counterbalance.Least.NewtonMeters;
        greatest = head.Counterbalance.Greatest.NewtonMeters;
        up = head.TiltUp.Radians;
        down = head.TiltDown.Radians;
        (sinUp, cosUp) = Math.SinCos(up);
        (sinDown, cosDown) = Math.SinCos(down);
        largestSine = up <= -Math.PI / 2 || down >= Math.PI / 2 ? 1 : Math.Max(-sinUp, sinDown);
    }

    public double Rear { get; }

    public double Front { get; }

    public double AxisDepth { get; }

    /// <summary>The largest residual that the tilt margin allows, N·m.</summary>
    public double Held { get; }

    /// <summary>kg; infinite where no rating is known.</summary>
    public double RatedLoad { get; }

    /// <summary>How many settings there are to try; one where any value of a range can be had.</summary>
    public int Settings => Math.Max(1, steps.Length);

    /// <summary>s = x if it lies in the travel, else the nearer end.</summary>
    public double CameraPlate(double x) => Math.Clamp(x, Rear, Front);

    /// <summary>A, at the plate's best place.</summary>
    public double ForeAft(PointMass rig) => ForeAft(rig, CameraPlate(rig.Centre.X));

    /// <summary>A, the nose-down moment at tilt 0.</summary>
    public static double ForeAft(PointMass rig, double plate) =>
        rig.Kilograms * StandardGravity.MetresPerSecondSquared * (rig.Centre.X - plate);

    /// <summary>m g h: what an exact counterbalance would have.</summary>
    public double Upright(PointMass rig) => rig.Kilograms * StandardGravity.MetresPerSecondSquared * (rig.Centre.Z + AxisDepth);

    /// <summary>k of a setting; with a range, m g h clamped to it.</summary>
    public double Setting(int i, double upright) => steps.Length == 0 ? Math.Clamp(upright, least, greatest) : steps[i];

    /// <summary>The largest |A cos θ + B sin θ| over the tilt range.</summary>
    public double Worst(double a, double b)
    {
        // With the plate where it should be, which is the usual case, no tilt has to be searched for.
        if (a == 0)
            return Math.Abs(b) * largestSine;
        var worst = Math.Max(Math.Abs((a * cosUp) + (b * sinUp)), Math.Abs((a * cosDown) + (b * sinDown)));
        return StationaryTilt(a, b) is null ? worst : Math.Sqrt((a * a) + (b * b));
    }

    /// <summary>The tilt at which the residual is worst.</summary>
    public double WorstTilt(double a, double b) => StationaryTilt(a, b)
        ?? (Math.Abs((a * cosUp) + (b * sinUp)) > Math.Abs((a * cosDown) + (b * sinDown)) ? up : down);

    /// <summary>The setting with the least worst residual; of equals, the smaller k.</summary>
    public (int Index, double K, double Worst) Best(double a, double upright)
    {
        var best = (Index: 0, K: Setting(0, upright), Worst: double.PositiveInfinity);
        for (var i = 0; i < Settings; i++)
        {
            var k = Setting(i, upright);
            var worst = Worst(a, upright - k);
            if (worst < best.Worst || (worst == best.Worst && k < best.K))
                best = (i, k, worst);
        }

        return best;
    }

    /// <summary>The margins with plate and counterbalance chosen for the rig; m, m, N·m, kg.</summary>
    public HeadMargins Margins(PointMass rig) =>
        new(Front - rig.Centre.X, rig.Centre.X - Rear, Held - Best(ForeAft(rig), Upright(rig)).Worst, RatedLoad - rig.Kilograms);

    /// <summary>atan2(B, A) + nπ where it lies inside the tilt range; often it does not.</summary>
    private double? StationaryTilt(double a, double b)
    {
        if (a == 0 && b == 0)
            return null;
        var tilt = Math.Atan2(b, a);
        tilt += Math.PI * Math.Ceiling((up - tilt) / Math.PI);
        return tilt <= down ? tilt : null;
    }
}

/// <summary>Margins of a rig on a head: m, m, N·m, kg.</summary>
internal readonly record struct HeadMargins(double TravelFront, double TravelRear, double Tilt, double Load)
{
    /// <summary>Zero counts as inside.</summary>
    public bool Inside => TravelFront >= 0 && TravelRear >= 0 && Tilt >= 0 && Load >= 0;

    public double Of(BalanceEdge limit) => limit switch
    {
        BalanceEdge.TravelFrontEnd => TravelFront,
        BalanceEdge.TravelRearEnd => TravelRear,
        BalanceEdge.Tilt => Tilt,
        _ => Load,
    };
}
