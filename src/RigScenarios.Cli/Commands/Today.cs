namespace RigScenarios.Cli.Commands;

/// <summary>The day on which a command runs.</summary>
internal static class Today
{
    public static DateOnly Of(TimeProvider clock) => DateOnly.FromDateTime(clock.GetLocalNow().Date);
}
