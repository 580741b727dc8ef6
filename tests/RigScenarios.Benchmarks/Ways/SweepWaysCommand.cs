using System.Globalization;
using RigScenarios.Files;
using RigScenarios.Scenarios;
using RigScenarios.Sweeps.Evaluation;
using RigScenarios.Sweeps.Sampling;
using UnitsNet;

namespace RigScenarios.Benchmarks.Ways;

/// <summary>The quick way through a sweep held against the simulation: scenarios drawn from every build and day of scenario files
/// that go that way, each by both.</summary>
internal static class SweepWaysCommand
{
    public const string Usage = "sweep-ways FOLDER [SCENARIOS]";

    private const int UsualScenarios = 500;

    public static int Run(string[] args)
    {
        var count = UsualScenarios;
        if (args.Length is 0 or > 2 || (args.Length == 2
            && (!int.TryParse(args[1], NumberStyles.None, CultureInfo.InvariantCulture, out count) || count < 1)))
        {
            Console.Error.WriteLine($"usage: {Usage}");
            return 2;
        }
        Console.WriteLine("runtime off by: median, 99 of 100, most; other words: lasts, stopped by or in; µs of processor time a "
            + "scenario");
        foreach (var file in Directory.GetFiles(args[0], "*.yaml").Order(StringComparer.Ordinal))
        {
            var scenario = ScenarioFile.Read(file);
            foreach (var build in scenario.Builds.Keys)
            {
                foreach (var day in scenario.Days.Keys)
                    Tell($"{Path.GetFileNameWithoutExtension(file)} {build} {day}", Question(scenario, build, day, count));
            }
        }
        return 0;
    }

    // Energy, age and load of the battery, and the air: what is uncertain of nearly every day.
    private static SweepQuestion Question(Scenario scenario, string build, string day, int count)
    {
        var item = (scenario.Batteries.Count > 0 ? scenario.Batteries.Values.First().Item : scenario.Builds[build].Battery.Item);
        var part = scenario.Kit[item].Part;
        var energy = scenario.FindPart(part)!.Battery!.Energy.WattHours;
        return new(scenario, build, [day], new()
        {
            Uncertain =
            [
                new($"parts.{part}.battery.energy", Spread.Normal(Energy.FromWattHours(energy),
                    Energy.FromWattHours(0.05 * energy))),
                new($"builds.{build}.battery.load-scale", Spread.Uniform(0.75, 1.3)),
                new($"builds.{build}.battery.capacity-left", Spread.Uniform(Ratio.FromPercent(65), Ratio.FromPercent(100))),
                .. scenario.Days[day].AmbientPoints.Count > 0 ? Array.Empty<UncertainField>()
                    : [new($"days.{day}.ambient", Spread.Uniform(Temperature.FromDegreesCelsius(-12),
                        Temperature.FromDegreesCelsius(28)))],
            ],
            Samples = count,
        }, SweepColumns.Choose(scenario, ["lasts", "runtime_h", "stopped_by", "stopped_in"]));
    }

    private static void Tell(string name, SweepQuestion question)
    {
        var scenarios = new SweptScenarios(question, default);
        var columns = SweepColumns.ReadingsOf(question.Scenario, question.Columns);
        var (quick, whyNot) = ByDischarges.Try(scenarios, columns, default);
        if (quick is null)
        {
            Console.WriteLine($"{name,-36} simulated: {whyNot}");
            return;
        }
        var count = question.Plan.Samples;
        // Once for the compiler.
        _ = quick.Run(Math.Min(count, 64), i => question.Plan.At(i), default);
        var before = quick.Simulated;
        var (records, microseconds) = Timed(quick, question);
        var (simulated, slowMicroseconds) = Timed(new ScenarioByScenario(scenarios, columns, "", default), question);
        var off = records.Zip(simulated, (one, other) => Math.Abs((one.Cells[1].Number! / other.Cells[1].Number!).Value - 1))
            .Order().ToList();
        var words = records.Zip(simulated, (one, other) => new[] { 0, 2, 3 }.Any(i => one.Cells[i] != other.Cells[i]))
            .Count(differ => differ);
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"{name,-36} {100 * off[count / 2],7:F4} % {100 * off[count * 99 / 100],7:F4} % {100 * off[^1],7:F4} %, "
            + $"other words {words}, simulated {quick.Simulated - before} of {count}, {microseconds / count,6:F0} µs against "
            + $"{slowMicroseconds / count,6:F0}"));
    }

    private static (SweepRecord[] Records, double Microseconds) Timed(SweepEvaluation way, SweepQuestion question)
    {
        var before = Environment.CpuUsage.UserTime;
        var records = way.Run(question.Plan.Samples, i => question.Plan.At(i), default);
        return (records, (Environment.CpuUsage.UserTime - before).TotalMicroseconds);
    }
}
