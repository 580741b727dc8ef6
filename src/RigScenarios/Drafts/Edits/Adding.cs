using RigScenarios.Parts;
using RigScenarios.Scenarios;

namespace RigScenarios.Drafts.Edits;

/// <summary>Adds a thing to the rig.</summary>
public static class Adding
{
    /// <summary>A listed part. It is named by its question (<c>monitor</c>, <c>monitor-2</c>), anything else on the rig by its
    /// part.</summary>
    /// <param name="given">The rig.</param>
    /// <param name="question">The key of the question that it answers.</param>
    /// <param name="part">The id of the part.</param>
    /// <exception cref="ScenarioProblemsException">There is no such question or part, the part can't stand there, or there is
    /// one already where there can be only one.</exception>
    public static EditedRig Listed(GivenRig given, string question, string part)
    {
        var asked = Question(given, question);
        return Add(given, asked, asked.Key == "other" ? part : asked.Key, part, Choosing.Listed(given, asked, part));
    }

    /// <summary>A thing of one's own figures, which are still to be given.</summary>
    /// <param name="given">The rig.</param>
    /// <param name="question">The key of the question that it answers.</param>
    /// <exception cref="ScenarioProblemsException">As for <see cref="Listed"/>.</exception>
    public static EditedRig Own(GivenRig given, string question)
    {
        var asked = Question(given, question);
        return Add(given, asked, asked.Key, null, KitNames.NewOwn(asked));
    }

    private static EditedRig Add(GivenRig given, RigQuestion question, string wish, string? id, Part part)
    {
        var scenario = given.Scenario;
        var name = KitNames.Free(scenario, wish);
        if (id is null)
        {
            id = KitNames.OwnId(name);
            scenario = scenario with { Parts = scenario.Parts.With(id, part) };
        }
        var group = id.StartsWith(OwnPart.IdStart, StringComparison.Ordinal) && question.Key == RigQuestions.Device
            ? ThingGroup.Device : RigThings.GroupOf(question.Key, part);
        return new EditedRig(given.With(scenario with
        {
            Kit = scenario.Kit.With(name, new KitItem(id)),
            Builds = scenario.Builds.With(given.Frame.Build,
                Placing.With(given.Build, name, group, question.Key == RigQuestions.Camera)),
        }), name);
    }

    private static RigQuestion Question(GivenRig given, string key)
    {
        ArgumentNullException.ThrowIfNull(given);
        var question = RigQuestions.Find(key) ?? throw Refused.Because("question", $"There is no question \"{key}\".",
            string.Join(", ", RigQuestions.All.Select(question => question.Key)),
            NearestName.To(key, RigQuestions.All.Select(question => question.Key)));
        return question.Many || RigThings.Of(given).All(thing => thing.Question != key) ? question
            : throw Refused.Because("question", $"There is another {question.Label.ToLowerInvariant()} on the rig already.",
                "one of the two taken off, or another part chosen for it");
    }
}
