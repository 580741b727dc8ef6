using System.Collections.Concurrent;
using RigScenarios.Builds;
using RigScenarios.Files;
using RigScenarios.Files.Formats;
using RigScenarios.Parts;
using RigScenarios.Scenarios;

namespace RigScenarios.Search.Rigs;

/// <summary>
/// Which candidates fit the build, and which fit each other: mounts and plugs, voltages, outlets, and that one thing of the kit
/// can't be in two places. Only what the parts say rules out; where a part says nothing of its interfaces, nothing is.
/// </summary>
/// <param name="question">The question.</param>
public sealed class RigFits(BestRigQuestion question)
{
    private readonly ConcurrentDictionary<(int PlaceA, int A, int PlaceB, int B), string> reasons = new();

    /// <summary>Why a candidate does not fit the rest of the build; empty if nothing speaks against it.</summary>
    /// <param name="place">The place, from 0.</param>
    /// <param name="candidate">Its candidate, from 0.</param>
    public string Reason(int place, int candidate) =>
        reasons.GetOrAdd((place, candidate, -1, -1), _ => Find((place, candidate)));

    /// <summary>Why two candidates do not fit each other; empty if nothing speaks against it.</summary>
    /// <param name="placeA">A place, from 0.</param>
    /// <param name="a">Its candidate.</param>
    /// <param name="placeB">Another place.</param>
    /// <param name="b">Its candidate.</param>
    public string Reason(int placeA, int a, int placeB, int b) => placeA > placeB ? Reason(placeB, b, placeA, a)
        : reasons.GetOrAdd((placeA, a, placeB, b), _ => Find((placeA, a), (placeB, b)));

    /// <summary>Every pair and every single candidate that is ruled out, with its reason.</summary>
    public IEnumerable<RejectedPair> Rejected()
    {
        var places = question.Places;
        for (var a = 0; a < places.Count; a++)
        {
            for (var one = 0; one < places[a].Candidates.Count; one++)
            {
                if (Reason(a, one) is { Length: > 0 } alone)
                    yield return new(a, one, null, null, alone);
                for (var b = a + 1; b < places.Count; b++)
                {
                    for (var two = 0; two < places[b].Candidates.Count; two++)
                    {
                        if (Reason(a, one, b, two) is { Length: > 0 } together)
                            yield return new(a, one, b, two, together);
                    }
                }
            }
        }
    }

    private string Find(params (int Place, int Candidate)[] chosen)
    {
        if (chosen.Any(one => question.Places[one.Place].Candidates[one.Candidate].IsEmpty))
            return "";
        var scenario = chosen.Aggregate(question.Scenario, (all, one) => ChosenRig.With(all, question.Best.Build,
            question.Places[one.Place], question.Places[one.Place].Candidates[one.Candidate]));
        var things = chosen.Select(one => question.Places[one.Place].Replaces).ToHashSet(StringComparer.Ordinal);
        return TakenTwice(chosen) ?? Interface(scenario, things) ?? Outlet(scenario, things) ?? Voltage(scenario, things) ?? "";
    }

    /// <summary>Whether what decides is changed by exactly these places: with fewer of them it is their own reason, and with more
    /// it is told for those together.</summary>
    private bool IsDecidedBy(HashSet<string> things, IEnumerable<string> deciding) =>
        deciding.Where(thing => question.Places.Any(place => place.Replaces == thing)).ToHashSet().SetEquals(things);

    private string? TakenTwice((int Place, int Candidate)[] chosen)
    {
        foreach (var (place, number) in chosen)
        {
            if (question.Places[place].Candidates[number].FromKit is not { } item || question.Scenario.Kit[item].Count > 1)
                continue;
            var free = question.Places.FirstOrDefault(other => other.Replaces == item);
            if (chosen.Length == 1 && free is null && question.Start.Things.Contains(item))
                return $"The kit has one \"{item}\", and it is in its own place of the build.";
            if (chosen.Length == 2)
            {
                var other = chosen[chosen[0].Place == place ? 1 : 0];
                var there = question.Places[other.Place];
                if (there.Candidates[other.Candidate].FromKit == item
                    || (there.Replaces == item && there.Candidates[other.Candidate].IsNow))
                    return $"The kit has one \"{item}\", and it can't be in two places.";
            }
        }
        return null;
    }

