using RigScenarios.Cells.Aging;
using RigScenarios.Costs;
using RigScenarios.Days;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Answers.Years;

/// <summary>What a battery costs over its life: the price of a new one, spread over the days and the energy until it is
/// replaced.</summary>
internal static class CostOfBattery
{
    /// <summary>The cost.</summary>
    /// <param name="battery">The battery.</param>
    /// <param name="name">Its short name.</param>
    /// <param name="life">How it is kept and used.</param>
    /// <param name="from">Today.</param>
    /// <param name="until">Time until it is replaced; null where it is not within 40 years.</param>
    /// <param name="planned">How many days are planned.</param>
    /// <param name="rows">The planned days over the years.</param>
    public static BatteryCost Of(KitBattery battery, string name, LifeInWords life, DateOnly from, Duration? until, int planned,
        IReadOnlyList<DaysOnDate> rows)
    {
        var price = battery.Part.Buy;
        if (until is not { } time)
            return new BatteryCost(price, null, null, null, null);
        var whole = life.Completed;
        var ahead = Shoots(whole, time.Days);
        var past = whole.HistoryKnown ? Shoots(whole, from.DayNumber - whole.Bought!.Value.Date.DayNumber) : 0;
        // Before today the words say what a shoot took; from today on the simulation does, averaged over the years that count.
        var left = battery.KnownAge.Age.CapacityLeft.DecimalFractions;
        var before = past * whole.Emptied!.Depth.DecimalFractions * battery.Part.Battery!.Energy.WattHours * (1 + left) / 2;
        var each = rows.Where(row => row.Years * 365.25 <= Math.Max(time.Days, 1))
            .Average(row => row.Days.Delivered.TryGetValue(name, out var energy) ? energy.WattHours : 0) / planned;
        var (shoots, delivered) = (past + ahead, before + (ahead * each));
        return new BatteryCost(price, shoots, Energy.FromWattHours(delivered), Over(price, shoots),
            Over(price, delivered / 1000));
    }

    private static double Shoots(LifeInWords life, double days) => life.ShootsPerMonth!.Value * days / LifeInWords.DaysOfMonth;

    private static Money? Over(Money? price, double by) => price is { } money && by > 0
        ? MoneyText.Rounded(money with { Amount = money.Amount / (decimal)by }) : null;
}
