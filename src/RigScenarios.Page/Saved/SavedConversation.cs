using RigScenarios.Notebooks.Documents;

namespace RigScenarios.Page.Saved;

/// <summary>What a page of a notebook hears from the program behind it until one run is done: by it a saved page shows at once
/// what it was saved with.</summary>
public sealed record SavedConversation
{
    /// <summary>The notebook.</summary>
    public required Notebook Notebook { get; init; }

    /// <summary>The values that were given, by the parameters' names, as a person writes them.</summary>
    public required IReadOnlyDictionary<string, string> Given { get; init; }

    /// <summary>The reader's own scenario files that the run took, by their names: texts that need no other file.</summary>
    public required IReadOnlyDictionary<string, string> OwnFiles { get; init; }

    /// <summary>The message with which the line began, a JSON object.</summary>
    public required string Greeting { get; init; }

    /// <summary>The messages of the run, JSON objects, without what differs from run to run (numbers of runs,
    /// times).</summary>
    public required IReadOnlyList<string> Messages { get; init; }

    /// <summary>The answers that the run showed, as text, in their order.</summary>
    public required IReadOnlyList<string> Answers { get; init; }

    /// <summary>The cautions that those came with, each once.</summary>
    public required IReadOnlyList<string> Cautions { get; init; }

    /// <summary>What stopped it; null where it was done.</summary>
    public NotebookFailure? Failure { get; init; }
}
