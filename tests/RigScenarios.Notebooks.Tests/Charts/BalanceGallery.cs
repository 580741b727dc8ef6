using RigScenarios.Balance;
using RigScenarios.Charts.Balance;
using RigScenarios.Charts.Pages;
using RigScenarios.Parts;
using UnitsNet;
using Figure = RigScenarios.Charts.Figure;

namespace RigScenarios.Notebooks.Tests.Charts;

/// <summary>An invented rig with a long lens and many small parts, on a head and on the shoulder, and all its pictures.</summary>
internal static class BalanceGallery
{
    public static OrderedMap<string> Names { get; } = new(new Dictionary<string, string>
    {
        ["camera"] = "Compact body B", ["cage"] = "Cage, full, with baseplate", ["rods"] = "Steel rods 400 mm",
        ["lens"] = "Stills long zoom", ["support"] = "Lens support, long",
        ["handle"] = "Top handle", ["arm"] = "Arm, short", ["monitor"] = "Monitor-recorder 5-inch",
        ["plate"] = "Plate with guard", ["battery"] = "Brick 190 Wh",
        ["regulator"] = "Dummy battery 7.6 V", ["transmitter"] = "Transmitter, short range", ["motor"] = "Lens motor, light",
        ["control"] = "Motor controller, one motor",
    });

    public static PlacedBuild Build { get; } = new(new OrderedMap<PlacedPart>(new Dictionary<string, PlacedPart>
    {
        ["camera"] = Part(820, 84, 134, 101, Placement.At(RigPoint.FromMillimetres(0, 0, 0)), centreZ: 50),
        ["cage"] = Part(540, 96, 156, 140, Placement.At(RigPoint.FromMillimetres(0, 0, -16))),
        ["rods"] = Part(610, 400, 75, 15, Placement.At(RigPoint.FromMillimetres(30, 0, -48))),
        ["lens"] = Part(1465, 212, 92, 92, Placement.On("camera", RigPoint.FromMillimetres(148, 0, 8))),
        ["support"] = Part(180, 24, 90, 50, Placement.OnRods("rods", Length.FromMillimeters(150), Millimetres(60, 190),
            Length.FromMillimeters(6))),
        ["handle"] = Part(210, 180, 30, 48, Placement.On("cage", RigPoint.FromMillimetres(10, 0, 140))),
        ["arm"] = Part(190, 120, 24, 24,
            Placement.On("cage", RigPoint.FromMillimetres(40, 60, 128)) with { Orientation = Turned(yaw: 60,
            pitch: -25) }) with { BoxMiddle = RigPoint.FromMillimetres(60, 0, 0) },
        ["monitor"] = Part(390, 33, 146, 92, Placement.AtEndOf("arm", Length.FromMillimeters(120), Turned(yaw: -60, pitch: 10))),
        ["plate"] = Part(230, 24, 92, 130, Placement.OnRods("rods", Length.FromMillimeters(-160), Millimetres(-190, -110),
            Length.FromMillimeters(12))),
        ["battery"] = Part(1110, 72, 86, 122, Placement.On("plate", RigPoint.FromMillimetres(-49, 0, 4))),
        ["regulator"] = Part(95, 60, 40, 24, Placement.On("cage", RigPoint.FromMillimetres(-20, -98, 20))),
        ["transmitter"] = Part(240, 50, 80, 24, Placement.On("cage", RigPoint.FromMillimetres(-66, 0, 120))),
        ["motor"] = Part(130, 40, 34, 74, Placement.OnRods("rods", Length.FromMillimeters(95), null,
            Length.FromMillimeters(30)) with { Offset = RigPoint.FromMillimetres(95, -62, 30) }),
        ["control"] = Part(70, 60, 50, 18, Placement.On("cage", RigPoint.FromMillimetres(-10, 92, 60))),
    }));

    public static FluidHead Head { get; } = new()
    {
        CameraPlateTravel = Millimetres(-40, 70), AxisDepth = Length.FromMillimeters(110),
        Counterbalance = Counterbalance.OfSteps(new[] { 0.0, 3, 5, 8, 11 }.Select(step => Torque.FromNewtonMeters(step))),
        Friction = Torque.FromNewtonMeters(1.6), Drag = Torque.FromNewtonMeters(0.6), TiltLock = Torque.FromNewtonMeters(12),
        TiltUp = Angle.FromDegrees(-60), TiltDown = Angle.FromDegrees(75), RatedLoad = Mass.FromKilograms(8),
    };

