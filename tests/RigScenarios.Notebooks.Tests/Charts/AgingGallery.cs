using RigScenarios.Answers;
using RigScenarios.Answers.Years;
using RigScenarios.Batteries;
using RigScenarios.Cells;
using RigScenarios.Cells.Aging;
using RigScenarios.Charts;
using RigScenarios.Charts.Aging;
using RigScenarios.Charts.Pages;
using RigScenarios.Notebooks.Tests.Domain;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Notebooks.Tests.Charts;

/// <summary>Charts of aging: of an invented life, and of invented batteries.</summary>
internal static class AgingGallery
{
    public const int Count = 5;

    public static ChartPage Page() => new ChartPage { Title = "Charts of aging" }
        .With(OverStorage()).With(OverUse()).With(Ahead()).With(Places()).With(Batteries());

    public static LifeInWords Life => LifeInWords.Usual;

    public static Figure OverStorage() => FadeMap.OverStorage(Life, "nmc", Duration.FromDays(3 * 365.25));

    public static Figure OverUse() => FadeMap.OverUse(Life, "nmc", Duration.FromDays(3 * 365.25));

    public static Figure Places() => StoragePlaces.Of(Years.Value, "Where to keep it?");

    public static Figure Ahead() => YearsAheadChart.Of(Years.Value, "How long will it still do?");

    /// <summary>A battery of some years on a mild winter day, which it lasts.</summary>
    public static Lazy<YearsResult> Years { get; } = new(() =>
    {
        var build = DemoData.Harbour.Builds["tripod"];
        var old = build.Battery with
        {
            Life = LifeInWords.Usual with { Bought = new MonthOrDay(2023, 3), Until = new DateOnly(2026, 11, 30) },
            CapacityLeft = null, ResistanceGrowth = null,
        };
        var scenario = DemoData.Harbour with { Builds = DemoData.Harbour.Builds.With("tripod", build with { Battery = old }) };
        return YearsAhead.Of(RigAnswer.Of(scenario, "tripod", ["day-three"]), new YearsQuestion { Years = 5 });
    });

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
