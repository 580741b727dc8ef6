using RigScenarios.Builds;
using RigScenarios.Numerics;
using UnitsNet;

namespace RigScenarios.Answers.Exercises;

/// <summary>What makes a rig nod, tip or hang on too little: places, settings of the head, how the tripod stands.</summary>
internal static class BalanceCauses
{
    // Degrees, the mildest first: steps that a ruler shows.
    private static readonly int[] PlateWaysMillimetres = [12, 18, 26, 36, 48];

    private static readonly double[] SharesOfTheWay = [0.35, 0.55, 0.75, 0.95];

    private static readonly double[] HeightFactors = [1.1, 1.2, 1.3, 1.4];

    private static readonly double[] SpreadFactors = [0.9, 0.8, 0.7, 0.6];

    private const string LookAtHead = "Look at the question of balance: does the rig stay where you let go?";

    private const string LookAtLegs = "Look at the question of tripod and joints: in which gust does it tip over?";

    public static IEnumerable<CauseToTry> Of(RigAnswer sound, SeededSequence draws)
    {
        if (sound is not { TheBuild.Stance: Stance.Tripod, Balance: { } balance })
            return [];
        return [.. PlateAt(sound, balance, draws), .. Steps(sound, balance), .. Moved(sound, balance, draws),
            .. Heads(sound, balance), .. Legs(sound, balance, draws)];
    }

    private static IEnumerable<CauseToTry> PlateAt(RigAnswer sound, BuildBalance balance, SeededSequence draws)
    {
        if (balance is not { AsSet: { } set, Supports.Head: { } head })
            yield break;
        var (forward, off) = (draws.Below(2) == 0, draws.Below(5));
        var path = $"builds.{sound.Build}.on-head.plate-at";
        var was = PlaceText.Way(set.CameraPlate)!;
        yield return new("setting of the head", QuestionKind.Balance,
        [
            .. PlateWaysMillimetres
                .Select(way => set.CameraPlate + Length.FromMillimeters((forward ? 1 : -1) * (way + off)))
                .Select(at => Length.FromMillimeters(Math.Round(at.Millimeters)))
                .Where(at => at >= head.CameraPlateTravel.Least && at <= head.CameraPlateTravel.Greatest)
                .Select(at => new PlantedCause
                {
                    Slot = "setting of the head", Kind = CauseKind.CameraPlate,
                    Words = $"The camera plate is set at {at.Millimeters:0} mm on the head; {set.CameraPlate.Millimeters:0} mm "
                        + "is where the centre of gravity stands over the axis.",
                    Settings = [new(path, PlaceText.Way(at)!)],
                    Repair = new($"Set the camera plate to {set.CameraPlate.Millimeters:0} mm", [new(path, was)],
                        ChangeEffort.Nothing, "setting of the head"),
                    Hints = [LookAtHead, "Look at the head: the rig is the same as before, but it does not sit as it should.",
                        $"Compare {path} with how far forward the centre of gravity is."],
                }),
        ]);
    }

    private static IEnumerable<CauseToTry> Steps(RigAnswer sound, BuildBalance balance)
    {
        if (balance is not { AsSet: { } set, Supports.HeadName: { } name } || sound.Scenario.PartOf(name)?.Head is not { } head)
            yield break;
        var path = $"builds.{sound.Build}.on-head.counterbalance-at";
        var was = BatteryChanges.Text(set.Counterbalance.NewtonMeters, "N·m");
        yield return new("counterbalance", QuestionKind.Balance,
        [
            .. head.CounterbalanceSteps.Where(step => Math.Abs(step.NewtonMeters - set.Counterbalance.NewtonMeters) > 0.1)
                .OrderBy(step => Math.Abs(step.NewtonMeters - set.Counterbalance.NewtonMeters)).Take(2)
                .Select(step => new PlantedCause
                {
                    Slot = "counterbalance", Kind = CauseKind.Counterbalance,
                    Words = $"The counterbalance is set to {step.NewtonMeters:0.0} N·m; this rig asks for "
                        + $"{set.Counterbalance.NewtonMeters:0.0} N·m.",
                    Settings = [new(path, BatteryChanges.Text(step.NewtonMeters, "N·m"))],
                    Repair = new($"Set the counterbalance to {set.Counterbalance.NewtonMeters:0.0} N·m", [new(path, was)],
                        ChangeEffort.Nothing, "counterbalance"),
                    Hints = [LookAtHead, "Look at what the head does when the rig is tilted, not when it is level.",
                        $"Compare {path} with mass times height of the centre of gravity over the axis, times g."],
                }),
        ]);
    }

