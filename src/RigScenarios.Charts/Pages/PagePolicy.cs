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
    public static string Of(IEnumerable<string> scripts) => Element(scripts, "");

    /// <summary>The same for a page whose other scripts and styles lie as files beside it, on its own server or disk.</summary>
    /// <param name="scripts">The text of each script that stands in the page, to the letter.</param>
    public static string WithFiles(IEnumerable<string> scripts) => Element(scripts, "'self' ");

    private static string Element(IEnumerable<string> scripts, string from)
    {
        var hashes = string.Join(' ', scripts.Select(Hash).Distinct(StringComparer.Ordinal));
        return "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; "
            + $"script-src {from}{hashes}; style-src {from}'unsafe-inline'; "
            + $"img-src {from}data: blob:; font-src data:; base-uri 'none'; form-action 'none'\">\n";
    }

    // A browser hashes what it has read, in which every end of a line is one character.
    private static string Hash(string script) =>
        $"'sha256-{Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(script.ReplaceLineEndings("\n"))))}'";
}
