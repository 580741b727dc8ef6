using RigScenarios.Builds;
using RigScenarios.Days;
using RigScenarios.Parts;
using RigScenarios.Scenarios;
using UnitsNet;

namespace RigScenarios.Tests.Files.Editing;

/// <summary>Changes of a scenario as a form or a timeline makes them, chosen by three numbers. None needs to make sense on
/// set.</summary>
internal static class RandomEdits
{
    private static readonly string[] Titles =
        ["Plain", "With: colon", "# hash", "a # b", "{brace, [x]}", "it's \"quoted\" \\ so", "yes", "- dash", "snow ❄ 𝄞", "a, b",
            "what?", "-8 °C", " space ", "@at", "1.3",
         "A remark that is longer than one line of the file would be, so that in a folded style it has to be wrapped "
             + "somewhere between its words, and not only once but twice, to be sure of it."];

    /// <summary>Only remarks have lines.</summary>
    private static readonly string[] Remarks = [.. Titles, "two\nlines", "ends\n"];

    private static readonly Func<Scenario, int, int, Scenario>[] Edits =
    [
        (s, a, _) => s with { Title = Titles[a % Titles.Length] },
        (s, a, _) => s with { Note = a % 5 == 0 ? null : Remarks[a % Remarks.Length] },
        (s, a, b) => s with { PartsFrom = Changed(s.PartsFrom, a, b, "../more parts") },
        (s, a, _) => s with { Conditions = new Conditions(a % 3 == 0 ? null : Temperature.FromDegreesCelsius((a % 60) - 20)) },
        (s, a, b) =>
            s with { Kit = Changed(s.Kit, a, b, item => item with { Count = 1 + (b % 5),
            Part = b % 2 == 0 ? item.Part : "another" }, new KitItem("new-part", 1 + (b % 2))) },
        (s, a, b) =>
            s with { Builds = Changed(s.Builds, a, b, build => EditBuild(build, b, a),
            new Build { Stance = Stance.Hand, Battery = new BatteryInUse { Item = "x" } }) },
        (s, a, b) => s with { Builds = Changed(s.Builds, 0, b, build => EditBuild(build, b, a), new Build()) },
        (s, a, b) => s with { Builds = Changed(s.Builds, 0, b, build => EditBuild(build, b, a), new Build()) },
        (s, a, b) =>
            s with { Days = Changed(s.Days, a, b, day => EditDay(day, b, a),
            new ShootingDay { Title = "New: day", Blocks = OrderedMap<DayBlock>.Empty.With("all", NewBlock(b)) }) },
        (s, a, b) => s with { Days = Changed(s.Days, 0, b, day => EditDay(day, b, a), new ShootingDay()) },
        (s, a, b) => s with { Days = Changed(s.Days, 0, b, day => EditDay(day, a, b), new ShootingDay()) },
        (s, a, b) =>
            s with { Parts = Changed(s.Parts, a, b, part => EditPart(part, b),
            new Part { Kind = PartKind.Lens, Name = "New # part", Power = new PowerDraw() }) },
        (s, a, b) => s with { Parts = Changed(s.Parts, 0, b, part => EditPart(part, b), new Part()) },
    ];

    public static Scenario Apply(Scenario scenario, (int Edit, int A, int B)[] edits) =>
        edits.Aggregate(scenario, (changed, edit) => Edits[edit.Edit % Edits.Length](changed, edit.A, edit.B));

    private static Build EditBuild(Build build, int a, int b) => (a / 7 % 9) switch
    {
        0 => build with { Title = a % 2 == 0 ? null : Titles[b % Titles.Length] },
        1 => build with { Stance = (Stance)(b % 3) },
        2 => build with { Battery = build.Battery with { Charge = b % 3 == 0 ? null : Ratio.FromPercent(1 + (b % 99)) } },
        3 => build with { Battery = build.Battery with { CapacityLeft = b % 3 == 0 ? null : Ratio.FromPercent(80),
            StartTemperature = b % 2 == 0 ? null : Temperature.FromDegreesCelsius(b % 20), ResistanceGrowth = b % 4 == 0
            ? null : 1.5 } },
        4 => build with { Plate = b % 2 == 0 ? null : "a-plate" },
        5 => build with { Regulators = Changed(build.Regulators, a, b, _ => new RegulatorInUse(b % 2 == 0 ? null : "battery"),
            new RegulatorInUse("plate")) },
        6 or 7 =>
            build with { Devices = Changed(build.Devices, a, b, device => EditDevice(device, b),
            new DeviceInUse { Essential = b % 2 == 0, Count = 2 }) },
        _ => build with { Carries = Changed(build.Carries, a, b, "new, thing") },
    };