    private string? Interface(Scenario scenario, HashSet<string> things)
    {
        var build = scenario.Builds[question.Best.Build];
        foreach (var thing in build.Things.Distinct())
        {
            if (MateOf(scenario, build, thing) is not { } mate || !IsDecidedBy(things, [thing, mate])
                || scenario.PartOf(thing) is not { } part || scenario.PartOf(mate) is not { Gives.Count: > 0 } holds)
                continue;
            if (part.Needs.FirstOrDefault(need => !holds.Gives.Contains(need)) is { } missing)
                return $"The {part.Name} needs \"{missing}\"; the {holds.Name} gives {Listed(holds.Gives)}.";
        }
        return null;
    }

    /// <summary>What holds a thing: the battery plate a battery, the tripod a head, everything else what it sits on.</summary>
    private static string? MateOf(Scenario scenario, Build build, string thing) =>
        thing == build.Battery.Item && build.Plate is not null ? build.Plate
        : scenario.PartOf(thing)?.Kind == PartKind.Head
            ? build.Things.FirstOrDefault(other => scenario.PartOf(other)?.Kind == PartKind.Tripod)
        : build.Places.TryGetValue(thing, out var place) && place.On is { } on && build.Things.Contains(on) ? on : null;

    private string? Outlet(Scenario scenario, HashSet<string> things)
    {
        var build = scenario.Builds[question.Best.Build];
        foreach (var (name, fedBy, outlet, _) in LinkLookup.Fed(build).Where(item => item.Outlet is not null))
        {
            var feed = fedBy ?? build.StandardFeed;
            if (!IsDecidedBy(things, MayBeLeftOut(name) ? [name, feed] : [feed])
                || LinkLookup.Outlets(build, feed, scenario.PartOf).ContainsKey(outlet!))
                continue;
            return $"The {scenario.PartOf(feed)?.Name} has no outlet \"{outlet}\", on which the {name} hangs.";
        }
        return null;
    }

    private bool MayBeLeftOut(string thing) =>
        question.Places.Any(place => place.Replaces == thing && place.Candidates.Any(candidate => candidate.IsEmpty));

    private string? Voltage(Scenario scenario, HashSet<string> things)
    {
        var build = scenario.Builds[question.Best.Build];
        var log = new ReadLog("");
        VoltageCheck.Run(scenario, build, $"builds.{question.Best.Build}", log);
        foreach (var problem in log.Problems.Where(problem => problem.Severity == Severity.Error))
        {
            var steps = problem.Path.Split('.');
            if (IsDecidedBy(things, steps is [_, _, "battery", ..] ? [build.Battery.Item] : Deciding(build, steps[^1])))
                return problem.Problem;
        }
        return null;
    }

    /// <summary>What decides the voltage that a thing gets: itself, what holds the voltage on the way to it, and whatever has an
    /// outlet on that way that is named, for it may hold one too.</summary>
    private static IEnumerable<string> Deciding(Build build, string thing)
    {
        yield return thing;
        var fed = LinkLookup.Fed(build).DistinctBy(item => item.Name).ToDictionary(item => item.Name, StringComparer.Ordinal);
        for (var (at, steps) = (thing, 0); fed.TryGetValue(at, out var link) && steps <= fed.Count; steps++)
        {
            at = link.FedBy ?? build.StandardFeed;
            if (link.Outlet is not null || build.Regulators.ContainsKey(at))
                yield return at;
            if (build.Regulators.ContainsKey(at))
                yield break;
        }
        yield return build.Battery.Item;
    }

    private static string Listed(Interfaces names) => string.Join(", ", names.Select(name => $"\"{name}\""));
}

/// <summary>Candidates that are ruled out before anything is run.</summary>
/// <param name="Place">A place, from 0.</param>
/// <param name="Candidate">Its candidate.</param>
/// <param name="OtherPlace">The place of the other; null where the candidate does not fit the rest of the build.</param>
/// <param name="Other">The other's candidate.</param>
/// <param name="Reason">Why, in a sentence.</param>
public sealed record RejectedPair(int Place, int Candidate, int? OtherPlace, int? Other, string Reason);
