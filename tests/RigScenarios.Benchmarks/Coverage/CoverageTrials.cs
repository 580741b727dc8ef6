using MathNet.Numerics.Random;
using RigScenarios.Fits;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Benchmarks.Coverage;

/// <summary>One estimate held against its truth.</summary>
/// <param name="Design">The trial's design.</param>
/// <param name="Unknown">Which unknown.</param>
/// <param name="Inside">Whether the truth lies in the 95 % interval.</param>
/// <param name="Pull">Estimate less truth, in standard errors.</param>
/// <param name="IsOpen">Whether the fit said of it that the data alone don't settle it.</param>
internal sealed record CoverageHit(string Design, UnknownKind Unknown, bool Inside, double Pull, bool IsOpen);

/// <summary>
/// Trials in which the truth is known: ten designs of notes, logs, both, bounds, a roughly known air in the cold, two wells.
/// </summary>
internal static class CoverageTrials
{
    /// <summary>The designs by their names.</summary>
    public static IReadOnlyList<(string Name, Func<Random, double?, CoverageTruth> Make)> Designs { get; } =
    [
        ("2 notes", (random, away) => Notes(new CoverageTruth(random, away), 2, 10, 30)),
        ("4 notes", (random, away) => Notes(new CoverageTruth(random, away), 4, 8, 30)),
        ("6 notes, one on a known load", (random, away) => Bench(Notes(new CoverageTruth(random, away), 5, 8, 30))),
        ("5 notes, a scale a device", (random, away) => Devices(new CoverageTruth(random, away, perDevice: true))),
        ("1 log with its load", (random, away) => Logged(new CoverageTruth(random, away), 22, knowsPower: true)),
        ("2 logs, load unknown", (random, away) => Logged(Logged(new CoverageTruth(random, away), 24, false), 5, false)),
        ("3 notes and a log", (random, away) => Logged(Notes(new CoverageTruth(random, away), 3, 8, 30), 22, true)),
        ("2 run-times, 3 bounds", (random, away) => Bounds(Notes(new CoverageTruth(random, away), 2, 8, 30))),
        ("4 notes in the cold, air roughly known", (random, away) => Cold(new CoverageTruth(random, away, ambient: true))),
        ("two wells: 3 notes and a log in the cold", (random, away) =>
            Logged(Cold(new CoverageTruth(random, away, wells: true)), -8, true)),
    ];

    /// <summary>One trial: its estimates held against the truth.</summary>
    /// <param name="number">Its number: the seed, and with it the design.</param>
    /// <param name="options">How the fit is made.</param>
    /// <param name="away">By how many deviations the truth always lies above what is believed; drawn if null.</param>
    public static IEnumerable<CoverageHit> Run(int number, FitOptions options, double? away = null)
    {
        var (name, make) = Designs[number % Designs.Count];
        // Seeds in a row must not give trials that resemble each other, as those of the runtime's own generator do.
        var made = make(new MersenneTwister(number), away);
        var result = BatteryFit.Find(made.Problem(options));
        if (!result.Found)
            throw new InvalidOperationException($"Trial {number} ({name}) was not found.");
        var open = result.Inseparable.SelectMany(pair => new[] { pair.First.Name, pair.Second.Name }).ToHashSet();
        foreach (var estimate in result.Estimates)
        {
            var truth = made.Values[estimate.Unknown.Name];
            yield return new CoverageHit(
                name, estimate.Unknown.Kind, truth >= estimate.LogLow && truth <= estimate.LogHigh,
                (estimate.Log - truth) / estimate.StandardError, open.Contains(estimate.Unknown.Name));
        }
    }

    private static CoverageTruth Notes(CoverageTruth truth, int count, double coldest, double warmest)
    {
        for (var i = 0; i < count; i++)
            truth.Note(Shooting(truth, truth.Between(coldest, warmest), monitor: truth.Between(0, 1) < 0.7, camera: true));
        return truth;
    }

    private static CoverageTruth Bench(CoverageTruth truth)
    {
        truth.Note(new BatteryRun
        {
            Ambient = Temperature.FromDegreesCelsius(20),
            Stretches = [RunStretch.ToTheEnd(new([new("bench load", Power.FromWatts(truth.Camera))]))],
            Steady = true,
        });
        return truth;
    }

    private static CoverageTruth Devices(CoverageTruth truth)
    {
        truth.Note(Shooting(truth, 18, monitor: true, camera: false));
        truth.Note(Shooting(truth, 24, monitor: false, camera: true));
        return Notes(truth, 3, 8, 30);
    }

    private static CoverageTruth Bounds(CoverageTruth truth)
    {
        truth.Note(Shooting(truth, truth.Between(8, 30), true, true), stopAt: 0.8, showsPercent: true);
        truth.Note(Shooting(truth, truth.Between(8, 30), true, true), stopAt: 0.85);
        truth.Note(Shooting(truth, truth.Between(8, 30), false, true), stopAt: 1);
        return truth;
    }

    private static CoverageTruth Cold(CoverageTruth truth)
    {
        truth.Note(Shooting(truth, 20, true, true));
        truth.Note(Shooting(truth, truth.Between(-4, 4), false, true));
        truth.Note(Shooting(truth, truth.Between(-14, -8), true, true));
        return truth.Values.ContainsKey("ambient") ? Notes(truth, 1, -12, -6) : truth;
    }

    private static CoverageTruth Logged(CoverageTruth truth, double celsius, bool knowsPower)
    {
        truth.Log(celsius, knowsPower);
        return truth;
    }

    // The camera rolls part of the time; sometimes the battery isn't full, sometimes the camera's minimum ends it.
    private static BatteryRun Shooting(CoverageTruth truth, double celsius, bool monitor, bool camera)
    {
        var share = Math.Round(truth.Between(0.2, 0.8), 2);
        OrderedMap<Power> Drawn(double factor)
        {
            var devices = new List<KeyValuePair<string, Power>>();
            if (camera)
                devices.Add(new("camera", Power.FromWatts(factor * truth.Camera)));
            if (monitor)
                devices.Add(new("monitor", Power.FromWatts(truth.Monitor)));
            return new OrderedMap<Power>(devices);
        }

        return new BatteryRun
        {
            Ambient = Temperature.FromDegreesCelsius(celsius),
            InitialCharge = Ratio.FromDecimalFractions(truth.Between(0, 1) < 0.25 ? Math.Round(truth.Between(0.6, 0.9), 2) : 1),
            Cutoff = truth.Between(0, 1) < 0.25 ? ElectricPotential.FromVolts(12.4) : null,
            Stretches =
            [
                new RunStretch(null,
                [
                    new RunState(Ratio.FromDecimalFractions(share), Drawn(1)),
                    new RunState(Ratio.FromDecimalFractions(1 - share), Drawn(0.62)),
                ]),
            ],
        };
    }
}
