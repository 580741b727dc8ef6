using System.Text.Json;
using System.Text.RegularExpressions;

namespace RigScenarios.Page.Saved;

/// <summary>
/// Scripts that import each other, made to be carried by a page that has no addresses to load them from: each names what it
/// imports by the name under which the page carries it, and stands after all of that.
/// </summary>
/// <remarks>ECMAScript 2023, sections 16.2.2 (imports), 16.2.3 (exports from), 13.3.10 (import calls), 13.3.12
/// (import.meta).</remarks>
internal static partial class CarriedScripts
{
    /// <summary>What stands before a script's name where another one imports it; <c>carried.js</c> puts an address
    /// there.</summary>
    private const string Carried = "carried:";

    /// <summary>What stands before a file's name where a script asks for its own address: as in <c>carried.js</c>.</summary>
    private const string Base = "https://carried.invalid/";

    /// <summary>The scripts that are needed, each after all that it imports; the same ones in the same order every
    /// time.</summary>
    /// <param name="files">All scripts by their paths, with "/" between the steps.</param>
    /// <param name="roots">The scripts that a page begins with, and those that are imported by a name found while they
    /// run.</param>
    /// <exception cref="InvalidOperationException">Scripts import each other in a circle, or what is not there.</exception>
    public static IReadOnlyList<(string Name, string Text)> Of(IReadOnlyDictionary<string, string> files,
        IEnumerable<string> roots)
    {
        var (ordered, begun) = (new List<(string, string)>(), new HashSet<string>(StringComparer.Ordinal));
        foreach (var root in roots)
            Add(root, []);
        return ordered;

        void Add(string name, IReadOnlyList<string> path)
        {
            if (path.Contains(name))
                throw new InvalidOperationException(
                    $"Scripts import each other in a circle: {string.Join(", ", [.. path, name])}.");
            if (!begun.Add(name))
                return;
            if (!files.TryGetValue(name, out var text))
                throw new InvalidOperationException(
                    $"There is no script {name}, which {(path.Count > 0 ? path[^1] : "a page")} imports.");
            text = Imports().Replace(text, match =>
            {
                var other = PathFrom(name, match.Groups["path"].Value);
                Add(other, [.. path, name]);
                return $"{match.Groups["head"].Value}\"{Carried}{other}";
            });
            text = Calls().Replace(text, "globalThis.carried.load(");
            ordered.Add((name, text.Replace("import.meta.url", JsonSerializer.Serialize(Base + name), StringComparison.Ordinal)));
        }
    }

    private static string PathFrom(string name, string path) => new Uri(new Uri(Base + name), path).AbsolutePath[1..];

    // Where a line begins, as all of ours are written; no text and no comment does.
    [GeneratedRegex("""^(?<head>import\s*|(?:import|export)\s[^;'"=()]*?\sfrom\s*)"(?<path>\.{1,2}/[^"]+)(?=")""",
        RegexOptions.Multiline | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 5000)]
    private static partial Regex Imports();

    [GeneratedRegex("""(?<![\w.$])import\(""", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 5000)]
    private static partial Regex Calls();
}
