using RigScenarios.Answers;
using RigScenarios.Files;
using RigScenarios.Parts;
using RigScenarios.Scenarios;

namespace RigScenarios.Search.Compare;

/// <summary>What two rigs rest on alike: a figure that enters both from the same input is off by the same in both, and of their
/// difference only what is left of it counts.</summary>
internal static class SharedInputs
{
    /// <summary>Whether two parts say the same, wherever they were read.</summary>
    public static bool IsSame(Part? one, Part? other) =>
        ReferenceEquals(one, other) || (one is not null && other is not null && (one.Equals(other)
            // Lists inside a part compare by reference; what a file would say of both does not.
            || string.Equals(Text(one), Text(other), StringComparison.Ordinal)));

    /// <summary>Whether both go through the same days on the same batteries in the same state, swapped and charged
    /// alike.</summary>
    public static bool SameBatteriesAndDays(RigAnswer one, RigAnswer other) =>
        one.Plan.Days.SequenceEqual(other.Plan.Days) && one.Plan.Swaps.Equals(other.Plan.Swaps)
        && one.Plan.Chargers.Equals(other.Plan.Chargers) && one.Plan.Batteries.Count == other.Plan.Batteries.Count
        && one.Plan.Batteries.Values.Zip(other.Plan.Batteries.Values).All(pair => IsSame(pair.First.Part, pair.Second.Part)
            && pair.First.Charge.DecimalFractions.Equals(pair.Second.Charge.DecimalFractions)
                && Equals(pair.First.CapacityLeft, pair.Second.CapacityLeft)
            && pair.First.ResistanceGrowth.Equals(pair.Second.ResistanceGrowth)
            && Equals(pair.First.Life, pair.Second.Life)
            && Equals(pair.First.StartTemperature, pair.Second.StartTemperature));

    /// <summary>For each input of either side what it adds to the error of the difference: its error times the difference of what
    /// both sides make of it.</summary>
    /// <param name="one">What an input, by its key, adds to the figure of one side if it is off by its error.</param>
    /// <param name="other">The same of the other side.</param>
    public static IEnumerable<double> Errors<T>(IEnumerable<(T Input, double Error)> one, IEnumerable<(T Input,
        double Error)> other)
        where T : notnull
    {
        var left = Sums(one);
        var right = Sums(other);
        return left.Keys.Union(right.Keys).Select(input => left.GetValueOrDefault(input) - right.GetValueOrDefault(input));
    }

    private static Dictionary<T, double> Sums<T>(IEnumerable<(T Input, double Error)> errors)
        where T : notnull =>
        errors.GroupBy(item => item.Input).ToDictionary(group => group.Key, group => group.Sum(item => item.Error));

    private static string Text(Part part) =>
        ScenarioFile.Text(new Scenario { Parts = new([KeyValuePair.Create("part", part)]) });
}
