using System.Globalization;
using RigScenarios.Answers;
using RigScenarios.Batteries;
using RigScenarios.Cells;
using RigScenarios.Days;
using RigScenarios.Fits;
using RigScenarios.Sweeps.Sampling;
using UnitsNet;
using Spread = RigScenarios.Sweeps.Sampling.Spread;

namespace RigScenarios.Sweeps.Sensitivity;

/// <summary>What labels and ages leave open of the batteries.</summary>
internal static class UnsureBatteries
{
    // A resistance below that of a new battery or beyond what files accept is none.
    private const double LeastGrowth = 0.5;
    private const double MostGrowth = 20;

    /// <summary>The batteries of an answer.</summary>
    public static (IReadOnlyList<UnsureFigure> Figures, IReadOnlyList<Correlation> Correlations) Of(RigAnswer answer)
    {
        var figures = new List<UnsureFigure>();
        var ages = new List<string>();
        foreach (var (name, battery) in answer.Plan.Batteries)
        {
            if (Where(answer, name) is not { } at || battery.Part.Battery is null)
                continue;
            var (item, field, part) = at;
            var words = LimitSentences.Element(item);
            // A fit to its own notes has said all of these together: what it leaves is in the prediction.
            if (battery.RuntimeKnownTo is null)
            {
                var timed = $"time one full discharge of the {words}";
                figures.Add(Capacity(battery, part, words, timed));
                if (CapacityLeft(battery, $"{field}.capacity-left", words, timed) is { } left)
                {
                    figures.Add(left with { Together = "capacity left of the batteries" });
                    ages.Add(left.Field.Path);
                }
                figures.Add(Resistance(battery, $"{field}.resistance-growth", words));
            }
            figures.AddRange(OfModel(answer, name, part, words));
        }
        // What makes one life kinder than another, or one measuring day off, is common to all of them.
        var together = ages.SelectMany((first, at) => ages.Skip(at + 1).Select(second => new Correlation(first, second,
            UsualUncertainty.OneCause)));
        return (figures, [.. together]);
    }

    private static (string Item, string Field, string Part)? Where(RigAnswer answer, string name)
    {
        var planned = answer.Scenario.Batteries.TryGetValue(name, out var turn);
        var item = planned ? turn!.Item : answer.TheBuild.Battery.Item;
        return answer.Scenario.Kit.TryGetValue(item, out var thing)
            ? (planned ? $"battery {name}" : item, planned ? $"batteries.{name}" : $"builds.{answer.Build}.battery",
                $"parts.{thing.Part}")
            : null;
    }

    // Not the energy on the label: what the rules of transport go by is what stands there, and no measurement changes it.
    private static UnsureFigure Capacity(KitBattery battery, string part, string words, string act)
    {
        var capacity = Digits(battery.MakePack().Pack.Capacity.AmpereHours);
        return new(new($"{part}.battery.capacity", new NormalSpread(ValueUnit.OfSign("Ah"), capacity,
            Digits(capacity * FitPriors.CapacityDeviation))),
            $"capacity of the {words} when new", act, "cells miss their label by some per cent",
            Citation.CommonPractice("labels of batteries (docs/calibration.md)"));
    }

    /// <summary>By a life between the published fits; measured within what one run can tell; not known at all between what is
    /// usual for a used battery and a new one.</summary>
    private static UnsureFigure? CapacityLeft(KitBattery battery, string path, string words, string act)
    {
        var known = battery.KnownAge;
        var name = $"capacity left of the {words}";
        if (known.Ends is { Least.CapacityLeft: var least, Greatest.CapacityLeft: var greatest })
        {
            return least.Percent < greatest.Percent ? new(new(path, Spread.Uniform(Percent(least), Percent(greatest))), name, act,
                "published fits of the same life differ so far", known.Set.Source) : null;
        }
        if (known.CapacityLeft is { } given)
        {
            var within = KnownAge.MeasuredWithin;
            return new(new(path, Spread.Uniform(Percent(given - within), Percent(given + within))), name, act,
                "a capacity that was measured by one run", Citation.CommonPractice("timing one discharge"));
        }
        return new(new(path, Spread.Uniform(Ratio.FromPercent(80), Ratio.FromPercent(100))), name, act,
            "its age is not given: from a used battery to a new one",
            Citation.CommonPractice("a battery of unknown age"));
    }

    private static UnsureFigure Resistance(KitBattery battery, string path, string words)
    {
        var pack = battery.MakePack().Pack;
        return new(new(path, Spread.Lognormal(pack.Age.ResistanceFactor, 1 + FitPriors.ResistanceDeviation)
            .Within(LeastGrowth, MostGrowth)), $"resistance of the {words}",
            $"read the voltage of the {words} without and with a known load",
            "one cell differs so far from another of its chemistry",
            Citation.CommonPractice("resistance of cells (docs/calibration.md)"));
    }

    /// <summary>What the model of the battery had to assume and the claim for the prediction does not hold in it: how it cools,
    /// where its protection switches off, what its leads take.</summary>
    private static IEnumerable<UnsureFigure> OfModel(RigAnswer answer, string battery, string part, string words)
    {
        var assumed = answer.Simulation.Assumed.TryGetValue(battery, out var values) ? values : [];
        foreach (var value in assumed)
        {
            var path = $"{part}.battery.{value.Field}";
            if (value.Field == "heat-conductance")
            {
                var conductance = answer.Plan.Batteries[battery].MakePack().Pack.HeatConductance.WattsPerKelvin;
                var share = WarmthDoubt.Spread.DecimalFractions;
                yield return new(new(path, new UniformSpread(ValueUnit.OfSign("W/K"),
                    Digits(conductance * (1 - share)), Digits(conductance * (1 + share)))),
                    $"how fast the {words} cools", $"log the temperature of the {words} in the cold",
                    "wind, a bare plate or a cover change it, and nobody measures it", value.Source);
            }
            else if (value.Field == "cutoff-voltage" && AssumedRange.Of(answer, path) is { } range)
            {
                yield return new(new(path, range), $"voltage at which the {words} switches off",
                    $"note the voltage at which the {words} switches off", value.Why, value.Source);
            }
        }
    }

    // As many digits as the figure deserves: what the plan tells is read by people.
    private static double Digits(double number) => double.Parse(number.ToString("G4", CultureInfo.InvariantCulture),
        CultureInfo.InvariantCulture);

    private static Ratio Percent(Ratio share) => Ratio.FromPercent(Math.Round(share.Percent, 2));
}
