using RigScenarios.Answers;
using UnitsNet;

namespace RigScenarios.Search.Compare;

/// <summary>Mass of the rig without head and tripod, g: a sum over its things.</summary>
internal sealed class MassFigure : ComparedFigure
{
    public override FigureKind Kind => FigureKind.Mass;

    public override FigureGoal Goal => FigureGoal.Small;

    public override FigureAmount Amount(double number) => FigureAmount.Of(Mass.FromGrams(number));

    public override FigureValue Of(RigAnswer answer)
    {
        if (answer.Balance is not { } balance)
            return FigureValue.NotKnown("nothing of it has a mass");
        var without = balance.Rig.WithoutMass;
        return new(Amount(balance.Mass.Mass.Grams))
        {
            IsAtLeast = without.Count > 0,
            Missing = without.Count == 0 ? ""
                : $"no mass is given for {string.Join(", ", without.Select(LimitSentences.Element))}",
        };
    }

    public override IReadOnlyList<KeyValuePair<string, double>>? Parts(RigAnswer answer) => answer.Balance is not { } balance
        ? null : [.. balance.Mass.Parts.Select(part => KeyValuePair.Create(part.Key, part.Value.Mass.Grams))];

    public override double Within(RigAnswer one, RigAnswer other) =>
        Together(SharedInputs.Errors(Errors(one), Errors(other)));

    // What is missing in both alike weighs the same in both.
    public override string? Incomparable(RigAnswer one, RigAnswer other) =>
        Unweighed(one).Any() && Unweighed(other).Any()
            && !Unweighed(one).SequenceEqual(Unweighed(other), StringComparer.Ordinal) ? Of(one).Missing : null;

    private static IEnumerable<string> Unweighed(RigAnswer answer) =>
        answer.Balance is not { } balance ? []
            : balance.Rig.WithoutMass.Select(name => balance.Rig.Things[name].Name).Order(StringComparer.Ordinal);

    // The same part is off by the same wherever it is used.
    private static IEnumerable<(MassInput Input, double Error)> Errors(RigAnswer answer) =>
        Inputs(answer).Select(part => (part.Input, part.Within));

    /// <summary>The masses with their errors, by their inputs.</summary>
    public static IEnumerable<(string Thing, MassInput Input, double Grams, double Within)> Inputs(RigAnswer answer)
    {
        var rig = answer.Balance!.Rig;
        return rig.Placed.Parts.Select(part => (part.Key, new MassInput(rig.Things[part.Key].Name,
            rig.Things[part.Key].Mass?.Grams),
            part.Value.Mass.Grams, part.Value.MassUncertainty.Grams));
    }
}

/// <summary>A mass that a scale or a data sheet says, the same wherever the part is used.</summary>
/// <param name="Part">The part's name.</param>
/// <param name="GramsOfOne">What one of them weighs, g; null where nobody gave it.</param>
internal readonly record struct MassInput(string Part, double? GramsOfOne);
