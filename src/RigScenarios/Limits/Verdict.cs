namespace RigScenarios.Limits;

/// <summary>The verdict on a question, the better before the worse.</summary>
public enum Verdict
{
    /// <summary>It holds.</summary>
    Holds,

    /// <summary>It holds by less than the stated error of the prediction, or than the reserve that is wished.</summary>
    Close,

    /// <summary>A figure is missing, so that nobody can say.</summary>
    NotKnown,

    /// <summary>It fails.</summary>
    Fails,
}

/// <summary>Verdicts together.</summary>
public static class Verdicts
{
    /// <summary>The worst of several; <see cref="Verdict.Holds"/> of none.</summary>
    /// <param name="verdicts">The verdicts.</param>
    public static Verdict Worst(this IEnumerable<Verdict> verdicts) => verdicts.DefaultIfEmpty(Verdict.Holds).Max();

    /// <summary>The verdict in the words of every face and of JSON.</summary>
    /// <param name="verdict">The verdict.</param>
    public static string InWords(this Verdict verdict) => verdict switch
    {
        Verdict.Holds => "holds",
        Verdict.Close => "close",
        Verdict.NotKnown => "not known",
        _ => "fails",
    };
}
