namespace RigScenarios.Search.Choices;

/// <summary>Choices that need no further look: those of a box, or those of them whose sums are all known and none under a known
/// entry's. Every one of them is proven infeasible, or no better than an entry, or was run itself.</summary>
/// <param name="Box">The box.</param>
/// <param name="NotUnder">The entry's sums; null where the whole box is meant.</param>
internal sealed record ChoiceCut(ChoiceBox Box, long[]? NotUnder)
{
    /// <summary>Whether all of another box needs no further look.</summary>
    public bool Covers(ChoiceTables tables, ChoiceBox box)
    {
        if (!Box.Has(box))
            return false;
        if (NotUnder is null)
            return true;
        for (var i = 0; i < NotUnder.Length; i++)
        {
            if (!tables.GoalSums[i].IsKnown(box) || tables.GoalSums[i].LeastOf(box) < NotUnder[i])
                return false;
        }
        return true;
    }
}
