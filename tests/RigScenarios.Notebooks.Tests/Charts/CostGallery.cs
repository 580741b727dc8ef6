using RigScenarios.Charts;
using RigScenarios.Charts.Costs;
using RigScenarios.Charts.Pages;
using RigScenarios.Charts.Search;
using RigScenarios.Costs;

namespace RigScenarios.Notebooks.Tests.Charts;

/// <summary>Charts of money, of invented prices.</summary>
internal static class CostGallery
{
    public const int Count = 4;

    public static ChartPage Page() => new ChartPage { Title = "Charts of money" }
        .With(Pays()).With(InPlaces()).With(Front()).With(Undecided());

    public static OwningTerms Terms => new() { Years = 3 };

    public static BuyOrRent Kit(OwningTerms terms, params IReadOnlyList<OwnedThing> things) => new()
    {
        Terms = terms, Together = BreakEven.Of(things, terms), Each = [], LeftOut = [],
    };

    public static Figure Pays() => CostOverDays.Of(Kit(Terms, new OwnedThing("body", 3200) { Rent = new RentPrice(90) },
        new OwnedThing("head", 1150) { Rent = new RentPrice(35) }), "EUR", 40);

    // 2 to 6 days and from 8 on: BreakEvenTests has the arithmetic.
    public static Figure InPlaces() => CostOverDays.Of(Kit(new OwningTerms { Years = 1, ConsumablesPerDay = 30 },
        new OwnedThing("light", 100) { Resale = 0, Rent = new RentPrice(100) }), "EUR");

    public static IReadOnlyList<ChartAxis> Axes => [new("cost", "EUR"), new("mass", "kg"), new("left after wrap", "h")];

    public static Figure Front() => FrontChart.Of("front", "What does more money buy?", Axes,
    [
        new("rig 1: 735 EUR, 4.05 kg", [735, 4.05, 0.4]) { IsPick = true }, new("rig 2", [810, 3.6, 0.2]),
        new("rig 3: 935 EUR, 3.2 kg", [935, 3.2, 1.1]) { IsPick = true }, new("rig 4", [1010, 4.4, 2.6]),
        new("rig 5: 1,480 EUR, 4.9 kg", [1480, 4.9, 4.2]) { IsPick = true }, new("rig 6", [1390, 3.1, double.NaN]),
    ]);

    public static Figure Undecided() => FrontChart.Of("front-so-far", "What was found so far?", [.. Axes.Take(2)],
        [new("rig 1", [735, 4.05])], isComplete: false);
}
