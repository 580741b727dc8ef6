namespace RigScenarios.Search.Choices;

/// <summary>Whether a model is one: the shape of what it tells.</summary>
internal static class ChoiceModelCheck
{
    /// <exception cref="ArgumentException">It is not; says where.</exception>
    public static void Check(IChoiceModel model)
    {
        ArgumentNullException.ThrowIfNull(model);
        if (model.Slots.Count == 0)
            throw new ArgumentException("There is no slot to fill; accepted: at least one.", nameof(model));
        foreach (var slot in model.Slots)
        {
            if (slot.Candidates.Count == 0)
                throw new ArgumentException($"The slot \"{slot.Name}\" has no candidate; accepted: at least one.", nameof(model));
            if (slot.Candidates.GroupBy(name => name, StringComparer.Ordinal).FirstOrDefault(same => same.Skip(1).Any()) is
                { } twice)
            {
                throw new ArgumentException($"The slot \"{slot.Name}\" has the candidate \"{twice.Key}\" twice.", nameof(model));
            }
        }
        foreach (var goal in model.Goals)
            CheckOne(model, goal.Name, goal.Sum, goal.DependsOn);
        foreach (var must in model.Musts)
            CheckOne(model, must.Name, must.Sum, must.DependsOn);
    }

    private static void CheckOne(IChoiceModel model, string name, ChoiceSum? sum, IReadOnlyList<int>? dependsOn)
    {
        if (sum is not null && !sum.Weights.Select(slot => slot.Count).SequenceEqual(model.Slots.Select(slot =>
            slot.Candidates.Count)))
        {
            throw new ArgumentException($"The sum \"{name}\" has not one part for each candidate of each slot.", nameof(model));
        }
        if (dependsOn?.Any(slot => slot < 0 || slot >= model.Slots.Count) is true)
            throw new ArgumentException($"\"{name}\" depends on a slot that is not there.", nameof(model));
    }
}
