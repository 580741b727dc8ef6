using RigScenarios.Answers;
using RigScenarios.Builds;
using UnitsNet;

namespace RigScenarios.Search.Compare;

/// <summary>A draw that a label or a data sheet says, the same wherever the part is used.</summary>
/// <param name="Part">The part's name.</param>
/// <param name="WattsOfOne">What one of them draws, W.</param>
internal readonly record struct DrawInput(string Part, double WattsOfOne);

/// <summary>What all devices take at their inlets while they record, with the own draws of plate, regulators and splitters, W:
/// a sum. What
/// regulators and cables lose on top goes with it and is part of the reserve.</summary>
internal sealed class DrawFigure : ComparedFigure
{
    public override FigureKind Kind => FigureKind.Draw;

    public override FigureGoal Goal => FigureGoal.Small;

    public override FigureAmount Amount(double number) => FigureAmount.Of(Power.FromWatts(number));

    public override FigureValue Of(RigAnswer answer)
    {
        var unknown = answer.Powered.Devices.Where(device => device.Value.Draw.Record is null).Select(device =>
            device.Key).ToList();
        return unknown.Count > 0
            ? FigureValue.NotKnown($"what {string.Join(", ", unknown.Select(LimitSentences.Element))} draws is not known")
            : new(Amount(Parts(answer).Sum(part => part.Value)));
    }

    public override IReadOnlyList<KeyValuePair<string, double>> Parts(RigAnswer answer) =>
        [.. Draws(answer).Select(draw => KeyValuePair.Create(draw.Thing, draw.Count * draw.Input.WattsOfOne))];

    public override double Within(RigAnswer one, RigAnswer other) =>
        Together(SharedInputs.Errors(Errors(one), Errors(other)));

    /// <summary>The draws by their inputs; those that are not known are left out.</summary>
    public static IEnumerable<(string Thing, DrawInput Input, double Watts)> Inputs(RigAnswer answer) =>
        Draws(answer).Select(draw => (draw.Thing, draw.Input, draw.Count * draw.Input.WattsOfOne));

    private static IEnumerable<(DrawInput Input, double Error)> Errors(RigAnswer answer) =>
        Inputs(answer).Select(draw => (draw.Input, StatedErrors.Share * draw.Watts));

    private static IEnumerable<(string Thing, DrawInput Input, int Count)> Draws(RigAnswer answer)
    {
        var powered = answer.Powered;
        foreach (var (name, device) in powered.Devices.Where(device => device.Value.Draw.Record is not null))
            yield return (name, new(device.Name, (double)device.DrawIn(PowerState.Record).Watts / device.Count), device.Count);
        if (powered.Plate?.Plate?.OwnDraw is { } own && powered.Build.Plate is { } plate)
            yield return (plate, new(powered.Plate.Name, (double)own.Watts), 1);
        foreach (var (name, regulator) in powered.Regulators)
        {
            if (regulator.Data.OwnDraw is { } draw)
                yield return (name, new(regulator.Name, (double)draw.Watts), 1);
        }
        foreach (var (name, splitter) in powered.Splitters)
        {
            if (splitter.Data.OwnDraw is { } draw)
                yield return (name, new(splitter.Name, (double)draw.Watts), 1);
        }
    }
}
