namespace RigScenarios.Balance;

/// <summary>
/// The placement tree as plain numbers (m, kg, rad), carriers before what they carry. One owner at a time: variables are written
/// into it.
/// </summary>
internal sealed class PlacementKernel
{
    private readonly int[] carrier;
    private readonly double[][] fields;
    private readonly RotationMatrix[] ownTurn;
    private readonly Vector[] ownCentre;
    private readonly Vector[] point;
    private readonly RotationMatrix[] axes;
    private readonly int[] order;

    public PlacementKernel(PlacedBuild build)
    {
        var names = build.Parts.Keys.ToList();
        var parts = build.Parts.Values.ToList();
        order = CarriersFirst([.. parts.Select(part => part.Placement.Carrier is { } on ? names.IndexOf(on) : -1)]);
        var place = new int[order.Length];
        foreach (var (i, at) in order.Index())
            place[at] = i;
        Names = [.. order.Select(i => names[i])];
        carrier = [.. order.Select(i => parts[i].Placement.Carrier is { } on ? place[names.IndexOf(on)] : -1)];
        fields = [.. order.Select(i => parts[i]).Select(part => new[]
        {
            part.Placement.Offset.X.Meters, part.Placement.Offset.Y.Meters, part.Placement.Offset.Z.Meters, part.Mass.Kilograms,
            part.Placement.Orientation.Yaw.Radians, part.Placement.Orientation.Pitch.Radians,
            part.Placement.Orientation.Roll.Radians,
        })];
        ownTurn = [.. fields.Select(Turn)];
        ownCentre = [.. order.Select(i => parts[i].CentreUsed.Metres)];
        point = new Vector[order.Length];
        axes = new RotationMatrix[order.Length];
        Place();
    }

    /// <summary>Names in the kernel's order.</summary>
    public IReadOnlyList<string> Names { get; }

    /// <summary>From the kernel's order to that of the build.</summary>
    public IReadOnlyList<int> Order => order;

    public double Kilograms(int i) => fields[i][(int)PlacementField.Mass];

    /// <summary>Mounting point in the rig frame, m.</summary>
    public Vector Point(int i) => point[i];

    /// <summary>Axes of the part in the rig frame.</summary>
    public RotationMatrix Axes(int i) => axes[i];

    /// <summary>Axes of what carries the part.</summary>
    public RotationMatrix CarrierAxes(int i) => carrier[i] < 0 ? RotationMatrix.None : axes[carrier[i]];

    /// <summary>Centre of mass in the rig frame, m: P + R_carrier·R·(own centre).</summary>
    public Vector Centre(int i) => point[i] + (axes[i] * ownCentre[i]);

    /// <summary>Whether a part is another one or hangs on it.</summary>
    public bool HangsOn(int i, int other)
    {
        while (i > other)
            i = carrier[i];
        return i == other;
    }

    /// <summary>Writes a field of a part; <see cref="Place()"/> makes it count.</summary>
    public void Set(int i, PlacementField field, double value)
    {
        fields[i][(int)field] = value;
        if (field >= PlacementField.Yaw)
            ownTurn[i] = Turn(fields[i]);
    }

    /// <summary>Places every part.</summary>
    public void Place()
    {
        for (var i = 0; i < carrier.Length; i++)
            Place(i);
    }

    /// <summary>P = P_carrier + R_carrier·offset for one part; its carrier is placed already.</summary>
    public void Place(int i)
    {
        var offset = new Vector(fields[i][0], fields[i][1], fields[i][2]);
        if (carrier[i] < 0)
        {
            point[i] = offset;
            axes[i] = ownTurn[i];
        }
        else
        {
            point[i] = point[carrier[i]] + (axes[carrier[i]] * offset);
            axes[i] = axes[carrier[i]] * ownTurn[i];
        }
    }

    /// <summary>Mass, kg, and centre of mass, m.</summary>
    public PointMass Total()
    {
        double mass = 0;
        var moment = default(Vector);
        for (var i = 0; i < carrier.Length; i++)
        {
            var kilograms = Kilograms(i);
            mass += kilograms;
            moment += kilograms * Centre(i);
        }

        return new PointMass(mass, (1 / mass) * moment);
    }

    private static RotationMatrix Turn(double[] of) => RotationMatrix.From(of[4], of[5], of[6]);

    private static int[] CarriersFirst(int[] carriers)
    {
        int Depth(int i) => carriers[i] < 0 ? 0 : 1 + Depth(carriers[i]);
        return [.. Enumerable.Range(0, carriers.Length).OrderBy(Depth)];
    }
}

/// <summary>A rig as a point: mass in kg, centre in m.</summary>
internal readonly record struct PointMass(double Kilograms, Vector Centre);
