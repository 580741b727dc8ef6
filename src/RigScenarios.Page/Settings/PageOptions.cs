namespace RigScenarios.Page.Settings;

/// <summary>What a page server shows, where own files go, and who may reach it.</summary>
public sealed record PageOptions
{
    /// <summary>The port that is tried first unless another is asked for.</summary>
    public const int UsualPort = 27410;

    /// <summary>The folder of the notebooks (<c>.ipynb</c>).</summary>
    public required string NotebookFolder { get; init; }

    /// <summary>The folder that holds <c>parts</c> and <c>scenarios</c>, the data that came with the program. Only
    /// read.</summary>
    public required string DataFolder { get; init; }

    /// <summary>The folder where own scenario files are read and written. Nothing is written anywhere else.</summary>
    public required string RigFolder { get; init; }

    /// <summary>The folder from which its reader gives commands: commands that a page shows name files as seen from there. Null:
    /// the folder of own files.</summary>
    public string? CommandFolder { get; init; }

    /// <summary>The port; the next free one is taken where it is in use. 0 takes any free one.</summary>
    public int Port { get; init; } = UsualPort;

    /// <summary>Whether other machines on this network may reach the server; otherwise only this machine.</summary>
    public bool Listen { get; init; }

    /// <summary>
    /// Whether the notebooks are compiled in the background as soon as the server runs, while their reader still looks at the
    /// shelf; otherwise each when it is first opened.
    /// </summary>
    public bool Prepares { get; init; }

    /// <summary>The library that a saved page carries so that its controls answer; null where no such page can be
    /// made.</summary>
    public ICarriedLibrary? CarriedLibrary { get; init; }

    /// <summary>How much one reader may ask for.</summary>
    public PageLimits Limits { get; init; } = new();

    /// <summary>How many living pages may be open at once.</summary>
    public int MostReaders => Listen ? Limits.ReadersOnNetwork : Limits.Readers;

    /// <summary>Told in one line when something goes wrong inside the server; null where nobody listens.</summary>
    public Action<string>? Report { get; init; }
}
