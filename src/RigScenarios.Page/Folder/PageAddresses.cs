using System.Text;
using System.Text.RegularExpressions;

namespace RigScenarios.Page.Folder;

/// <summary>Sees to it that a page of the folder loads nothing, and leads nowhere, that is not in the folder.</summary>
internal static partial class PageAddresses
{
    /// <summary>Looks at every page at the top of the folder.</summary>
    /// <param name="files">The files of the folder.</param>
    /// <exception cref="InvalidOperationException">A page names what is not there.</exception>
    public static void Check(IReadOnlyDictionary<string, byte[]> files)
    {
        foreach (var (name, content) in files.Where(file => FolderPage.Sources.ContainsKey(file.Key)))
        {
            foreach (Match match in Address().Matches(Encoding.UTF8.GetString(content)))
            {
                var address = match.Groups["address"].Value;
                var file = Uri.UnescapeDataString(address.Split('?')[0]);
                if (!address.StartsWith('#') && !files.ContainsKey(file))
                    throw new InvalidOperationException($"{name} names \"{address}\", which the folder does not have.");
            }
        }
    }

    [GeneratedRegex("\\b(?:href|src)=\"(?<address>[^\"]*)\"", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Address();
}
