using RigScenarios.Builds;
using RigScenarios.Days;
using RigScenarios.Files.Formats;
using RigScenarios.Parts;
using RigScenarios.Scenarios;
using UnitsNet;

namespace RigScenarios.Drafts;

/// <summary>
/// One's own rig while it is being described: one build and one day, in the words of a form. It can be incomplete; what a form
/// doesn't show stays in the scenario that it was made from and goes back there.
/// </summary>
public sealed record RigDraft
{
    /// <summary>What to call it; null where it has no name yet.</summary>
    public string? Title { get; init; }

    /// <summary>How the rig is carried.</summary>
    public Stance Stance { get; init; }

    /// <summary>The things on the rig, by their names in the kit.</summary>
    public OrderedMap<DraftThing> Things { get; init; } = OrderedMap<DraftThing>.Empty;

    /// <summary>
    /// Things that were moved along their mounts, by their names in the kit, each with how far forward it sits on what carries
    /// it. Everything else stays where the
    /// scenario has it, or at the usual place of its kind. What isn't on the rig or doesn't slide is passed over.
    /// </summary>
    public OrderedMap<Length> Places { get; init; } = OrderedMap<Length>.Empty;

    /// <summary>How far ahead of the body's tripod socket the camera plate is screwed on, from -3 to 3 m; null where nobody
    /// said.</summary>
    public Length? SlideMiddle { get; init; }

    /// <summary>Charge of the battery at the start, 1 to 100 %; null means full.</summary>
    public Ratio? Charge { get; init; }

    /// <summary>Share of the capacity that age has left, 1 to 100 %; null if not known.</summary>
    public Ratio? CapacityLeft { get; init; }

    /// <summary>How many times the resistance of a new battery it has, 1 to 20; null if not known.</summary>
    public double? ResistanceGrowth { get; init; }

    /// <summary>The battery's own temperature at the start, -50 to 60 °C; null means that of the air.</summary>
    public Temperature? StartTemperature { get; init; }

    /// <summary>How many batteries like that of the rig there are, 1 to 20; null where nobody said, and the answer is for
    /// one.</summary>
    public int? BatteryCount { get; init; }

    /// <summary>How many batteries the charger takes at once, 1 to 16; null for no charger.</summary>
    public int? ChargerBays { get; init; }

    /// <summary>Charging current of each bay; null for <see cref="DraftBatteries.UsualCurrent"/>.</summary>
    public ElectricCurrent? ChargerCurrent { get; init; }

    /// <summary>The hours of every day in which the charger has power; null for all hours.</summary>
    public ClockRange? PowerHours { get; init; }

    /// <summary>The charge at which a battery is swapped, 1 to 100 %; null for 15 %.</summary>
    public Ratio? SwapAt { get; init; }

    /// <summary>Temperature of the air, -50 to 60 °C; null where it isn't said yet.</summary>
    public Temperature? Ambient { get; init; }

    /// <summary>When the first block begins; null if clock times don't matter.</summary>
    public TimeOnly? Starts { get; init; }

    /// <summary>What the day is called; null to use its short name.</summary>
    public string? DayTitle { get; init; }

    /// <summary>The blocks of the day, in order. States of things that are nowhere in the kit are dropped.</summary>
    public OrderedMap<DayBlock> Blocks { get; init; } = OrderedMap<DayBlock>.Empty;

    /// <summary>The draft that a form begins with: nothing on the rig yet, a full battery, the first of the typical
    /// days.</summary>
    public static RigDraft Blank { get; } = new RigDraft { Title = "My rig",
        Charge = Ratio.FromPercent(100) }.With(TypicalDays.All[0]);

    /// <summary>The draft with a typical day in place of its own.</summary>
    public RigDraft With(TypicalDay day)
    {
        ArgumentNullException.ThrowIfNull(day);
        return this with { Starts = day.Starts, Ambient = day.Ambient, DayTitle = day.Title, Blocks = day.Blocks };
    }

    /// <summary>The draft with one more thing. It is named by its role (<c>monitor</c>, <c>monitor-2</c>), anything else on the
    /// rig by its part.</summary>
    public RigDraft With(DraftThing thing)
    {
        ArgumentNullException.ThrowIfNull(thing);
        var word = thing is { Role: RigRole.Other, Part: { } part } ? part : ChoiceFormat<RigRole>.Word(thing.Role);
        var name = word;
        for (var number = 2; Things.ContainsKey(name) || (name == Build.BatteryFeed && thing.Role != RigRole.Battery); number++)
            name = $"{word}-{number}";
        return this with { Things = Things.With(name, thing) };
    }

    /// <summary>The draft that a form shows of one build and one day of a scenario.</summary>
    /// <param name="scenario">A scenario that was read or checked.</param>
    /// <param name="build">The build's short name.</param>
    /// <param name="day">The day's short name.</param>
    /// <exception cref="ScenarioProblemsException">The scenario has no such build or day.</exception>
    public static RigDraft Of(Scenario scenario, string build, string day) => DraftReading.Of(scenario, build, day);

    /// <summary>
    /// The scenario with this draft in it. Everything that the form doesn't show stays as it was. Parts that the scenario can't
    /// see yet
    /// are copied into it, so that a new scenario needs no parts file.
    /// </summary>
    /// <param name="before">The scenario to change; null makes a new one.</param>
    /// <param name="library">The parts to choose from.</param>
    /// <param name="build">The build's short name; added if there is none of it.</param>
    /// <param name="day">The day's short name; added if there is none of it.</param>
    /// <exception cref="ScenarioProblemsException">The draft is incomplete or does not add up; the paths are those of the
    /// draft.</exception>
    public Scenario ApplyTo(Scenario? before, OrderedMap<Part> library, string build, string day)
    {
        var answer = DraftAnswer.Of(this, before, library, build, day, run: false, known: null, CancellationToken.None);
        return answer.Scenario
            ?? throw new ScenarioProblemsException([.. answer.Problems.Where(problem => problem.Severity == Severity.Error),
            .. answer.Missing.Select(DraftAnswer.StillMissing)]);
    }
}
