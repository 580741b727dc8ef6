using System.IO.Compression;
using System.Text;
using System.Text.RegularExpressions;

namespace RigScenarios.Page.Folder;

/// <summary>The charts' script as the folder's own pages take it: deflated (RFC 1951), and run as a script that the page's policy
/// knows by its hash. A plain server sends it at a third of its size that way.</summary>
internal static partial class PackedCharts
{
    /// <summary>The script's name among those of figures.</summary>
    public const string Name = "plotly.js";

    /// <summary>Its packed file in the folder.</summary>
    public const string File = "assets/plotly.bin";

    /// <summary>What stands in a page in the place of the script.</summary>
    public const string Instead = "<script src=\"assets/folder/packed-charts.js\"></script>";

    /// <summary>What is run, to the letter.</summary>
    public static string Script => SiteFiles.OfFigures[Name]().ReplaceLineEndings("\n");

    /// <summary>The packed file's bytes.</summary>
    public static byte[] Bytes()
    {
        using var packed = new MemoryStream();
        using (var deflate = new DeflateStream(packed, CompressionLevel.SmallestSize, leaveOpen: true))
            deflate.Write(Encoding.UTF8.GetBytes(Script));
        return packed.ToArray();
    }

    /// <summary>The element that loads the script as it is, in a page whose addresses are relative.</summary>
    [GeneratedRegex("<script (?:defer )?src=\"assets/plotly\\.js\"(?: defer)?></script>", RegexOptions.None,
        matchTimeoutMilliseconds: 1000)]
    public static partial Regex Element();
}
