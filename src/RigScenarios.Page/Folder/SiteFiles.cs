using System.Text;
using RigScenarios.Charts.Pages;

namespace RigScenarios.Page.Folder;

/// <summary>The files of the pages that lie inside the program.</summary>
internal static class SiteFiles
{
    private const string Prefix = "site/";

    /// <summary>The names of all files, each relative to the site, in their order.</summary>
    public static IReadOnlyList<string> Names { get; } = [.. typeof(SiteFiles).Assembly.GetManifestResourceNames()
        .Where(name => name.StartsWith(Prefix, StringComparison.Ordinal)).Select(name => name[Prefix.Length..])
        .Order(StringComparer.Ordinal)];

    /// <summary>The scripts and the style of figures, by the names under which pages ask for them.</summary>
    public static IReadOnlyDictionary<string, Func<string>> OfFigures { get; } =
        new Dictionary<string, Func<string>>(StringComparer.Ordinal)
        {
            ["plotly.js"] = () => ChartScript.Plotly,
            ["figure.js"] = () => ChartScript.FigureScript,
            ["figure.css"] = () => ChartScript.FigureStyle,
        };

    /// <summary>A file's content.</summary>
    /// <param name="name">One of <see cref="Names"/>.</param>
    public static byte[] Content(string name)
    {
        using var stream = typeof(SiteFiles).Assembly.GetManifestResourceStream(Prefix + name)
            ?? throw new ArgumentException($"The pages have no file {name}.", nameof(name));
        using var content = new MemoryStream();
        stream.CopyTo(content);
        return content.ToArray();
    }

    /// <summary>A file's content as text.</summary>
    /// <param name="name">One of <see cref="Names"/>.</param>
    public static string Text(string name) => Encoding.UTF8.GetString(Content(name));
}
