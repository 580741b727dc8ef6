using System.Security.Cryptography;
using System.Text;

namespace RigScenarios.Page.Folder;

/// <summary>
/// The content policy of the folder's pages, in the page itself, because a plain server sends none: scripts, styles, data and
/// workers come from the folder's own server and from nowhere else, and nothing is sent to another one.
/// </summary>
/// <remarks>Content Security Policy Level 3 (W3C), sections 2.3.1 (hashes), 3.3 (the meta element; it knows no
/// <c>frame-ancestors</c>) and 4.4 (<c>'wasm-unsafe-eval'</c>: WebAssembly is compiled, and no text is run as a
/// script).</remarks>
internal static class FolderPolicy
{
    /// <summary>The element that belongs in the page's head, before any script.</summary>
    /// <param name="inline">The text of each script that stands in the page itself, to the letter.</param>
    public static string Of(params IEnumerable<string> inline) =>
        "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; script-src 'self' 'wasm-unsafe-eval'"
            + $"{string.Concat(inline.Select(script => $" '{HashOf(script)}'"))}; worker-src 'self'; connect-src 'self'; "
            + "style-src 'self' 'unsafe-inline'; img-src 'self' data: blob:; font-src 'self'; manifest-src 'self'; "
            + "base-uri 'none'; form-action 'none'\">\n";

    // A browser hashes what it has read, in which every end of a line is one character.
    internal static string HashOf(string script) =>
        $"sha256-{Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(script.ReplaceLineEndings("\n"))))}";
}
