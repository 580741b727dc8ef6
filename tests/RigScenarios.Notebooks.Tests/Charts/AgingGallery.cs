using RigScenarios.Batteries;
using RigScenarios.Cells;
using RigScenarios.Cells.Aging;
using RigScenarios.Charts;
using RigScenarios.Charts.Aging;
using RigScenarios.Charts.Pages;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Notebooks.Tests.Charts;

/// <summary>Charts of aging: of an invented life, and of invented batteries.</summary>
internal static class AgingGallery
{
    public const int Count = 4;

    public static ChartPage Page() => new ChartPage { Title = "Charts of aging" }
        .With(OverStorage()).With(OverUse()).With(Places()).With(Batteries());

    public static LifeInWords Life => LifeInWords.Usual;

    public static Figure OverStorage() => FadeMap.OverStorage(Life, "nmc", Duration.FromDays(3 * 365.25));

    public static Figure OverUse() => FadeMap.OverUse(Life, "nmc", Duration.FromDays(3 * 365.25));

    public static Figure Places() => StoragePlaces.Of(
    [
        new("in the fridge, half full", 94.6, 81, 96.1), new("in a room, half full", 92.4, 78.2, 94.1),
        new("in a room, full: as told", 89.4, 76.1, 89.6) { IsOwn = true }, new("in a warm store, full", 81.5, 73.5, 85.6),
    ], "Where to keep it?", "After three years.");

    public static Figure Batteries() => BatteriesSideBySide.Of(
    [
        new("new", Run(1, 1)), new("after three years", Run(0.89, 1.16)), new("mine", Run(0.7, 1.9)),
    ], "How long does each last?", "42 W all the time, in air of −10 °C.");

    private static DischargeResult Run(double left, double growth) => Discharge.Run(
        PackModel.From(new Battery { Energy = Energy.FromWattHours(98), Voltage = ElectricPotential.FromVolts(14.4) }, null, null,
            new Age(Ratio.FromDecimalFractions(left), growth)).Pack,
        Temperature.FromDegreesCelsius(-10), DischargeStart.Full, Demand.OfPower(Power.FromWatts(42)),
        new DischargeOptions { SeriesPoints = 300 });
}
