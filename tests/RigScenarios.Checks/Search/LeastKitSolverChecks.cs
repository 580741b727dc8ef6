using Google.OrTools.Sat;
using RigScenarios.Builds;
using RigScenarios.Days;
using RigScenarios.Parts;
using RigScenarios.Search;
using RigScenarios.Simulation;
using UnitsNet;

namespace RigScenarios.Checks.Search;

/// <summary>
/// The least kit against an exact solver. Without chargers and with a steady draw it is a covering problem: each battery of a kit
/// but the last lasts until its charge asks for a swap, the last until the rig stops, each swap takes its time, and together they
/// must reach the end of the day. A battery that ends before its charge asks for a swap stops the rig, so that it can only be the
/// last. How long one battery lasts is the model's own; which batteries, the solver finds by itself: the
/// fewest, and of those the kit that comes first when kits are counted in the order of the list.
/// </summary>
[Source(SourceKind.ReferenceLibrary, "OR-Tools 9.15, CP-SAT (exact integer solver): fewest batteries whose times cover the day")]
public class LeastKitSolverChecks
{
    private static readonly SwapPolicy Swaps = new()
    {
        Reserve = Ratio.FromPercent(3), Allowed = SwapMoments.AnyTime, Next = NextBattery.AsListed,
        SwapTime = Duration.FromMinutes(3), Restart = Duration.Zero,
    };

    private static readonly PoweredBuild Rig = PoweredBuild.From(
        new Build
        {
            Battery = new BatteryInUse { Item = "battery" },
            Devices = new([new("camera", new DeviceInUse { Essential = true })]),
        },
        name => name == "camera"
            ? new Part { Kind = PartKind.Body, Name = "compact body A", Power = new PowerDraw(Record: Power.FromWatts(35)),
                Voltage = new VoltageWindow(ElectricPotential.FromVolts(8), ElectricPotential.FromVolts(18)) }
            : Battery(98));

    // Invented kits of 4 to 9 batteries, drawn from a fixed seed: 15 to 100 Wh, 60 to 100 % of the capacity left, 50 to 100 %
    // charged. In two rows all of them are too few. No row is decided by the seconds that a battery loses while it waits for its
    // turn, which the solver knows nothing of.
    private static readonly (int Seed, int Count, double Hours)[] Kits =
    [
        (1, 5, 3.3), (2, 6, 2.0), (3, 7, 5.5), (4, 7, 5.5), (5, 8, 3.0), (6, 8, 6.9), (7, 8, 4.0), (8, 9, 6.0), (9, 9, 1.2),
        (10, 9, 6.5), (11, 5, 4.5), (12, 4, 0.8), (13, 9, 12.0),
    ];

    public static TheoryData<int, int, double> Rows => [.. Kits.Select(kit => (kit.Seed, kit.Count, kit.Hours))];

    [Theory]
    [MemberData(nameof(Rows))]
    public void The_least_kit_is_the_solver_s(int seed, int count, double hours)
    {
        var plan = PlanOf(Draw(new Random(seed), count), hours);

        var found = LeastKit.Find(Rig, plan, KitWish.None, null, TestContext.Current.CancellationToken);

        Assert.Equal(Solve(plan, hours), found.Least?.Batteries);
    }

    // The rows show something only if their answers differ.
    [Fact]
    [Guard]
    public void The_rows_have_kits_of_many_sizes() =>
        Assert.Equal([0, 1, 2, 3, 4, 5],
            Kits.Select(kit => Solve(PlanOf(Draw(new Random(kit.Seed), kit.Count), kit.Hours), kit.Hours)?.Count ?? 0)
                .Distinct().Order());

    /// <summary>The solver's kit; null if there is none.</summary>
    private static List<string>? Solve(DayPlan plan, double hours)
    {
        var names = plan.Batteries.Keys.ToList();
        var times = names.ConvertAll(name => TimesOf(plan.Batteries[name]));
        var model = new CpModel();
        var taken = names.ConvertAll(name => model.NewBoolVar($"{name} is taken"));
        var last = names.ConvertAll(name => model.NewBoolVar($"{name} is last"));
        model.Add(LinearExpr.Sum(last) == 1);
        for (var i = 0; i < names.Count; i++)
        {
            model.AddImplication(last[i], taken[i]);
            if (!times[i].AsksForSwap)
                model.AddImplication(taken[i], last[i]);
            for (var later = i + 1; later < names.Count; later++)
                model.AddAtMostOne([last[i], taken[later]]);
        }

        // Milliseconds: a sum of times that covers the day to less than that is not told apart from one that does not.
        var swap = (long)Swaps.SwapTime.Milliseconds;
        var covered = LinearExpr.WeightedSum(taken, times.Select(time => Milliseconds(time.ToSwap) + swap))
            + LinearExpr.WeightedSum(last, times.Select(time => Milliseconds(time.ToEnd) - Milliseconds(time.ToSwap) - swap));
        model.Add(covered >= (long)(3_600_000 * hours));
        // Fewest first, then first in the list's order: the i-th battery counts as the i-th bit.
        model.Minimize(LinearExpr.WeightedSum(taken,
            Enumerable.Range(0, names.Count).Select(i => (1L << names.Count) + (1L << i))));

        var solver = new CpSolver { StringParameters = "num_workers:1,random_seed:1" };
        var status = solver.Solve(model);
        Assert.Contains(status, new[] { CpSolverStatus.Optimal, CpSolverStatus.Infeasible });
        return status == CpSolverStatus.Infeasible ? null : [.. names.Where((_, i) => solver.BooleanValue(taken[i]))];
    }

    /// <summary>How long a battery runs the rig until it is swapped, and until it can no more; and whether it asked for that swap
    /// and did not just end.</summary>
    private static (Duration ToSwap, Duration ToEnd, bool AsksForSwap) TimesOf(KitBattery battery)
    {
        SimulationResult Run(params KitBattery[] batteries) =>
            DaySimulation.Run(Rig, PlanOf(batteries, 15.5), SimulationOptions.DaysOnly, null,
                TestContext.Current.CancellationToken);
        var start = Run(battery).Days[0].Start;
        var swap = Run(battery, new KitBattery(Battery(400))).Swaps[0];
        return (swap.Time - start, Run(battery).Devices["camera"].Runtime, !swap.Forced);
    }

    private static long Milliseconds(Duration time) => (long)time.Milliseconds;

    private static KitBattery[] Draw(Random random, int count) => [.. Enumerable.Range(0, count).Select(_ =>
        new KitBattery(Battery(15 + (85 * random.NextDouble())))
        {
            CapacityLeft = Ratio.FromPercent(60 + (40 * random.NextDouble())),
            Charge = Ratio.FromPercent(50 + (50 * random.NextDouble())),
        })];

    private static DayPlan PlanOf(KitBattery[] batteries, double hours) => new()
    {
        Days = [new ShootingDay { Starts = new TimeOnly(6, 0), Blocks = new([new("recording",
            new DayBlock { Length = Duration.FromHours(hours), Others = PowerState.Record })]) }],
        Batteries = new(batteries.Select((battery, i) => KeyValuePair.Create($"b{i + 1}", battery))),
        Swaps = Swaps,
    };

    private static Part Battery(double wattHours) => new()
    {
        Kind = PartKind.Battery, Name = $"battery {wattHours:0}",
        Battery = new Battery { Energy = Energy.FromWattHours(wattHours), Voltage = ElectricPotential.FromVolts(14.4),
            MaximumCurrent = ElectricCurrent.FromAmperes(10) },
    };
}
