using RigScenarios.Balance;
using RigScenarios.Limits;
using UnitsNet;

namespace RigScenarios.Answers;

/// <summary>Parts along their mounts, the camera plate on the head, and how the tripod stands.</summary>
internal static class PlacementChanges
{
    public static IEnumerable<RigChange> Of(RigAnswer now)
    {
        if (now.Balance is not { } balance)
            yield break;
        if (now.Of(QuestionKind.Balance) is { Verdict: Verdict.Fails or Verdict.Close })
        {
            if (balance is { AsSet: { } set, Best: { } best }
                && (set.CameraPlate.Meters != best.CameraPlate.Meters
                || set.Counterbalance.NewtonMeters != best.Counterbalance.NewtonMeters))
            {
                yield return new($"Set the camera plate to {best.CameraPlate.Millimeters:0} mm and the counterbalance to "
                    + $"{best.Counterbalance.NewtonMeters:0.0} N·m",
                    [new($"builds.{now.Build}.on-head.plate-at", PlaceText.Way(best.CameraPlate)!),
                        new($"builds.{now.Build}.on-head.counterbalance-at",
                        BatteryChanges.Text(best.Counterbalance.NewtonMeters, "N·m"))],
                    ChangeEffort.Nothing, "camera plate");
            }
            foreach (var help in BalanceHelp.Find(balance)
                .Where(help => help.Answer.Solved && Math.Abs((help.Answer.OffsetX - help.From).Millimeters) >= 1))
            {
                var to = Length.FromMillimeters(Math.Round(help.Answer.OffsetX.Millimeters));
                yield return new($"Move the {LimitSentences.Element(help.Part)} {Math.Abs((to - help.From).Millimeters):0} mm "
                    + $"{(to > help.From ? "forward" : "back")} on the "
                        + $"{LimitSentences.Element(balance.Rig.Places[help.Part].On ?? "rig")}",
                    [new($"builds.{now.Build}.places.{help.Part}.forward", PlaceText.Way(to)!)], ChangeEffort.Nothing,
                    $"place of {help.Part}");
            }
        }
        if (now.Of(QuestionKind.Stand) is { Verdict: Verdict.Fails or Verdict.Close } && balance.Supports.Stand is { } stand)
        {
            if (StandBallast.Of(balance) is { ForGust: { Need: BallastNeed.Needed } ballast } bag)
            {
                // In half kilograms, so that the bag holds what the answer says: what just holds, half as much again, and twice
                // as much.
                foreach (var factor in (double[])[1, 1.5, 2])
                {
                    var mass = (Math.Ceiling(2 * factor * ballast.Mass!.Value.Kilograms) / 2)
                        + (balance.Rig.Build.OnLegs?.Ballast?.Kilograms ?? 0);
                    yield return new(
                        $"Hang {mass:0.#} kg of ballast in the middle of the tripod, {bag.Height.Millimeters:0} mm above the "
                            + "ground",
                        [new($"builds.{now.Build}.on-legs.ballast", BatteryChanges.Text(mass, "kg"))],
                        ChangeEffort.FromKit, "ballast");
                }
            }
            foreach (var part in (double[])[0.85, 0.7])
            {
                var height = Length.FromMillimeters(Math.Round(part * stand.CameraPlateHeight.Millimeters / 10) * 10);
                yield return new($"Lower the tripod so that the head sits at {height.Meters:0.00} m",
                    [new($"builds.{now.Build}.on-legs.height", PlaceText.Way(height)!)], ChangeEffort.Nothing,
                    "height of the tripod");
            }
        }
    }
}
