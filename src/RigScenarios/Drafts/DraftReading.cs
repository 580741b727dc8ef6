using RigScenarios.Builds;
using RigScenarios.Parts;
using RigScenarios.Scenarios;

namespace RigScenarios.Drafts;

/// <summary>Reads a draft out of a scenario.</summary>
internal static class DraftReading
{
    public static RigDraft Of(Scenario scenario, string buildName, string dayName)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        var build = Choose(scenario.Builds, buildName, "build", "builds");
        var day = Choose(scenario.Days, dayName, "day", "days");
        return DraftBatteries.In(scenario, build, new RigDraft
        {
            Title = scenario.Title,
            Stance = build.Stance,
            Things = Things(scenario, build),
            SlideMiddle = build.OnHead?.SlideMiddle,
            Places = DraftPlaces.In(scenario, buildName),
            Charge = build.Battery.Charge,
            CapacityLeft = build.Battery.CapacityLeft,
            ResistanceGrowth = build.Battery.ResistanceGrowth,
            StartTemperature = build.Battery.StartTemperature,
            Ambient = day.Ambient ?? scenario.Conditions.Ambient,
            Starts = day.Starts,
            DayTitle = day.Title,
            Blocks = day.Blocks,
        });
    }

    private static OrderedMap<DraftThing> Things(Scenario scenario, Build build)
    {
        var things = new OrderedDictionary<string, DraftThing>(StringComparer.Ordinal);
        void Add(string name, RigRole role, Link? link = null, bool essential = false, int count = 1)
        {
            if (!scenario.Kit.TryGetValue(name, out var item))
                return;
            var own = item.Part.StartsWith(OwnPart.IdStart, StringComparison.Ordinal)
                && scenario.Parts.TryGetValue(item.Part, out var part) ? OwnPart.FiguresOf(role, part) : null;
            var cable = link?.Cable is { } kitName ? DraftCables.FiguresOf(scenario, kitName) : null;
            things.TryAdd(name, new DraftThing
            {
                Role = role, Part = own is null ? item.Part : null, Own = own, FedBy = link?.FedBy, Outlet = link?.Outlet,
                Cable = cable is null ? link?.Cable : null, OwnCable = cable,
                Essential = essential, Count = count,
            });
        }

        foreach (var (name, device) in build.Devices)
            Add(name, RoleOf(scenario.PartOf(name)?.Kind),
                new Link(device.FedBy ?? build.StandardFeed, device.Outlet, device.Cable), device.Essential, device.Count);
        Add(build.Battery.Item, RigRole.Battery);
        if (build.Plate is { } plate)
            Add(plate, RigRole.Plate);
        foreach (var (name, regulator) in build.Regulators)
            Add(name, RigRole.Regulator, new Link(regulator.FedBy ?? build.StandardFeed, regulator.Outlet, regulator.Cable));
        foreach (var (name, splitter) in build.Splitters)
            Add(name, RigRole.Other, new Link(splitter.FedBy ?? build.StandardFeed, splitter.Outlet, splitter.Cable));
        foreach (var carried in build.Carries.GroupBy(name => name))
            Add(carried.Key, CarriedRole(scenario.PartOf(carried.Key)?.Kind), count: carried.Count());
        return new OrderedMap<DraftThing>(things.OrderBy(thing => thing.Value.Role));
    }

    private sealed record Link(string FedBy, string? Outlet, string? Cable);

    private static RigRole RoleOf(PartKind? kind) => kind switch
    {
        PartKind.Body => RigRole.Camera,
        PartKind.Monitor => RigRole.Monitor,
        PartKind.Transmitter => RigRole.Transmitter,
        PartKind.Motor => RigRole.Motor,
        PartKind.MotorController => RigRole.MotorController,
        _ => RigRole.Other,
    };

    private static RigRole CarriedRole(PartKind? kind) => kind switch
    {
        PartKind.Lens or PartKind.LensAdapter => RigRole.Lens,
        PartKind.Head => RigRole.Head,
        PartKind.Tripod => RigRole.Legs,
        _ => RigRole.Other,
    };

    private static T Choose<T>(OrderedMap<T> things, string name, string what, string path)
        where T : notnull =>
        things.TryGetValue(name, out var found)
            ? found
            : throw new ScenarioProblemsException([new Diagnostic(Severity.Error, "", TextPlace.None, path,
                $"The scenario has no {what} \"{name}\".", string.Join(", ", things.Keys), NearestName.To(name, things.Keys))]);
}
