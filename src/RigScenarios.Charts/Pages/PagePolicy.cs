using System.Security.Cryptography;
using System.Text;

namespace RigScenarios.Charts.Pages;

/// <summary>
/// The content policy of a page that is kept as a file: what a browser runs and fetches when somebody opens it, wherever it came
/// from by then. Only the scripts that were written into it are run, each known by its hash; nothing is fetched from anywhere.
/// </summary>
/// <remarks>Content Security Policy Level 3 (W3C), sections 2.3.1 (hashes) and 3.3 (the meta element).</remarks>
internal static class PagePolicy
{
    /// <summary>The element that belongs in the page's head, before any script.</summary>
    /// <param name="scripts">The text of each script of the page's own, to the letter.</param>
    public static string Of(IEnumerable<string> scripts)
    {
        var hashes = scripts.Select(Hash).Distinct(StringComparer.Ordinal);
        return "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; "
            + $"script-src {string.Join(' ', hashes)}; style-src 'unsafe-inline'; img-src data: blob:; font-src data:; "
            + "base-uri 'none'; form-action 'none'\">\n";
    }

    // A browser hashes what it has read, in which every end of a line is one character.
    private static string Hash(string script) =>
        $"'sha256-{Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(script.ReplaceLineEndings("\n"))))}'";
}
