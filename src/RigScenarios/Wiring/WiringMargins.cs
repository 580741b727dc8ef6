using RigScenarios.Batteries;
using RigScenarios.Parts;
using UnitsNet;
using UnitsNet.Units;

namespace RigScenarios.Wiring;

/// <summary>Holds the worst loads of a run against every limit of the wiring and of the pack.</summary>
internal static class WiringMargins
{
    public static IReadOnlyList<WiringMargin> Of(WiringNetwork network, Pack pack, LoadWitness witness, OrderedMap<ElementLoad> loads)
    {
        var margins = new List<WiringMargin>();
        foreach (var element in network.Elements)
        {
            var load = loads[element.Name];
            if (element.MaximumCurrent is { } maximum)
                margins.Add(OfCurrent(element.Name, "current into it", load.Current, maximum, load.At, "move a device to another outlet, or take a part that is rated for more"));
            if (element.FuseRating is { } fuse)
                margins.Add(OfCurrent(element.Name, "rated current of its fuse, at the temperature of the rating", load.Current, fuse, load.At, "share the load over two fused outlets; never bridge a fuse or fit a larger one than the maker names"));
            if (element is Regulator { MaximumOutput: { } most })
                margins.Add(OfCurrent(element.Name, "current out of it", load.OutputCurrent!.Value, most, load.OutputAt!.Value, "feed a device from another regulator, or take one that is rated for more"));
            var (threshold, limit) = element switch
            {
                LowVoltageSwitch guard => (guard.OpensBelow, "voltage below which it switches off"),
                Regulator regulator => (regulator.InputMinimum, "lowest voltage of its input window"),
                Device device => (device.MinimumVoltage, "lowest voltage that it takes"),
                _ => (null, ""),
            };
            if (threshold is { } lowest && load.LowestInlet is { } inlet)
                margins.Add(OfVoltage(element.Name, limit, inlet, lowest, load.LowestAt!.Value));
        }

        if (witness.Points.Any())
        {
            var (_, volts, at) = witness.Points.MinBy(point => point.Volts);
            margins.Add(OfVoltage("pack", "its own cut-off", ElectricPotential.FromVolts(volts), pack.CutoffVoltage, Duration.FromSeconds(at)));
            var (amperes, when) = witness.Points.Select(point => (Current(point.Draw, point.Volts), point.Seconds)).MaxBy(point => point.Item1);
            margins.Add(OfCurrent("pack", "current out of it", ElectricCurrent.FromAmperes(amperes), pack.MaximumCurrent, Duration.FromSeconds(when), "less load at once, or a pack that is rated for more"));
        }

        return [.. margins.OrderBy(margin => margin.Margin.DecimalFractions)];

        double Current(WiringDraw draw, double volts)
        {
            var figures = draw.At(volts);
            return figures is null ? 0 : Enumerable.Range(0, network.Count).Where(i => network.ParentOf(i) < 0).Sum(i => figures[i].Current);
        }
    }

    private static WiringMargin OfCurrent(string element, string limit, ElectricCurrent worst, ElectricCurrent allowed, Duration at, string remedy) =>
        new(element, limit, $"{worst.Amperes:0.00} A", $"{allowed.Amperes:0.00} A", Share(1 - (worst.Amperes / allowed.Amperes)), at, remedy);

    private static WiringMargin OfVoltage(string element, string limit, ElectricPotential worst, ElectricPotential allowed, Duration at) =>
        new(element, limit, $"{worst.Volts:0.00} V", $"{allowed.Volts:0.00} V", Share((worst.Volts / allowed.Volts) - 1), at,
            element == "pack" ? "a larger or warmer pack, or less load at once" : "a shorter or thicker cable, fewer contacts, an outlet nearer to the battery, less load on the same cable, or a warmer pack");

    private static Ratio Share(double share) => Ratio.FromDecimalFractions(share).ToUnit(RatioUnit.Percent);
}
