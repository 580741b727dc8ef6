using RigScenarios.Cells;

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

    /// <summary>The named chemistry; NMC if none is named.</summary>
    public CellChemistry Chemistry(string? name) => name is not null
        ? CellChemistries.Find(name)
        : Add("chemistry", "cell chemistry", CellChemistries.Nmc, one => one.Name, "what most camera packs hold",
            Citation.CommonPractice("NMC cells in camera packs"));

    /// <summary>The age of a battery of which nothing is known.</summary>
    public Age AsNew()
    {
        const string why = "age not given: taken as new. A used battery does less; measure its capacity if it matters";
        values.Add(new AssumedValue("capacity-left", "capacity left", "100 %", why,
            Citation.CommonPractice("a battery of unknown age taken as new")));
        values.Add(new AssumedValue("resistance-growth", "growth of the resistance", "none (factor 1)", why,
            Citation.CommonPractice("a battery of unknown age taken as new")));
        return Age.New;
    }
}
