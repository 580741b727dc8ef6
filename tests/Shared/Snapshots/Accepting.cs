namespace RigScenarios.Tests.Shared;

/// <summary>Whether this run writes new snapshots and published schemas instead of comparing with them.</summary>
internal static class Accepting
{
    public const string Variable = "RIGSCENARIOS_ACCEPT_SNAPSHOTS";

    public static bool IsWanted { get; } = Wanted(Environment.GetEnvironmentVariable);

    /// <summary>Refused where CI is set: there a test compares, whatever a variable says.</summary>
    /// <exception cref="InvalidOperationException">Both variables are set.</exception>
    public static bool Wanted(Func<string, string?> variable)
    {
        if (variable(Variable) is not { Length: > 0 } set || set == "0")
            return false;
        return !Seeds.OnCi(variable) ? true : throw new InvalidOperationException(
            $"{Variable} is set where CI is set too. Snapshots are accepted by hand and read before they are committed.");
    }
}
