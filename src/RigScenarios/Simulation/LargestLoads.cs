using RigScenarios.Batteries;
using RigScenarios.Builds;
using RigScenarios.Wiring;
using UnitsNet;
using UnitsNet.Units;

namespace RigScenarios.Simulation;

/// <summary>Keeps the largest load on each limit of a build while a day runs.</summary>
internal sealed class LargestLoads(PoweredBuild powered)
{
    private readonly Dictionary<string, double> regulatorAmperes = new(StringComparer.Ordinal);
    private double packAmperes;
    private double plateAmperes;
    private double hottestKelvins = double.NegativeInfinity;

    /// <summary>Looks at one stretch. Constant power draws its largest current at the lowest voltage, which is at one of the ends or after a step.</summary>
    public void See(WiringNetwork network, WiringDraw draw, DischargeResult run)
    {
        var volts = run.EndVoltage?.Volts ?? double.NaN;
        foreach (var point in run.Series)
        {
            packAmperes = Math.Max(packAmperes, point.Current.Amperes);
            hottestKelvins = Math.Max(hottestKelvins, point.Temperature.Kelvins);
        }
        if (run.EndCurrent is { } current)
            packAmperes = Math.Max(packAmperes, current.Amperes);
        hottestKelvins = Math.Max(hottestKelvins, run.EndTemperature.Kelvins);
        if (powered.Build.Plate is { } plate && volts > 0 && draw.At(volts) is { } figures)
            plateAmperes = Math.Max(plateAmperes, figures[network.NumberOf(plate)].Current);
        foreach (var name in powered.Regulators.Keys)
            regulatorAmperes[name] = Math.Max(regulatorAmperes.GetValueOrDefault(name), draw.OutputOf(network.NumberOf(name)));
    }

    /// <summary>The limits with what is left to each, closest first.</summary>
    public IReadOnlyList<LimitMargin> Margins(Pack pack)
    {
        var margins = new List<LimitMargin>
        {
            OfCurrent("battery current", packAmperes, pack.MaximumCurrent, powered.Battery.Battery!.MaximumCurrent is null ? "assumed: the label gives none" : "battery label"),
        };
        if (powered.Plate?.Plate?.MaximumCurrent is { } plate)
            margins.Add(OfCurrent($"current through {powered.Plate.Name}", plateAmperes, plate, "parts file"));
        foreach (var (name, regulator) in powered.Regulators)
        {
            if (regulator.Data.MaximumCurrent is { } limit)
                margins.Add(OfCurrent($"output current of {regulator.Name}", regulatorAmperes.GetValueOrDefault(name), limit, "parts file"));
        }
        // Nothing was drawn, nothing was looked at.
        if (!double.IsFinite(hottestKelvins))
            return [.. margins.OrderBy(margin => margin.Margin.DecimalFractions)];
        var hottest = Temperature.FromKelvins(hottestKelvins).DegreesCelsius;
        var allowed = pack.MaximumTemperature.DegreesCelsius;
        margins.Add(new LimitMargin("battery temperature", $"{hottest:0.0} °C", $"{allowed:0} °C", Ratio.FromDecimalFractions((allowed - hottest) / allowed).ToUnit(RatioUnit.Percent),
            powered.Battery.Battery!.MaximumTemperature is null ? "assumed: the label gives none" : "battery data sheet"));
        return [.. margins.OrderBy(margin => margin.Margin.DecimalFractions)];
    }

    private static LimitMargin OfCurrent(string what, double worst, ElectricCurrent allowed, string source) =>
        new(what, $"{worst:0.0} A", $"{allowed.Amperes:0.0} A", Ratio.FromDecimalFractions(1 - (worst / allowed.Amperes)).ToUnit(RatioUnit.Percent), source);
}
