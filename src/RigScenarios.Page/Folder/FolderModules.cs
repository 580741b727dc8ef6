using System.Text.RegularExpressions;

namespace RigScenarios.Page.Folder;

/// <summary>All scripts that a page's own ones import, and those in turn. A browser finds each of them only in the one before;
/// on a slow network a page whose head names them all has them in one turn instead of five.</summary>
internal static partial class FolderModules
{
    /// <summary>The lines of a head that name them, in their order.</summary>
    /// <param name="scripts">The page's own scripts by their names in the site, such as <c>rig/rig.js</c>.</param>
    public static string Preloads(params IReadOnlyList<string> scripts) => string.Concat(Imported(scripts)
        .Select(name => $"<link rel=\"modulepreload\" href=\"assets/{name}\">\n"));

    /// <summary>What the scripts import, without themselves.</summary>
    private static IEnumerable<string> Imported(IReadOnlyList<string> scripts)
    {
        var known = new HashSet<string>(scripts, StringComparer.Ordinal);
        var waiting = new Queue<string>(scripts);
        while (waiting.TryDequeue(out var script))
        {
            foreach (Match import in Import().Matches(SiteFiles.Text(script)))
            {
                var name = new Uri(new Uri($"https://site.invalid/{script}"), import.Groups["from"].Value).AbsolutePath[1..];
                if (!known.Add(name))
                    continue;
                waiting.Enqueue(name);
                yield return name;
            }
        }
    }

    // Those at the head of a script: what is imported later is asked for when it is wanted.
    [GeneratedRegex("^(import|export) [^;\"]*\"(?<from>\\.[^\"]*)\";|^import \"(?<from>\\.[^\"]*)\";",
        RegexOptions.ExplicitCapture | RegexOptions.Multiline, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Import();
}
