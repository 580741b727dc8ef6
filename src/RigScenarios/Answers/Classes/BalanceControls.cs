using RigScenarios.Builds;
using UnitsNet;

namespace RigScenarios.Answers.Classes;

/// <summary>What of head, tripod and places may be changed. Where the file leaves a setting of the head open, the program would
/// set it as well as can be; the control begins in the middle instead, which tells nothing.</summary>
internal static class BalanceControls
{
    private const string Places = "Head and places";

    private const string Tripod = "How the tripod stands";

    public static IEnumerable<ClassControl> Of(RigAnswer answer) => answer.Balance is not { } balance ? []
        : answer.TheBuild.Stance != Stance.Tripod ? Moved(answer, balance)
        : [.. Head(answer, balance), .. Moved(answer, balance), .. Legs(answer, balance)];

    private static IEnumerable<ClassControl> Head(RigAnswer answer, BuildBalance balance)
    {
        if (balance.Supports is not { Head: { } head, HeadName: { } name } || answer.Scenario.PartOf(name)?.Head is not { } data)
            yield break;
        var (path, set) = ($"builds.{answer.Build}.on-head", answer.TheBuild.OnHead);
        var (least, greatest) = (head.CameraPlateTravel.Least.Millimeters, head.CameraPlateTravel.Greatest.Millimeters);
        yield return ClassControls.Figure($"{path}.plate-at", Places, "camera plate on the head", "mm",
            set?.PlateAt?.Millimeters ?? Math.Round((least + greatest) / 2), Math.Round(least), Math.Round(greatest),
            set?.PlateAt is not null);
        double[] moments = [.. data.CounterbalanceSteps.Select(step => step.NewtonMeters),
            .. new[] { data.CounterbalanceFrom, data.CounterbalanceTo }.OfType<Torque>().Select(end => end.NewtonMeters)];
        if (moments.Length > 1)
            yield return ClassControls.Figure($"{path}.counterbalance-at", Places, "counterbalance", "N·m",
                set?.CounterbalanceAt?.NewtonMeters ?? Math.Round((moments.Min() + moments.Max()) / 2, 1), moments.Min(),
                moments.Max(), set?.CounterbalanceAt is not null);
    }

    private static IEnumerable<ClassControl> Moved(RigAnswer answer, BuildBalance balance) =>
        MovedPlaces.Of(balance.Rig).Select(part =>
        {
            var forward = balance.Rig.Places[part.Name].Forward ?? Length.Zero;
            double To(Length end) => Math.Round((forward + end - part.At).Millimeters, 1);
            return ClassControls.Figure($"builds.{answer.Build}.places.{part.Name}.forward", Places,
                $"{LimitSentences.Element(part.Name)}: forward on its mount", "mm", forward.Millimeters, To(part.Range.Least),
                To(part.Range.Greatest));
        });

    private static IEnumerable<ClassControl> Legs(RigAnswer answer, BuildBalance balance)
    {
        if (balance.Supports.LegsName is not { } name || answer.Scenario.PartOf(name)?.Legs is not { } legs)
            yield break;
        var (path, on) = ($"builds.{answer.Build}.on-legs", answer.TheBuild.OnLegs);
        var (height, radius) = ((on?.Height ?? legs.Height).Millimeters, (on?.FootRadius ?? legs.FootRadius).Millimeters);
        yield return ClassControls.Figure($"{path}.height", Tripod, "height of the head's seat", "mm", height,
            Math.Round(height * 0.5), Math.Round(height * 1.5), on?.Height is not null);
        yield return ClassControls.Figure($"{path}.foot-radius", Tripod, "from the middle to a foot", "mm", radius,
            Math.Round(radius * 0.5), Math.Round(Math.Max(radius, legs.FootRadius.Millimeters)), on?.FootRadius is not null);
        yield return ClassControls.Figure($"{path}.ballast", Tripod, "ballast under the middle", "kg",
            on?.Ballast?.Kilograms ?? 0, 0, 20, on?.Ballast is not null);
        if (on?.Wind is { } wind)
            yield return ClassControls.Figure($"{path}.wind", Tripod, "mean wind that is expected", "m/s",
                wind.MetersPerSecond, 0, 20);
        yield return ClassControls.Figure($"{path}.slope", Tripod, "slope of the ground", "°", on?.Slope?.Degrees ?? 0, 0, 8,
            on?.Slope is not null);
    }
}
