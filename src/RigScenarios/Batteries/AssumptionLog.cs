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
    /// <param name="capacityLeft">Part of the capacity that is left; null if not known.</param>
    /// <param name="resistanceFactor">Resistance over that of the new battery; null if not known.</param>
    /// <param name="chemistry">What it is made of.</param>
    public Age Age(Ratio? capacityLeft, double? resistanceFactor, CellChemistry chemistry)
    {
        if (capacityLeft is null && resistanceFactor is null)
            return AsNew();
        return new Age(
            capacityLeft ?? Add("capacity-left", "capacity left", Ratio.FromPercent(100), left => $"{left.Percent:G4} %",
                "not given beside the growth of the resistance: taken as new. Measure it once if it matters",
                Citation.CommonPractice("a capacity that nobody measured taken as new")),
            resistanceFactor ?? Growth(capacityLeft!.Value, chemistry));
    }

    private double Growth(Ratio capacityLeft, CellChemistry chemistry)
    {
        var k = chemistry.GrowthPerLoss;
        var factor = Wear.ResistanceFactor(capacityLeft, k.Value);
        string Text(double one) => string.Create(CultureInfo.InvariantCulture, $"{one:0.###}");
        values.Add(new AssumedValue("resistance-growth", "growth of the resistance", Text(factor),
            string.Create(CultureInfo.InvariantCulture, $"1 + {k.Value:0.0} times the capacity lost: {k.Why}"), k.Source)
        {
            Usual = new(Text(1), Text(Wear.ResistanceFactor(capacityLeft, Wear.GreatestUsualGrowthPerLoss))),
        });
        return factor;
    }

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
