using RigScenarios.Answers;
using RigScenarios.Balance;
using RigScenarios.Cells;
using RigScenarios.Sweeps.Sampling;
using UnitsNet;

namespace RigScenarios.Sweeps.Sensitivity;

/// <summary>What scales, tape measures and the forecast of the wind leave open of the rig at rest.</summary>
internal static class UnsureRig
{
    // Of the mean wind over ten minutes; our choice.
    private const double WindDeviation = 0.2;

    /// <summary>Masses and places of what is on the rig, its head's friction, the wind.</summary>
    public static IEnumerable<UnsureFigure> Of(RigAnswer answer)
    {
        if (answer.Balance is null)
            return [];
        return Masses(answer).Concat(Places(answer)).Concat(Friction(answer)).Concat(Wind(answer))
            .Select(figure => figure with { OnlyAtRest = true });
    }

    private static IEnumerable<UnsureFigure> Masses(RigAnswer answer)
    {
        var build = answer.TheBuild;
        foreach (var name in build.Things.Except(build.OffRig))
        {
            if (answer.Scenario.PartOf(name) is not { Mass: { Grams: > 0 } mass } part)
                continue;
            var words = LimitSentences.Element(name);
            var path = $"parts.{answer.Scenario.Kit[name].Part}.mass";
            var within = part.MassWithin ?? mass * BuildInPlace.MassWithin.DecimalFractions;
            var spread = AssumedRange.Of(answer, path)
                ?? (within > Mass.Zero ? Spread.Uniform(mass - within, mass + within) : null);
            // A heavier battery takes longer to cool, so that its mass has a part in the days; it is a small one.
            if (spread is not null)
            {
                yield return new(new(path, spread), $"mass of the {words}", $"weigh the {words}",
                    "a label or a kitchen scale", Citation.CommonPractice("masses by labels (docs/balance.md)"));
            }
        }
    }

    private static IEnumerable<UnsureFigure> Places(RigAnswer answer)
    {
        foreach (var (name, place) in answer.TheBuild.Places)
        {
            if (place.Forward is not { } forward)
                continue;
            var within = place.Within ?? BuildInPlace.PlaceWithin;
            // Nothing sits beyond the end of its slide.
            var (low, high) = (Larger(forward - within, place.SlidesFrom), Smaller(forward + within, place.SlidesTo));
            if (low >= high)
                continue;
            var words = LimitSentences.Element(name);
            yield return new(new($"builds.{answer.Build}.places.{name}.forward",
                Spread.Uniform(low.ToUnit(forward.Unit), high.ToUnit(forward.Unit))), $"where the {words} sits, forward",
                $"measure where the {words} sits", "a tape measure on a rig",
                Citation.CommonPractice("places on a rig (docs/balance.md)"));
        }
    }

    private static IEnumerable<UnsureFigure> Friction(RigAnswer answer)
    {
        if (answer.Balance is not { Supports: { HeadName: { } head, Head: not null, IsFrictionKnown: false } })
            yield break;
        var path = $"parts.{answer.Scenario.Kit[head].Part}.head.friction";
        if (AssumedRange.Of(answer, path) is { } spread)
        {
            yield return new(new(path, spread), "friction of the head", "measure the friction of the head with a spring scale",
                "the head's parts file gives none", Citation.FromMemory("a middle fluid head, drag set low"));
        }
    }

    private static IEnumerable<UnsureFigure> Wind(RigAnswer answer)
    {
        if (answer.TheBuild.OnLegs?.Wind is not { MetersPerSecond: > 0 } wind)
            yield break;
        yield return new(new($"builds.{answer.Build}.on-legs.wind", Spread.Normal(wind, wind * WindDeviation)
            .Within(Speed.Zero, null)), "wind", "measure the wind where the tripod stands", "a forecast of the mean wind",
            Citation.CommonPractice("forecasts of the wind"));
    }

    private static Length Larger(Length one, Length? other) => other is { } bound && bound > one ? bound : one;

    private static Length Smaller(Length one, Length? other) => other is { } bound && bound < one ? bound : one;
}
