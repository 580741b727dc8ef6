using RigScenarios.Balance;
using RigScenarios.Builds;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Answers;

/// <summary>A place that would bring the centre of gravity where it belongs, solved and not tried.</summary>
/// <param name="Part">What to move.</param>
/// <param name="From">Its distance along its mount now.</param>
/// <param name="Answer">Where to, or the nearest that its mount allows.</param>
/// <param name="Words">In one sentence.</param>
public sealed record BalanceHelp(string Part, Length From, PlaceAnswer Answer, string Words)
{
    /// <summary>
    /// Kinds that people balance with: heavy, behind the camera, on mounts made for sliding. A handle, a motor, a monitor or a
    /// lens support sits where a
    /// hand, a gear, an eye or a lens needs it.
    /// </summary>
    private static readonly PartKind[] Moved = [PartKind.Plate, PartKind.Battery, PartKind.Rods];

    /// <summary>
    /// Where battery, battery plate or rods would have to be for the centre of gravity to stand over the middle of the camera
    /// plate's travel, or over the shoulder.
    /// Empty where nothing needs to be moved. Those that get there come first, the shortest way first.
    /// </summary>
    public static IReadOnlyList<BalanceHelp> Find(BuildBalance balance)
    {
        ArgumentNullException.ThrowIfNull(balance);
        if (balance.SizesMissing.Count > 0 || Wanted(balance) is not { } wanted)
            return [];
        var found = balance.Rig.Moveable.Where(thing => Moved.Contains(balance.Rig.Things[thing.Key].Kind))
            .Select(thing => Of(balance, thing.Key, thing.Value, wanted.Centre, wanted.Words));
        return [.. found.OrderByDescending(help => help.Answer.Solved)
            .ThenBy(help => Math.Abs((help.Answer.Solved ? help.Answer.OffsetX - help.From : help.Answer.Missing).Meters))];
    }

    private static (Length Centre, string Words)? Wanted(BuildBalance balance) =>
        (balance.Rig.Build.Stance, balance.Supports) switch
    {
        (Stance.Shoulder, { Shoulder: { } shoulder })
            when Math.Abs(balance.Shoulder!.HandLoad.Newtons) >= BalanceWords.Nothing.Newtons =>
            (shoulder.Pad, "over the shoulder, so that the hands carry nothing"),
        (Stance.Tripod, { Head: { } head }) when balance.Best!.TravelMargin < balance.Mass.CentreUncertainty.X =>
            ((head.CameraPlateTravel.Least + head.CameraPlateTravel.Greatest) / 2,
            "over the middle of the camera plate's travel"),
        _ => null,
    };

    private static BalanceHelp Of(BuildBalance balance, string part, LengthRange range, Length wanted, string words)
    {
        var answer = PlaceSearch.OffsetFor(balance.Rig.Placed, part, range, wanted);
        var from = balance.Rig.Placed.Parts[part].Placement.Offset.X;
        var on = balance.Rig.Places[part].On;
        var way = Math.Abs((answer.OffsetX - from).Millimeters);
        var direction = answer.OffsetX > from ? "forward" : "back";
        var sentence = answer switch
        {
            { Solved: true } when way < 0.5 => $"{part} is where the centre of gravity stands {words}.",
            { Solved: true } => $"Move {part} {way:0} mm {direction} on {on}, to {answer.OffsetX.Millimeters:0} mm: the "
                + $"centre of gravity then stands {words}.",
            { Limit: PlaceLimit.DoesNotMoveTheCentre } => $"Moving {part} does not move the centre of gravity.",
            _ => $"{part} does not reach: at the {(answer.Limit == PlaceLimit.LowEnd ? "rear" : "front")} end of its stretch, "
                + $"{answer.OffsetX.Millimeters:0} mm, the centre of gravity is still "
                    + $"{Math.Abs(answer.Missing.Millimeters):0} mm {(answer.Missing.Meters > 0 ? "behind" : "ahead of")} "
                        + "where it is wanted.",
        };
        return new(part, from, answer, sentence);
    }
}
