namespace RigScenarios.Page.Folder;

/// <summary>What goes into the folder that runs in a browser by itself.</summary>
public sealed record FolderContent
{
    /// <summary>The published browser build: the folder in which <c>boot.js</c> lies.</summary>
    public required string BrowserFolder { get; init; }

    /// <summary>The same with the cells of notebooks in it, for their page; null where no notebook answers in the
    /// browser.</summary>
    public string? NotebookBrowserFolder { get; init; }

    /// <summary>The folder with parts, samples and field notes.</summary>
    public required string DataFolder { get; init; }

    /// <summary>The folder with the notebooks and their pictures.</summary>
    public required string NotebookFolder { get; init; }

    /// <summary>Notebooks as executed pages, in reading order; none where they were left out.</summary>
    public IReadOnlyList<NotebookAsPage> Notebooks { get; init; } = [];

    /// <summary>The names of those notebooks that the browser build answers for; none where it has no cells of them.</summary>
    public IReadOnlyList<string> AnsweringNotebooks { get; init; } = [];

    /// <summary>The version of the program, as its pages name it, such as "0.1.0".</summary>
    public required string Version { get; init; }
}
