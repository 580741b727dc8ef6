using RigScenarios.Answers;
using RigScenarios.Balance;
using UnitsNet;

namespace RigScenarios.Search.Compare;

/// <summary>What the figures of the centre of gravity have in common: they need every size that reaches far, and rest on masses
/// and places.</summary>
internal static class CentreInputs
{
    /// <summary>Why the centre is not known; null where it is.</summary>
    public static string? Missing(RigAnswer answer) => answer.Balance is not { } balance ? "nothing of it has a mass"
        : balance.SizesMissing.Count > 0 ? "a size is missing"
        : balance.Rig.WithoutMass.Count > 0
            ? $"no mass is given for {string.Join(", ", balance.Rig.WithoutMass.Select(LimitSentences.Element))}" : null;

    /// <summary>The error of a difference, by the sensitivities of both figures to masses and places. A place is the same input
    /// where the same part sits at the same point.</summary>
    /// <param name="one">One side.</param>
    /// <param name="other">The other side.</param>
    /// <param name="along">The coordinate, m.</param>
    /// <param name="toMass">What a figure gains with each kilogram at a coordinate, of a rig.</param>
    /// <param name="toPlace">What it gains with each metre that a mass moves, of a rig.</param>
    public static IEnumerable<double> Errors(RigAnswer one, RigAnswer other, Func<RigPoint, double> along,
        Func<MassProperties, double, double> toMass, Func<MassProperties, double, double> toPlace)
    {
        IEnumerable<((MassInput, double?), double)> Of(RigAnswer answer)
        {
            var mass = answer.Balance!.Mass;
            foreach (var (thing, input, grams, within) in MassFigure.Inputs(answer))
            {
                var at = along(mass.Parts[thing].Centre);
                yield return ((input, null), toMass(mass, at) * within / 1000);
                var loose = along(answer.Balance.Rig.Placed.Parts[thing].CentreUncertainty);
                // To a micrometre: what was computed on two ways may differ in its last digits.
                yield return ((input, Math.Round(at, 6)), toPlace(mass, grams / 1000) * loose);
            }
        }
        return SharedInputs.Errors(Of(one), Of(other));
    }
}

/// <summary>The centre of gravity along one axis of the rig's frame, mm.</summary>
/// <param name="kind">Which axis: <see cref="FigureKind.CentreForward"/> or <see cref="FigureKind.CentreUp"/>.</param>
internal sealed class CentreFigure(FigureKind kind) : ComparedFigure
{
    public override FigureKind Kind => kind;

    public override FigureGoal Goal => FigureGoal.Neither;

    public override FigureAmount Amount(double number) => FigureAmount.Of(Length.FromMillimeters(number));

    public override FigureValue Of(RigAnswer answer) => CentreInputs.Missing(answer) is { } why
        ? FigureValue.NotKnown(why) : new(Amount(1000 * Along(answer.Balance!.Mass.Centre)));

    // As MassProperties adds them up: the distance from the centre over the whole mass, and the part of the mass.
    public override double Within(RigAnswer one, RigAnswer other) => 1000 * Together(CentreInputs.Errors(one, other, Along,
        (mass, at) => (at - Along(mass.Centre)) / mass.Mass.Kilograms, (mass, kilograms) => kilograms / mass.Mass.Kilograms));

    private double Along(RigPoint point) => kind == FigureKind.CentreForward ? point.X.Meters : point.Z.Meters;
}

/// <summary>The moment of the rig's mass about the zero point of its frame, nose down positive, N·m: a sum over its
/// things.</summary>
internal sealed class MomentFigure : ComparedFigure
{
    public override FigureKind Kind => FigureKind.Moment;

    public override FigureGoal Goal => FigureGoal.Neither;

    public override FigureAmount Amount(double number) => FigureAmount.Of(Torque.FromNewtonMeters(number));

    public override FigureValue Of(RigAnswer answer) => CentreInputs.Missing(answer) is { } why
        ? FigureValue.NotKnown(why) : new(Amount(Parts(answer)!.Sum(part => part.Value)));

    public override IReadOnlyList<KeyValuePair<string, double>>? Parts(RigAnswer answer) => answer.Balance is not { } balance
        ? null : [.. balance.Mass.Parts.Keys.Select(name => KeyValuePair.Create(name,
            balance.Mass.ForeAftShare(name, Length.Zero).NewtonMeters))];

    public override double Within(RigAnswer one, RigAnswer other) => Together(CentreInputs.Errors(one, other,
        point => point.X.Meters, (_, at) => at * StandardGravity.MetresPerSecondSquared,
        (_, kilograms) => kilograms * StandardGravity.MetresPerSecondSquared));
}
