using System.Globalization;
using RigScenarios.Balance;
using RigScenarios.Builds;
using RigScenarios.Files.Formats;
using RigScenarios.Parts;
using RigScenarios.Scenarios;
using UnitsNet;

namespace RigScenarios.Answers;

/// <summary>
/// Things that a reader moved along their mounts, as a short text: <c>plate -160 mm; pad -150 mm</c>. Each is named by its name
/// in the kit; the distance runs
/// from the mounting point of what carries it forward to its own.
/// </summary>
public static class MovedPlaces
{
    /// <summary>How such a text is written, for messages.</summary>
    public const string Accepted =
        "things that slide, each with how far forward it sits on its mount, such as \"plate -160 mm; pad -150 mm\"; nothing "
            + "for none moved";

    // Rounding to the tenth of a millimetre that the text carries must not push a thing off the end of its stretch.
    private static readonly Length Slack = Length.FromMillimeters(0.051);

    private const int LongestText = 4000;

    /// <summary>The scenario with things of one build moved; all places of that build are then given ones. An empty text changes
    /// nothing.</summary>
    /// <param name="scenario">A scenario that was read or checked.</param>
    /// <param name="build">The build's short name.</param>
    /// <param name="text">What was moved.</param>
    /// <exception cref="ScenarioProblemsException">
    /// There is no such build, a thing of the text is not on it or does not slide, or a distance lies outside of what its mount
    /// allows. Carries all problems.
    /// </exception>
    public static Scenario Apply(Scenario scenario, string build, string text)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        ArgumentNullException.ThrowIfNull(text);
        var chosen = Chosen.From(scenario.Builds, build, "build", "builds");
        var log = new ReadLog("");
        var moved = Read(text, log);
        if (moved.Count == 0 && !log.HasErrors)
            return scenario;
        var rig = ScenarioBalance.InPlace(chosen, build, scenario);
        foreach (var (name, forward) in moved)
            Check(rig, name, forward, log);
        return log.HasErrors ? throw new ScenarioProblemsException([.. log.Problems]) : Moved(scenario, build, rig, moved);
    }

    /// <summary>The things of a text with their distances.</summary>
    /// <param name="text">What was moved.</param>
    /// <exception cref="ScenarioProblemsException">The text can't be read. Carries all problems.</exception>
    public static OrderedMap<Length> Read(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var log = new ReadLog("");
        var moved = Read(text, log);
        return log.HasErrors ? throw new ScenarioProblemsException([.. log.Problems]) : moved;
    }

    /// <summary>The text that <see cref="Read(string)"/> reads, to a tenth of a millimetre.</summary>
    public static string Text(IEnumerable<KeyValuePair<string, Length>> moved)
    {
        ArgumentNullException.ThrowIfNull(moved);
        return string.Join("; ",
            moved.Select(thing => string.Create(CultureInfo.InvariantCulture,
            $"{thing.Key} {Math.Round(thing.Value.Millimeters, 1) + 0.0:0.#} mm")));
    }

    /// <summary>What of a build can be moved: each thing that slides with the stretch of its mount and where it sits.</summary>
    /// <param name="scenario">A scenario that was read or checked.</param>
    /// <param name="build">The build's short name.</param>
    /// <exception cref="ScenarioProblemsException">There is no such build, or nothing of it has a mass.</exception>
    public static IReadOnlyList<MoveablePart> Of(Scenario scenario, string build)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        return Of(ScenarioBalance.InPlace(Chosen.From(scenario.Builds, build, "build", "builds"), build, scenario));
    }

    /// <summary>What of a build in place can be moved.</summary>
    public static IReadOnlyList<MoveablePart> Of(BuildInPlace rig)
    {
        ArgumentNullException.ThrowIfNull(rig);
        return [.. rig.Moveable.Select(thing => new MoveablePart(thing.Key, rig.Things[thing.Key].Name,
            rig.Placed.Parts[thing.Key].Placement.Offset.X, thing.Value, rig.PlacesAssumed.Contains(thing.Key)))];
    }

    /// <summary>
    /// What is wrong with a text for a build, before other changes of the scenario are known: the stretch of a usual place
    /// changes with the parts around it, so
    /// it is left to <see cref="Apply"/>.
    /// </summary>
    /// <param name="scenario">A scenario that was read or checked.</param>
    /// <param name="build">The build's short name.</param>
    /// <param name="text">What was moved.</param>
    /// <exception cref="ScenarioProblemsException">There is no such build, or nothing of it has a mass.</exception>
    public static IReadOnlyList<Diagnostic> Problems(Scenario scenario, string build, string text)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        ArgumentNullException.ThrowIfNull(text);
        var log = new ReadLog("");
        var moved = Read(text, log);
        if (moved.Count > 0)
        {
            var rig = ScenarioBalance.InPlace(Chosen.From(scenario.Builds, build, "build", "builds"), build, scenario);
            foreach (var (name, forward) in moved.Where(thing => !rig.PlacesAssumed.Contains(thing.Key)))
                Check(rig, name, forward, log);
        }
        return log.Problems;
    }

    /// <summary>The scenario with things moved that are known to slide; distances are taken as they are.</summary>
    internal static Scenario Moved(Scenario scenario, string build, BuildInPlace rig,
        IEnumerable<KeyValuePair<string, Length>> moved)
    {
        Build? result = null;
        foreach (var (name, forward) in moved)
        {
            // A drawing and its list count from what carries a thing; a place at the end of an arm counts from that end.
            var end = rig.Placed.Parts[name].Placement.Offset.X - (rig.Places[name].Forward ?? Length.Zero);
            var range = rig.Placed.Parts[name].Placement.OffsetXRange!;
            var to = UnitMath.Clamp(forward, range.Least, range.Greatest) - end;
            // The first makes all places given ones; the others only change theirs.
            result = result is null ? rig.Moved(name, to)
                : result with { Places = result.Places.With(name, result.Places[name] with { Forward = to }) };
        }
        return result is null ? scenario : scenario with { Builds = scenario.Builds.With(build, result) };
    }

    private static OrderedMap<Length> Read(string text, ReadLog log)
    {
        var moved = OrderedMap<Length>.Empty;
        if (text.Length > LongestText)
        {
            log.Error("", $"The text has {text.Length} characters; no rig has so many things to move.", Accepted);
            return moved;
        }
        foreach (var item in text.Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            var space = item.IndexOf(' ');
            if (space < 0)
            {
                log.Error("", $"Found \"{item}\", which is not a thing with a distance.", Accepted);
                continue;
            }
            var name = item[..space];
            if (!QuantityText.TryRead(item[space..], Length.Zero, "-160 mm", out var quantity, out var problem))
                log.Error(name, problem, Accepted);
            else if (moved.ContainsKey(name))
                log.Error(name, $"\"{name}\" stands there twice.", Accepted);
            else
                moved = moved.With(name, (Length)quantity);
        }
        return moved;
    }

    private static void Check(BuildInPlace rig, string name, Length forward, ReadLog log)
    {
        var slides = rig.Moveable.Select(thing => thing.Key).ToList();
        if (!rig.Places.ContainsKey(name))
            log.Error(name, $"There is no \"{name}\" on the rig.", slides.Count == 0 ? "nothing: no thing of this build slides"
                : string.Join(", ", slides), log.Nearest(name, slides));
        else if (rig.Placed.Parts[name].Placement.OffsetXRange is not { } range)
            log.Error(name, $"\"{name}\" does not slide on its mount: its place has no \"slides-from\" and \"slides-to\".",
                slides.Count == 0 ? "nothing: no thing of this build slides" : string.Join(", ", slides));
        else if (forward < range.Least - Slack || forward > range.Greatest + Slack)
            log.Error(name, $"{Millimetres(forward)} is outside of what its mount allows.",
                $"{Millimetres(range.Least)} to {Millimetres(range.Greatest)}");
    }

    private static string Millimetres(Length length) =>
        string.Create(CultureInfo.InvariantCulture, $"{Math.Round(length.Millimeters, 1) + 0.0:0.#} mm");
}

/// <summary>A thing that can be moved along its mount.</summary>
/// <param name="Name">Its name in the kit.</param>
/// <param name="Title">Its name for people.</param>
/// <param name="At">How far forward it sits on what carries it.</param>
/// <param name="Range">What its mount allows.</param>
/// <param name="IsUsual">Whether nobody gave its place, so that the usual one of its kind was taken.</param>
public sealed record MoveablePart(string Name, string Title, Length At, LengthRange Range, bool IsUsual);
