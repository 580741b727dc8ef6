using System.Reflection;
using Xunit.Sdk;
using Xunit.v3;

namespace RigScenarios.Checks.Table;

/// <summary>One test of this project: in which room, how many cases it has, and what they rest on.</summary>
/// <param name="Room">The folder of the class below the project; "several rooms" for what stands beside the folders.</param>
/// <param name="Name">Class and test.</param>
/// <param name="Cases">1 for a fact; for a theory the number of its rows.</param>
/// <param name="Sources">Its own sources, or, where it has none, those of its class.</param>
internal sealed record OutsideCheck(string Room, string Name, int Cases, IReadOnlyList<SourceAttribute> Sources)
{
    private static readonly string Root = typeof(SourceAttribute).Namespace!;

    /// <summary>All tests of this project, in the order of room and name; those of the table itself are none from
    /// outside.</summary>
    public static async Task<IReadOnlyList<OutsideCheck>> AllAsync()
    {
        var found = new List<OutsideCheck>();
        await using var rows = new DisposalTracker();
        foreach (var type in typeof(OutsideCheck).Assembly.GetTypes()
            .Where(type => type.Namespace != typeof(OutsideCheck).Namespace))
        {
            foreach (var method in type.GetMethods(BindingFlags.Instance | BindingFlags.Static | BindingFlags.Public))
            {
                if (method.GetCustomAttributes().OfType<IFactAttribute>().Any() && !method.IsDefined(typeof(GuardAttribute)))
                {
                    found.Add(new(RoomOf(type), $"{type.Name}.{method.Name}", await CasesOf(method, rows),
                        [.. SourcesOf(method) is { Count: > 0 } own ? own : SourcesOf(type)]));
                }
            }
        }
        return [.. found.OrderBy(check => check.Room, StringComparer.Ordinal)
            .ThenBy(check => check.Name, StringComparer.Ordinal)];
    }

    private static List<SourceAttribute> SourcesOf(MemberInfo member) => [.. member.GetCustomAttributes<SourceAttribute>()];

    private static string RoomOf(Type type) =>
        type.Namespace == Root ? "several rooms" : type.Namespace![(Root.Length + 1)..].Split('.')[0];

    private static async Task<int> CasesOf(MethodInfo method, DisposalTracker tracker)
    {
        var data = method.GetCustomAttributes().OfType<IDataAttribute>().ToList();
        var rows = 0;
        foreach (var one in data)
        {
            // The runner tells a member's attribute where its member is; without that it has no rows.
            if (one is MemberDataAttribute member)
                member.MemberType ??= method.ReflectedType;
            rows += (await one.GetData(method, tracker)).Count;
        }

        return data.Count == 0 ? 1 : rows;
    }
}
