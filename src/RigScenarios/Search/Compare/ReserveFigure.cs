using RigScenarios.Answers;
using RigScenarios.Batteries;
using UnitsNet;

namespace RigScenarios.Search.Compare;

/// <summary>The reserve of the tightest day, min. Its error is what the answer itself says of it (the model over the time, and
/// the heat of a cold battery), and besides what it leaves out there: draws from labels, and ages.</summary>
internal sealed class ReserveFigure : ComparedFigure
{
    public override FigureKind Kind => FigureKind.Reserve;

    public override FigureGoal Goal => FigureGoal.Large;

    public override FigureAmount Amount(double number) => FigureAmount.Of(Duration.FromMinutes(number));

    public override FigureValue Of(RigAnswer answer) => answer.NothingArrives
        ? FigureValue.NotKnown("no battery gets there")
        : new(Amount(Minutes(answer)))
        {
            IsAtLeast = answer.Tightest.Reserve.IsLowerBound,
            Missing = answer.Tightest.Reserve.IsLowerBound ? "the run was given up while it still went on" : "",
        };

    public override string? Incomparable(RigAnswer one, RigAnswer other) =>
        one.Tightest.Reserve.IsLowerBound && other.Tightest.Reserve.IsLowerBound ? "both go on beyond what was run" : null;

    public override double Within(RigAnswer one, RigAnswer other)
    {
        var shared = SharedInputs.SameBatteriesAndDays(one, other);
        return Together(
        [
            .. Model(one, other, shared),
            .. shared ? [Colder(one) - Colder(other)] : new[] { Colder(one), Colder(other) },
            .. Ages(one, other, shared), .. SharedInputs.Errors(Draws(one), Draws(other)),
        ]);
    }

    private static double Minutes(RigAnswer answer) => answer.Tightest.Reserve.Time.Minutes;

    private static double Time(RigAnswer answer) => Math.Max(0, (answer.Working + answer.Tightest.Reserve.Time).Minutes);

    // One battery through the same days is predicted too long, or too short, by the same share whatever hangs on it.
    private static IEnumerable<double> Model(RigAnswer one, RigAnswer other, bool shared) => shared
        ? [Math.Max(Share(one), Share(other)) * (Time(one) - Time(other))]
        : [Share(one) * Time(one), Share(other) * Time(other)];

    private static double Share(RigAnswer answer) =>
        (answer.Simulation.ExpectedError.Share ?? ExpectedError.WhereNotMeasured).DecimalFractions;

    private static double Colder(RigAnswer answer) => Math.Max(0, -(answer.Warmth?.Cooled.Minutes ?? 0));

    private static IEnumerable<double> Ages(RigAnswer one, RigAnswer other, bool shared)
    {
        var (least, most) = Ends(one);
        var (otherLeast, otherMost) = Ends(other);
        var (middle, otherMiddle) = (Minutes(one), Minutes(other));
        // All batteries are at the same end at once.
        return shared
            ? [Math.Max(Math.Abs(least - otherLeast - (middle - otherMiddle)),
                Math.Abs(most - otherMost - (middle - otherMiddle)))]
            : [Math.Max(Math.Abs(least - middle), Math.Abs(most - middle)),
                Math.Max(Math.Abs(otherLeast - otherMiddle), Math.Abs(otherMost - otherMiddle))];
    }

    private static (double Least, double Most) Ends(RigAnswer answer) => answer.AgeSpread is { } ages
        ? (ages.LeastReserve.Time.Minutes, ages.GreatestReserve.Time.Minutes) : (Minutes(answer), Minutes(answer));

    // A time goes with one over the draw, to first order: a device whose draw is off by a share takes off that share of its part.
    private static IEnumerable<(DrawInput Input, double Error)> Draws(RigAnswer answer)
    {
        var draws = DrawFigure.Inputs(answer).ToList();
        var all = draws.Sum(draw => draw.Watts);
        return all <= 0 ? [] : draws.Select(draw => (draw.Input, StatedErrors.Share * Time(answer) * draw.Watts / all));
    }
}
