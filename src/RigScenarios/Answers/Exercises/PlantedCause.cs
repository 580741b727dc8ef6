namespace RigScenarios.Answers.Exercises;

/// <summary>One thing that was made wrong on a sound rig, with what puts it right.</summary>
public sealed record PlantedCause
{
    /// <summary>What it is about; two causes of an exercise are never about the same.</summary>
    public required string Slot { get; init; }

    /// <summary>What kind of thing is wrong.</summary>
    public required CauseKind Kind { get; init; }

    /// <summary>What is wrong, in a sentence.</summary>
    public required string Words { get; init; }

    /// <summary>The fields that make it wrong, in the order in which they are set.</summary>
    public required IReadOnlyList<FieldSetting> Settings { get; init; }

    /// <summary>What puts it right, with its price where something is bought.</summary>
    public required RigChange Repair { get; init; }

    /// <summary>Three hints: which question to look at, which thing, which figure.</summary>
    public required IReadOnlyList<string> Hints { get; init; }
}

/// <summary>A way to make a rig wrong, in several degrees.</summary>
/// <param name="Slot">What it is about.</param>
/// <param name="Group">The question in which it is likely to show.</param>
/// <param name="MildFirst">The degrees, the mildest first.</param>
internal sealed record CauseToTry(string Slot, QuestionKind Group, IReadOnlyList<PlantedCause> MildFirst);
