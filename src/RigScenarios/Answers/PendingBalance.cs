using RigScenarios.Limits;

namespace RigScenarios.Answers;

internal static class PendingBalance
{
    public static (IReadOnlyList<Limit> Balance, IReadOnlyList<Limit> Stand) Of(BuildBalance? balance) => ([], []);
}
