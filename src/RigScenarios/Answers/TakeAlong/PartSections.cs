using RigScenarios.Balance;
using UnitsNet;

namespace RigScenarios.Answers.TakeAlong;

/// <summary>What a build is made of, in the order in which it is put together, and where it sits on the rods.</summary>
internal static class PartSections
{
    private const string Unknown = "not given";

    /// <summary>Every thing with its mass and place.</summary>
    public static SheetSection Parts(RigAnswer answer)
    {
        var steps = AssemblyStep.Of(answer);
        var slides = steps.Any(step => Slides(step).Length > 0);
        string[] titles = ["Part", "What it is", "kg", "On", "Forward", "Left", "Up", "Slides"];
        var usual = steps.Any(step => step.IsUsual) ? " * The usual place, for none is given." : "";
        return new("Parts in the order of building, places in mm", SheetForm.Table,
            [.. steps.Select(step => (IReadOnlyList<string>)[.. Row(step).Take(slides ? 8 : 7)])])
        {
            Columns = [.. titles.Take(slides ? 8 : 7)],
            Note = $"Places between mounting points; below zero: backward, right, down.{usual}{Sum(steps)}",
            IsWide = true, GoesAs = 7, Keeps = steps.Count, Things = "parts",
        };
    }

    /// <summary>Where each thing sits on the rods, from their ends; nothing where the build has no rods with a length.</summary>
    public static IEnumerable<SheetSection> OnRods(RigAnswer answer)
    {
        if (answer.Balance?.Rig is not { } rig || RodPosition.Of(rig) is not { Count: > 0 } positions)
            yield break;
        var several = positions.Select(position => position.Rods).Distinct().Count() > 1;
        string[] titles = ["Part", "From the front end", "From the rear end", "Rods"];
        yield return new("On the rods, mm", SheetForm.Table,
            [.. positions.Select(position => (IReadOnlyList<string>)
            [
                SheetWords.Thing(position.Part) + (rig.PlacesAssumed.Contains(position.Part) ? " *" : ""),
                SheetWords.Millimetres(position.FromFront), SheetWords.Millimetres(position.FromRear),
                .. several ? [SheetWords.Thing(position.Rods)] : Array.Empty<string>(),
            ])])
        {
            Columns = titles[..(several ? 4 : 3)],
            Note = "From the end of the rods to the mounting point of the part, the middle of its clamp; below zero: past that "
                + "end.",
            GoesAs = 4, Keeps = 4, Things = "places on rods",
        };
    }

    private static IEnumerable<string> Row(AssemblyStep step) =>
    [
        (step.Count > 1 ? $"{step.Count} × " : "") + SheetWords.Thing(step.Name) + (step.IsUsual ? " *" : "")
            + (step.Place is { } turned ? PlaceSections.Turns(turned) : ""),
        step.Part.Name, step.Mass is { } mass ? $"{mass.Kilograms:0.00}" : Unknown, step.On,
        Way(step, step.Place?.Forward), Way(step, step.Place?.Left), Way(step, step.Place?.Up), Slides(step),
    ];

    private static string Way(AssemblyStep step, Length? way) => step.Place is null ? "" : SheetWords.Millimetres(way);

    private static string Slides(AssemblyStep step) => step.Place is { SlidesFrom: { } from, SlidesTo: { } to }
        ? $"{SheetWords.Millimetres(from)} to {SheetWords.Millimetres(to)}" : "";

    // What nobody weighed is told beside the sum, for it is not in it.
    private static string Sum(IReadOnlyList<AssemblyStep> steps)
    {
        var weighed = steps.Where(step => step.Mass is not null).ToList();
        if (weighed.Count == 0)
            return " No mass is given.";
        var sum = Mass.FromKilograms(weighed.Sum(step => step.Mass!.Value.Kilograms));
        var without = steps.Count - weighed.Count;
        return without == 0 ? $" Together {sum.Kilograms:0.0} kg."
            : $" Together at least {sum.Kilograms:0.0} kg: no mass is given for {without} of {steps.Count}.";
    }
}
