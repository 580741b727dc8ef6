using System.Globalization;
using RigScenarios.Parts;

namespace RigScenarios.Drafts;

/// <summary>The power cables that can be chosen.</summary>
internal static class RigCables
{
    /// <summary>Those of the kit by their names there, then listed ones by their parts' ids.</summary>
    public static IReadOnlyList<WiringChoice> Choices(GivenRig given)
    {
        var scenario = given.Scenario;
        var inKit = scenario.Kit.Where(item => given.FindPart(item.Value.Part)?.Cable is not null
            && !OwnPart.IsOwn(scenario, item.Value.Part)).ToList();
        var shown = inKit.SelectMany(item => (string[])[item.Key, item.Value.Part]).ToHashSet(StringComparer.Ordinal);
        return
        [
            .. inKit.Select(item => Choice(item.Key, given.FindPart(item.Value.Part)!)),
            .. given.AllParts.Where(item => item.Value.Cable is not null && !OwnPart.IsOwn(scenario, item.Key)
                && !shown.Contains(item.Key)).Select(item => Choice(item.Key, item.Value)),
        ];
    }

    private static WiringChoice Choice(string value, Part part) => new(value, string.Create(CultureInfo.InvariantCulture,
        $"{part.Name} ({part.Cable!.Length.Meters:0.##} m of {part.Cable.Gauge})"));
}