    private static DeviceInUse EditDevice(DeviceInUse device, int a) => (a % 5) switch
    {
        0 => device with { FedBy = device.FedBy is null ? "battery" : null },
        1 => device with { Essential = !device.Essential },
        2 => device with { Count = 1 + (a % 3) },
        3 => device with { Power = device.Power is null ? new PowerDraw { Record = Power.FromWatts(9.5) } : null },
        _ => device with { Power = new PowerDraw { Standby = a % 2 == 0 ? Power.FromWatts(3) : null } },
    };

    private static ShootingDay EditDay(ShootingDay day, int a, int b) => (a / 7 % 7) switch
    {
        0 => day with { Title = a % 2 == 0 ? null : Titles[b % Titles.Length] },
        1 => day with { Starts = a % 3 == 0 ? null : new TimeOnly(b % 24, b % 60) },
        2 => day with { Ambient = a % 3 == 0 ? null : Temperature.FromDegreesFahrenheit(b % 90) },
        _ => day with { Blocks = Changed(day.Blocks, b, a, block => EditBlock(block, b, a), NewBlock(b)) },
    };

    private static DayBlock NewBlock(int a) => new()
    {
        Title = a % 2 == 0 ? "New: block" : null,
        Length = Duration.FromMinutes(5 + (a % 50)),
        States = a % 3 == 0 ? OrderedMap<PowerState>.Empty : OrderedMap<PowerState>.Empty.With("camera", PowerState.Record),
        Others = a % 5 == 0 ? null : PowerState.Standby,
    };

    private static DayBlock EditBlock(DayBlock block, int a, int b) => (a / 3 % 4) switch
    {
        0 => block with { Length = Duration.FromHours(0.25 + (b % 7)) },
        1 => block with { Title = b % 2 == 0 ? null : Titles[b % Titles.Length] },
        2 => block with { Others = b % 3 == 0 ? null : (PowerState)(b % 3) },
        _ => block with { States = Changed(block.States, a / 2, b, _ => (PowerState)(a % 3), PowerState.Off) },
    };

    private static Part EditPart(Part part, int a) => (a % 6) switch
    {
        0 => part with { Mass = part.Mass is null ? Mass.FromGrams(1 + a) : null },
        1 => part with { Name = Titles[a % Titles.Length], Note = Titles[a % 7] },
        2 => part with { Power = part.Power is null ? new PowerDraw { Record = Power.FromWatts(4) } : null },
        3 when part.Battery is { } battery =>
            part with { Battery = battery with { Energy = Energy.FromWattHours(50 + a), Chemistry = "nmc",
            MaximumCurrent = null } },
        4 when part.Battery is { OpenCircuitVoltage: { Count: > 1 } curve } battery => part with
        {
            Battery = battery with
            {
                OpenCircuitVoltage = a % 2 == 0 ? [.. curve.Skip(1)]
                    : [.. curve.Take(1), new OpenCircuitPoint(Ratio.FromPercent(a % 100), ElectricPotential.FromVolts(3.3)),
                    .. curve.Skip(1).Select(point => point with { Voltage = ElectricPotential.FromVolts(4) })],
            },
        },
        _ => part with { Kind = PartKind.Lens },
    };

    /// <summary>One thing changed, taken out, added somewhere, moved or given another name.</summary>
    private static OrderedMap<T> Changed<T>(OrderedMap<T> map, int how, int which, Func<T, T> change, T added)
        where T : notnull
    {
        var items = map.ToList();
        var at = items.Count == 0 ? 0 : which % items.Count;
        var name = $"new-{which % 50}";
        switch (how % 6)
        {
            case 1 when items.Count > 0:
                items.RemoveAt(at);
                break;
            case 2 when !map.ContainsKey(name):
                items.Insert(Math.Min(which % (items.Count + 1), items.Count), new(name, added));
                break;
            case 3 when items.Count > 1:
                var moved = items[at];
                items.RemoveAt(at);
                items.Insert(how / 6 % (items.Count + 1), moved);
                break;
            case 4 when items.Count > 0 && !map.ContainsKey(name):
                items[at] = new(name, items[at].Value);
                break;
            case 5 when items.Count > 1 && how % 4 == 1:
                items.Reverse();
                break;
            default:
                if (items.Count > 0)
                    items[at] = new(items[at].Key, change(items[at].Value));
                break;
        }
        return new OrderedMap<T>(items);
    }

    private static List<string> Changed(IReadOnlyList<string> list, int how, int which, string added)
    {
        var items = list.ToList();
        var at = items.Count == 0 ? 0 : which % items.Count;
        if (how % 4 == 0 && items.Count > 0)
            items.RemoveAt(at);
        else if (how % 4 == 1 && items.Count > 0)
            items[at] = added;
        else if (how % 4 == 2)
            items.Insert(at, added);
        else
            items.Reverse();
        return items;
    }
}
