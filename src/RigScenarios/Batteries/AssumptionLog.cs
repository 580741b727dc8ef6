using System.Globalization;
using RigScenarios.Cells;
using UnitsNet;

namespace RigScenarios.Batteries;

/// <summary>Collects the defaults that are used while a pack is made.</summary>
internal sealed class AssumptionLog
{
    private readonly List<AssumedValue> values = [];

    /// <summary>What was assumed so far.</summary>
    public IReadOnlyList<AssumedValue> Values => values;

    /// <summary>Notes a default and gives it back.</summary>
    public T Add<T>(string field, string name, T value, Func<T, string> inWords, string why, Citation source)
    {
        values.Add(new AssumedValue(field, name, inWords(value), why, source));
        return value;
    }

    /// <summary>Notes a chemistry's value and gives it back.</summary>
    public T Add<T>(string field, string name, Sourced<T> value, Func<T, string> inWords) =>
        Add(field, name, value.Value, inWords, value.Why, value.Source);

    /// <summary>Notes a chemistry's value with the ends of what is usual, and gives it back.</summary>
    public T Add<T>(string field, string name, Sourced<T> value, Func<T, string> inWords, UsualRange? usual)
    {
        values.Add(new AssumedValue(field, name, inWords(value.Value), value.Why, value.Source) { Usual = usual });
        return value.Value;
    }

    /// <summary>The named chemistry; NMC if none is named.</summary>
    public CellChemistry Chemistry(string? name) => name is not null
        ? CellChemistries.Find(name)
        : Add("chemistry", "cell chemistry", CellChemistries.Nmc, one => one.Name, "what most camera packs hold",
            Citation.CommonPractice("NMC cells in camera packs"));

    /// <summary>The age of a battery: what of it is not given is assumed.</summary>
    /// <param name="known">What is known of it.</param>
    /// <param name="chemistry">What it is made of.</param>
    public Age Age(KnownAge known, CellChemistry chemistry)
    {
        if (known.CapacityLeft is null && known.ResistanceFactor is null)
            return AsNew();
        if (known.CapacityLeft is not { } left)
        {
            return new Age(Add("capacity-left", "capacity left", Ratio.FromPercent(100), one => $"{one.Percent:G4} %",
                "not given beside the growth of the resistance: taken as new. Measure it once if it matters",
                Citation.CommonPractice("a capacity that nobody measured taken as new")), known.ResistanceFactor!.Value);
        }
        if (known.History is not null)
            FromLife(known, left);
        return new Age(left, known.ResistanceFactor ?? Growth(left, chemistry));
    }

    // What a life says instead of a measurement rests on published fits, and is told as what it is.
    private void FromLife(KnownAge known, Ratio left)
    {
        if (!known.IsMeasured)
        {
            var ends = known.Ends!;
            values.Add(new AssumedValue("capacity-left", "capacity left", Percent(left),
                $"its life by the aging set \"{known.Set.Name}\"; other published fits say {Percent(ends.Least.CapacityLeft)} to "
                    + $"{Percent(ends.Greatest.CapacityLeft)}. Measure it once if it matters", known.Set.Source)
            {
                Usual = new(Percent(ends.Least.CapacityLeft), Percent(ends.Greatest.CapacityLeft)),
            });
        }
        if (!known.IsResistanceMeasured)
        {
            values.Add(new AssumedValue("resistance-growth", "growth of the resistance", Text(known.ResistanceFactor!.Value),
                $"its life by the aging set \"{known.Set.Name}\"", known.Set.Source)
            {
                Usual = new(Text(1), Text(Wear.ResistanceFactor(left, Wear.GreatestUsualGrowthPerLoss))),
            });
        }
    }

    private double Growth(Ratio capacityLeft, CellChemistry chemistry)
    {
        var k = chemistry.GrowthPerLoss;
        var factor = Wear.ResistanceFactor(capacityLeft, k.Value);
        values.Add(new AssumedValue("resistance-growth", "growth of the resistance", Text(factor),
            string.Create(CultureInfo.InvariantCulture, $"1 + {k.Value:0.0} times the capacity lost: {k.Why}"), k.Source)
        {
            Usual = new(Text(1), Text(Wear.ResistanceFactor(capacityLeft, Wear.GreatestUsualGrowthPerLoss))),
        });
        return factor;
    }

    private static string Text(double one) => string.Create(CultureInfo.InvariantCulture, $"{one:0.###}");

    private static string Percent(Ratio share) => string.Create(CultureInfo.InvariantCulture, $"{share.Percent:0.#} %");

    private Age AsNew()
    {
        const string why = "age not given: taken as new. A used battery does less; measure its capacity if it matters";
        values.Add(new AssumedValue("capacity-left", "capacity left", "100 %", why,
            Citation.CommonPractice("a battery of unknown age taken as new")) { Usual = new("80 %", "90 %") });
        values.Add(new AssumedValue("resistance-growth", "growth of the resistance", "none (factor 1)", why,
            Citation.CommonPractice("a battery of unknown age taken as new")) { Usual = new("1.5", "2") });
        return Cells.Age.New;
    }
}
