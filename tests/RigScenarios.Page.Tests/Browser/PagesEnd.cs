namespace RigScenarios.Page.Tests.Browser;

/// <summary>What answers the pages of a visit. The pages are the same, and so are the tests of the form.</summary>
public enum PagesEnd
{
    /// <summary>The local server.</summary>
    Server,

    /// <summary>The library in the browser, from a folder that a plain server hands out.</summary>
    Folder,
}
