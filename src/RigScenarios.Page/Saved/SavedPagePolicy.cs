using RigScenarios.Page.Folder;

namespace RigScenarios.Page.Saved;

/// <summary>
/// The content policy of a page that carries the library: the scripts that stand in it are known by their hashes, those that it
/// takes out of itself run from its own memory, and nothing is fetched from, or sent, anywhere.
/// </summary>
/// <remarks>Content Security Policy Level 3 (W3C), sections 2.3.1 (hashes), 3.3 (the meta element), 4.4
/// (<c>'wasm-unsafe-eval'</c>: WebAssembly is compiled, and no text is run as a script) and 6.1.14 (workers). An address of a
/// page's own memory (<c>blob:</c>; File API, W3C, section 8.3) is made by a script that runs already, and no markup can
/// guess it.</remarks>
internal static class SavedPagePolicy
{
    /// <summary>The element that belongs in the page's head, before any script.</summary>
    /// <param name="inline">The text of each script that stands in the page, to the letter.</param>
    public static string Of(params IEnumerable<string> inline) =>
        "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; "
            + $"script-src {string.Join(' ', inline.Select(script => $"'{FolderPolicy.HashOf(script)}'"))} blob: "
            + "'wasm-unsafe-eval'; worker-src blob:; style-src 'unsafe-inline'; img-src data: blob:; font-src data:; "
            + "base-uri 'none'; form-action 'none'\">\n";
}
