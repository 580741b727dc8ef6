using System.IO.Compression;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using RigScenarios.Charts;
using RigScenarios.Charts.Pages;
using RigScenarios.Page.Folder;
using RigScenarios.Page.Tests.Servers;

namespace RigScenarios.Page.Tests.Folder;

/// <summary>What stands in the folder's files, with a stand-in for the browser build.</summary>
public sealed class SiteFolderTests : IDisposable
{
    private readonly string browser = StandInBuild.Make();

    public void Dispose() => Directory.Delete(browser, recursive: true);

    [Fact]
    public void No_page_has_an_address_that_begins_at_a_root_or_leaves_the_folder()
    {
        var pages = Pages(Made());
        Assert.Equal(4, pages.Count);
        Each.Of(pages, page => Assert.DoesNotMatch("(?:href|src)=\"(?:/|[a-z]+:|\\.\\.)", page.Value));
        Each.Of(pages, page => Assert.DoesNotContain("class-part", page.Value, StringComparison.Ordinal));
    }

    [Fact]
    public void No_script_or_style_names_an_address_elsewhere()
    {
        var texts = Made().Where(file => Path.GetExtension(file.Key) is ".js" or ".css" or ".html" or ".webmanifest"
            && file.Key != "assets/plotly.js" && !file.Key.StartsWith("library/", StringComparison.Ordinal)).ToList();
        // The names of vocabularies are no addresses that anything asks; the reader's own server is told in words.
        Each.Of(texts, file => Assert.DoesNotMatch("https?://(?!www\\.w3\\.org/|127\\.0\\.0\\.1:8000/|\\$)",
            Encoding.UTF8.GetString(file.Value)));
    }

    [Fact]
    public void Each_page_carries_a_policy_before_whatever_it_loads()
    {
        Each.Of(Pages(Made()), page =>
        {
            var policy = Regex.Match(page.Value, "<meta http-equiv=\"Content-Security-Policy\" content=\"(?<policy>[^\"]*)\">",
                RegexOptions.ExplicitCapture, TimeSpan.FromSeconds(1));
            Assert.True(policy.Success, page.Key);
            Assert.True(policy.Index < page.Value.IndexOf("<link", StringComparison.Ordinal), page.Key);
            Assert.True(policy.Index < page.Value.IndexOf("<script", StringComparison.Ordinal), page.Key);
            var allowed = policy.Groups["policy"].Value;
            Assert.StartsWith("default-src 'none'; script-src 'self' 'wasm-unsafe-eval' 'sha256-", allowed,
                StringComparison.Ordinal);
            Assert.DoesNotContain("'unsafe-eval'", allowed, StringComparison.Ordinal);
            Assert.DoesNotContain("http", allowed, StringComparison.Ordinal);
            Assert.Contains("connect-src 'self';", allowed, StringComparison.Ordinal);
            var inline = Regex.Matches(page.Value, "<script>(?<text>.*?)</script>",
                RegexOptions.Singleline | RegexOptions.ExplicitCapture, TimeSpan.FromSeconds(1));
            Each.Of(inline, script => Assert.Contains(Convert.ToBase64String(SHA256.HashData(
                Encoding.UTF8.GetBytes(script.Groups["text"].Value))), allowed, StringComparison.Ordinal));
        });
    }

    [Fact]
    public void The_library_is_put_in_the_place_of_the_server_before_the_pages_own_script_runs()
    {
        Each.Of(Pages(Made()), page =>
        {
            var modules = Regex.Matches(page.Value, "<script type=\"module\" src=\"(?<file>[^\"]*)\"></script>",
                RegexOptions.ExplicitCapture, TimeSpan.FromSeconds(1)).Select(match => match.Groups["file"].Value).ToList();
            Assert.StartsWith("assets/browser/", modules[0], StringComparison.Ordinal);
            Assert.Equal(3, modules.Count);
        });
    }

