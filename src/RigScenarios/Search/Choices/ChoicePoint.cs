namespace RigScenarios.Search.Choices;

/// <summary>A choice that holds every must, with its goals: sums in whole numbers, the others as computed.</summary>
internal sealed class ChoicePoint
{
    public ChoicePoint(ChoiceTables tables, Choice choice, ChoiceFigures? figures)
    {
        Choice = choice;
        Sums = [.. tables.GoalSums.Select(sum => sum.Of(choice))];
        Others = [.. tables.OtherGoals.Select(goal => figures!.Goals[goal])];
        IsKnown = Array.TrueForAll(Sums, sum => sum is not null) && Array.TrueForAll(Others, figure => !double.IsNaN(figure));
    }

    public Choice Choice { get; }

    public long?[] Sums { get; }

    public double[] Others { get; }

    /// <summary>Whether every goal is known.</summary>
    public bool IsKnown { get; }

    /// <summary>Whether this is no worse in any goal; never where a goal of one of them is not known.</summary>
    public bool IsNoWorseThan(ChoicePoint other)
    {
        if (!IsKnown || !other.IsKnown)
            return false;
        for (var i = 0; i < Sums.Length; i++)
        {
            if (Sums[i] > other.Sums[i])
                return false;
        }
        for (var i = 0; i < Others.Length; i++)
        {
            if (Others[i] > other.Others[i])
                return false;
        }
        return true;
    }

    /// <summary>Whether this entry, wholly known, is over none of these sums and other figures.</summary>
    public bool IsNoWorseThan(long[] sums, double[] others)
    {
        for (var i = 0; i < sums.Length; i++)
        {
            if (Sums[i] > sums[i])
                return false;
        }
        for (var i = 0; i < others.Length; i++)
        {
            // Written so that a bound that is no number decides nothing.
            if (!(Others[i] <= others[i]))
                return false;
        }
        return true;
    }

    /// <summary>The goals in the model's order; NaN where one is not known.</summary>
    public double[] Goals(ChoiceTables tables)
    {
        var goals = new double[tables.Model.Goals.Count];
        for (var i = 0; i < Sums.Length; i++)
            goals[tables.SumGoals[i]] = Sums[i] is { } sum ? (double)tables.GoalSums[i].Figure(sum) : double.NaN;
        for (var i = 0; i < Others.Length; i++)
            goals[tables.OtherGoals[i]] = Others[i];
        return goals;
    }
}