    private static IEnumerable<CauseToTry> Moved(RigAnswer sound, BuildBalance balance, SeededSequence draws)
    {
        foreach (var part in MovedPlaces.Of(balance.Rig).Where(part => !part.IsUsual))
        {
            var place = balance.Rig.Places[part.Name];
            // To the end of the stretch that is farther away: there is most to go wrong.
            var back = part.At - part.Range.Least > part.Range.Greatest - part.At;
            var all = back ? part.Range.Least - part.At : part.Range.Greatest - part.At;
            var (path, slot, off) = ($"builds.{sound.Build}.places.{part.Name}.forward", $"place of {part.Name}", draws.Below(4));
            var (thing, was) = (LimitSentences.Element(part.Name), place.Forward ?? Length.Zero);
            yield return new(slot, QuestionKind.Balance,
            [
                .. SharesOfTheWay
                    .Select(share => Length.FromMillimeters(Math.Round((all * share).Millimeters) + (back ? off : -off)))
                    .Where(way => Math.Abs(way.Millimeters) >= 10)
                    .Select(way => new PlantedCause
                    {
                        Slot = slot, Kind = CauseKind.PartOutOfPlace,
                        Words = $"The {thing} sits {Math.Abs(way.Millimeters):0} mm too far {(back ? "back" : "forward")} on its "
                            + "mount.",
                        Settings = [new(path, PlaceText.Way(was + way)!)],
                        Repair = new($"Move the {thing} {Math.Abs(way.Millimeters):0} mm {(back ? "forward" : "back")}",
                            [new(path, PlaceText.Way(was)!)], ChangeEffort.Nothing, slot),
                        Hints = [LookAtHead, "Look at what slides on the rig: one thing does not sit where it did.",
                            $"How far does the centre of gravity go when the {thing} moves by 10 mm? Mass times way over all."],
                    }),
            ]);
        }
    }

    private static IEnumerable<CauseToTry> Heads(RigAnswer sound, BuildBalance balance)
    {
        if (balance.Supports.HeadName is not { } name || !CausesToTry.MayHaveSpare(sound.Scenario, name)
            || sound.Scenario.PartOf(name) is not { RatedLoad: { } rated } part)
            yield break;
        yield return new($"part {name}", QuestionKind.Balance,
        [
            .. CausesToTry.Others(sound.Scenario, name).Where(other => other.Part.RatedLoad < rated)
                .OrderByDescending(other => other.Part.RatedLoad!.Value.Kilograms)
                .Select(other => CausesToTry.Exchanged(sound, name, ($"part {name}", CauseKind.SmallHead), other.Id,
                    $"The rig sits on a {other.Part.Name}, rated {other.Part.RatedLoad!.Value.Kilograms:0.#} kg; the "
                        + $"{part.Name} that was planned is rated {rated.Kilograms:0.#} kg.",
                    [LookAtHead, "Look at the head: is it one for a rig like this?",
                        "Compare the mass of the whole rig with what the head is rated for."])),
        ]);
    }

    private static IEnumerable<CauseToTry> Legs(RigAnswer sound, BuildBalance balance, SeededSequence draws)
    {
        if (balance.Supports.LegsName is not { } name || sound.Scenario.PartOf(name)?.Legs is not { } legs)
            yield break;
        var (path, on) = ($"builds.{sound.Build}.on-legs", sound.TheBuild.OnLegs);
        var (height, radius) = (on?.Height ?? legs.Height, on?.FootRadius ?? legs.FootRadius);
        var off = draws.Below(4);
        // One of the two: both would be the same lever twice.
        if (draws.Below(2) == 0)
        {
            var tall = HeightFactors.Select(factor => Round(height * factor, off));
            yield return Way("height of the tripod", $"{path}.height", height, tall, to =>
                $"The tripod is drawn out so that the head sits at {to.Meters:0.00} m; {height.Meters:0.00} m was planned.",
                $"Lower the tripod so that the head sits at {height.Meters:0.00} m",
                "Look at how the tripod stands: how high is it?");
        }
        else
        {
            var narrow = SpreadFactors.Select(factor => Round(radius * factor, -off));
            yield return Way("spread of the legs", $"{path}.foot-radius", radius, narrow, to =>
                $"The legs are not spread: each foot stands {to.Millimeters:0} mm from the middle; {radius.Millimeters:0} mm "
                    + "was planned.", $"Spread the legs to {radius.Millimeters:0} mm",
                "Look at how the tripod stands: how wide is it?");
        }
    }

    private static CauseToTry Way(string slot, string path, Length was, IEnumerable<Length> others, Func<Length, string> words,
        string repair, string where) => new(slot, QuestionKind.Stand, [.. others.Select(to => new PlantedCause
        {
            Slot = slot, Kind = CauseKind.TripodStance, Words = words(to), Settings = [new(path, PlaceText.Way(to)!)],
            Repair = new(repair, [new(path, PlaceText.Way(was)!)], ChangeEffort.Nothing, slot),
            Hints = [LookAtLegs, where, $"What does {path} say, and what lever does the wind have then?"],
        })]);

    private static Length Round(Length way, int off) =>
        Length.FromMillimeters((Math.Round(way.Millimeters / 10) * 10) + (5 * off));
}
