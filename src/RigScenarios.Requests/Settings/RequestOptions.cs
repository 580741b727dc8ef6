using RigScenarios.Notebooks.Parameters;
using RigScenarios.Requests.Reading;

namespace RigScenarios.Requests.Settings;

/// <summary>What requests of pages are answered from, and within which bounds.</summary>
public sealed record RequestOptions
{
    /// <summary>The folder that holds <c>parts</c> and <c>scenarios</c>, the data that came with the program, with its full path.
    /// Only read.</summary>
    public required string DataFolder { get; init; }

    /// <summary>The folder where own scenario files are read and written, with its full path. Nothing is written anywhere
    /// else.</summary>
    public required string OwnFolder { get; init; }

    /// <summary>The folder of own files in words for people; null where they lie in none that a person could open.</summary>
    public string? OwnFolderInWords { get; init; }

    /// <summary>The folder from which its reader gives commands: commands that a page shows name files as seen from there. Null:
    /// the folder of own files.</summary>
    public string? CommandFolder { get; init; }

    /// <summary>Tells what day it is.</summary>
    public required TimeProvider Clock { get; init; }

    /// <summary>Makes the notebooks, which take scenario files from the given folders; null where pages have none.</summary>
    public Func<IReadOnlyList<ScenarioFolder>, INotebookShelf>? Notebooks { get; init; }

    /// <summary>How much one page may ask for.</summary>
    public RequestLimits Limits { get; init; } = new();

    /// <summary>What the program can do besides answering.</summary>
    public PageAbilities Abilities { get; init; } = PageAbilities.None;

    /// <summary>Told in one line of a fault that no reader is to blame for; null where nobody listens.</summary>
    public Action<string>? Report { get; init; }

    /// <summary>Where a person finds what was reported, as the first words of a sentence.</summary>
    public string ReportPlace { get; init; } = "The window where the program runs";
}
