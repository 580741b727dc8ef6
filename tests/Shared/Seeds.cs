namespace RigScenarios.Tests.Shared;

/// <summary>
/// Where drawn cases begin. Where CI is set always the same, so that a red run is red again; elsewhere anew each time, so that
/// more is seen. RIGSCENARIOS_SEED begins where a red test said that it was.
/// </summary>
internal static class Seeds
{
    public const string Variable = "RIGSCENARIOS_SEED";

    public static string? Wanted => Environment.GetEnvironmentVariable(Variable) is { Length: > 0 } seed ? seed : null;

    public static bool AreFixed => OnCi(Environment.GetEnvironmentVariable);

    /// <summary>Any value but nothing, "0" and "false".</summary>
    public static bool OnCi(Func<string, string?> variable) => variable("CI") is { Length: > 0 } set
        && set is not "0" && !set.Equals("false", StringComparison.OrdinalIgnoreCase);
}