    public static Stand Stand { get; } = new()
    {
        FootRadius = Length.FromMillimeters(620), Mass = Mass.FromKilograms(6.2), CentreHeight = Length.FromMillimeters(800),
        CameraPlateHeight = Length.FromMillimeters(1500),
    };

    public static HeadBalance OnHead { get; } = HeadBalance.Of(Head, Build.MassProperties);

    public static RigDrawingOptions Options { get; } = new()
    {
        Names = Names, Head = OnHead,
        Moveable = new(new Dictionary<string, LengthRange> { ["plate"] = Millimetres(-190, -110),
            ["support"] = Millimetres(60, 190), ["monitor"] = Millimetres(80, 140) }),
    };

    public static LengthRange Millimetres(double least, double greatest) =>
        new(Length.FromMillimeters(least), Length.FromMillimeters(greatest));

    public static int Charts => Figures().Count();

    public static ChartPage Page() => Figures().Aggregate(Drawings(), (page, figure) => page.With(figure))
        .With(StanceTable.Of(StanceChange.Between(Build, Shoulder),
            new(Duration.FromSeconds(20), Duration.FromSeconds(30), Duration.FromSeconds(15)), Head, Names));

    public static ChartPage Drawings() => new ChartPage { Title = "An invented rig and its balance" }
        .With(RigDrawing.Of(Build, Options))
        .With(RigDrawing.Of(Build, new() { Slug = "rig-on-shoulder", Title = "On the shoulder", Names = Names,
            Shoulder = ShoulderBalance.Of(new(Length.FromMillimeters(-60), Length.FromMillimeters(190)),
            Build.MassProperties) }));

    public static BalanceEnvelope PlateAndLens { get; } = BalanceEnvelope.Of(Build, Head,
        RigVariable.Offset("plate", PlacementField.OffsetX, Millimetres(-260, 60)),
        RigVariable.OfMass("lens", Mass.FromGrams(200), Mass.FromGrams(3600)));

    /// <summary>Without the long lens and its support; the battery further forward.</summary>
    public static PlacedBuild Shoulder { get; } = Build.Without("support")
        .With("plate",
        Build.Parts["plate"] with { Placement = Build.Parts["plate"].Placement with { Offset = RigPoint.FromMillimetres(-110, 0,
        12) } })
        .With("pad",
            Part(320, 160, 90, 40, Placement.OnRods("rods", Length.FromMillimeters(-120), null, Length.FromMillimeters(-60))));

    private static IEnumerable<Figure> Figures()
    {
        yield return EnvelopeChart.Of(PlateAndLens, new()
        {
            Names = Names, Present = (Length.FromMillimeters(-160), Mass.FromGrams(1465)),
            Alternatives = [new("long lens, 3.3 kg", Length.FromMillimeters(-160), Mass.FromGrams(3300)),
                new("battery at the rear end", Length.FromMillimeters(-190), Mass.FromGrams(1465))],
        });
        yield return EnvelopeChart.Of(
            BalanceEnvelope.OfCentreAndMass(Head, Build.MassProperties.Centre.Z, Millimetres(-80, 110), Mass.FromKilograms(2),
                Mass.FromKilograms(9)),
            new() { Slug = "centre-over-mass", Title = "Centre and mass that the head can balance",
                Present = (Build.MassProperties.Centre.X, Build.MassProperties.Mass) });
        yield return TiltResidualChart.Of(OnHead, new(new Dictionary<string, HeadBalance>
        {
            ["battery off"] = PartOff.Of(Build, OnHead, "battery").AsItWas,
            ["lens off"] = PartOff.Of(Build, OnHead, "lens").AsItWas,
        }));
        yield return TipOverChart.Of(StandStability.WorstTilt(Stand, OnHead));
        yield return MomentShareChart.Of(Build.MassProperties, OnHead.CameraPlate, Names);
    }

    private static PlacedPart Part(double grams, double length, double width, double height, Placement placement,
        double? centreZ = null) => new()
    {
        Mass = Mass.FromGrams(grams), Size = new(Length.FromMillimeters(length), Length.FromMillimeters(width),
            Length.FromMillimeters(height)), BoxMiddle = RigPoint.FromMillimetres(0, 0, height / 2),
        MassCentre = centreZ is { } z ? RigPoint.FromMillimetres(0, 0, z) : null, Placement = placement,
    };

    private static Orientation Turned(double yaw = 0, double pitch = 0) =>
        new(Angle.FromDegrees(yaw), Angle.FromDegrees(pitch), Angle.Zero);
}