    [Fact]
    public void The_list_and_what_keeps_the_folder_offline_name_every_file_with_its_mark()
    {
        var files = Made();
        using var list = JsonDocument.Parse(files["rigscenarios-files.json"]);
        var listed = list.RootElement.GetProperty("files").EnumerateObject().ToDictionary(file => file.Name,
            file => file.Value.GetString());
        Assert.Equal(files.Keys.Where(name => name != "rigscenarios-files.json").Order(StringComparer.Ordinal),
            listed.Keys.Order(StringComparer.Ordinal));
        Each.Of(listed, file => Assert.Equal(file.Value,
            $"sha256-{Convert.ToBase64String(SHA256.HashData(files[file.Key]))}"));
        var offline = Encoding.UTF8.GetString(files["offline.js"]);
        Each.Of(listed.Where(file => file.Key is not ("offline.js" or ".nojekyll")),
            file => Assert.Contains($"\"{file.Key}\":\"{file.Value}\"", offline.Replace("\\u002B", "+", StringComparison.Ordinal),
                StringComparison.Ordinal));
        Assert.DoesNotContain("/* mark */", offline, StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_content_gives_the_same_folder_and_other_content_another_mark()
    {
        var (first, second) = (Made(), Made());
        Each.Of(first, file => Assert.Equal(file.Value, second[file.Key]));
        File.WriteAllText(Path.Combine(browser, "library.bin"), "another");
        Assert.NotEqual(first["offline.js"], Made()["offline.js"]);
    }

    [Fact]
    public void The_script_of_the_charts_comes_packed_and_is_the_only_one_that_may_run_so()
    {
        var files = Made();
        using var deflated = new DeflateStream(new MemoryStream(files["assets/plotly.bin"]), CompressionMode.Decompress);
        using var script = new MemoryStream();
        deflated.CopyTo(script);
        var hash = $"'sha256-{Convert.ToBase64String(SHA256.HashData(script.ToArray()))}'";
        foreach (var (name, hasCharts) in ((string, bool)[])[("rig.html", true), ("notebook.html", true), ("index.html", false)])
        {
            var page = Encoding.UTF8.GetString(files[name]);
            Assert.Equal(hasCharts, page.Contains(hash, StringComparison.Ordinal));
            Assert.Equal(hasCharts, page.Contains("src=\"assets/folder/packed-charts.js\"", StringComparison.Ordinal));
            Assert.DoesNotContain("plotly.js", page, StringComparison.Ordinal);
        }
        Assert.False(files.ContainsKey("assets/plotly.js"));
        Assert.InRange(files["assets/plotly.bin"].Length, 300_000, ChartScript.Plotly.Length * 0.36);
    }

    [Fact]
    public void What_only_the_local_server_needs_is_not_in_it() => Each.Of(Made().Keys, name =>
    {
        Assert.DoesNotMatch("^assets/(class|lesson)/", name);
        Assert.NotEqual("assets/shared/enter.js", name);
    });

    [Fact]
    public void A_notebook_as_a_page_stands_on_the_shelf_and_is_led_to_by_its_address()
    {
        var files = Made(Notebook("07-three days & 50 %"), Notebook("08-other"));
        var page = Encoding.UTF8.GetString(files["notebooks/07-three days & 50 %.html"]);
        Assert.Contains("A drawn day", page, StringComparison.Ordinal);
        Assert.Contains("<script src=\"../assets/plotly.js\">", page, StringComparison.Ordinal);
        Assert.Contains("script-src 'self' 'sha256-", page, StringComparison.Ordinal);
        Assert.DoesNotContain("complete in itself", page, StringComparison.Ordinal);
        Assert.Contains("\"08-other\"])", Encoding.UTF8.GetString(files["assets/shared/addresses.js"]), StringComparison.Ordinal);
        var shelf = Encoding.UTF8.GetString(files["index.html"]);
        Assert.Contains("<a href=\"notebooks/07-three%20days%20%26%2050%20%25.html\">Title &lt;1&gt;</a>", shelf,
            StringComparison.Ordinal);
        Assert.Contains("src=\"notebooks/08-other.svg\"", shelf, StringComparison.Ordinal);
        Assert.Contains("id=\"notebooks-part\">", shelf, StringComparison.Ordinal);
        Assert.DoesNotContain("Move a slider", shelf, StringComparison.Ordinal);
    }

    [Fact]
    public void A_notebook_that_answers_in_the_browser_is_led_to_as_one()
    {
        var content = Content(Notebook("07"), Notebook("08")) with { AnsweringNotebooks = ["08"] };
        var files = SiteFolder.FilesOf(content);
        Assert.Contains("new Set([\"07\"])", Encoding.UTF8.GetString(files["assets/shared/addresses.js"]),
            StringComparison.Ordinal);
        var shelf = Encoding.UTF8.GetString(files["index.html"]);
        Assert.Contains("href=\"notebook.html?notebook=08\"", shelf, StringComparison.Ordinal);
        Assert.Contains("href=\"notebooks/07.html\"", shelf, StringComparison.Ordinal);
        Assert.Contains("(As it was run.)", shelf, StringComparison.Ordinal);
    }

    [Fact]
    public void A_build_that_is_not_whole_is_refused()
    {
        File.Delete(Path.Combine(browser, "library.bin"));
        Assert.Contains("library.bin", Assert.Throws<IOException>(() => Made()).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void The_installed_app_has_its_pictures_and_its_place_within_the_folder()
    {
        var files = Made();
        using var app = JsonDocument.Parse(files["app.webmanifest"]);
        Assert.Equal("./", app.RootElement.GetProperty("scope").GetString());
        Assert.Equal("./index.html", app.RootElement.GetProperty("start_url").GetString());
        Each.Of(app.RootElement.GetProperty("icons").EnumerateArray(),
            icon => Assert.Contains(icon.GetProperty("src").GetString()!, files.Keys));
    }

    private IReadOnlyDictionary<string, byte[]> Made(params IReadOnlyList<NotebookAsPage> notebooks) =>
        SiteFolder.FilesOf(Content([.. notebooks]));

    private FolderContent Content(params NotebookAsPage[] notebooks) => new()
    {
        BrowserFolder = browser,
        DataFolder = Checkout.Data,
        NotebookFolder = Path.Combine(Checkout.Root, "notebooks"),
        Version = "0.1.0",
        Notebooks = notebooks,
    };

    private static NotebookAsPage Notebook(string name) => new()
    {
        Name = name,
        Title = "Title <1>",
        Sentence = "One sentence.",
        PictureFile = Path.Combine(Checkout.Root, "notebooks", "pictures", "03-the-cold.svg"),
        Page = new ChartPage { Title = "A drawn day", Footer = "Made from it. The page is complete in itself and works with no "
            + "network." }
            .With(new Figure { Slug = "day", Title = "A drawn day", AlternativeText = "A day.",
                Data = ChartTable.Of("x").With(1), Specification = "{\"data\":[],\"layout\":{},\"config\":{},\"narrow\":{}}" }),
    };

    private static Dictionary<string, string> Pages(IReadOnlyDictionary<string, byte[]> files) =>
        files.Where(file => file.Key.EndsWith(".html", StringComparison.Ordinal))
            .ToDictionary(file => file.Key, file => Encoding.UTF8.GetString(file.Value));
}
