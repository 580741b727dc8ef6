using System.Net;
using RigScenarios.Requests.OwnFiles;
using RigScenarios.Page.Tests.Servers;

namespace RigScenarios.Page.Tests.Attacks;

/// <summary>No path outside of the given folders, whatever a name is made of.</summary>
public sealed class FileNameTests
{
    private const string Secret = "rigscenarios: scenario 1\ntitle: This is the secret\n";

    /// <summary>Ways of writing a path out of the folder, as they stand in an address.</summary>
    private static readonly string[] WaysOut =
    [
        "../outside/secret.yaml", "..%2Foutside%2Fsecret.yaml", "..%2foutside%2fsecret.yaml", "%2e%2e/outside/secret.yaml",
        "%2e%2e%2foutside%2fsecret.yaml",
        "..%5Coutside%5Csecret.yaml", "..\\outside\\secret.yaml", "..%255C..%255Coutside%255Csecret.yaml",
        "..%252Foutside%252Fsecret.yaml", "....//outside/secret.yaml",
        "%c0%ae%c0%ae/outside/secret.yaml", "..%c0%afoutside%c0%afsecret.yaml", "%uff0e%uff0e/outside/secret.yaml",
        "x/../../outside/secret.yaml", ".%00./outside/secret.yaml",
    ];

    [Fact]
    public async Task No_way_of_writing_a_path_reads_a_file_outside()
    {
        await using var server = await TrialServer.StartAsync();
        var secret = Path.Combine(server.Outside, "secret.yaml");
        File.WriteAllText(secret, Secret);
        File.WriteAllText(Path.Combine(server.Outside, "secret.ipynb"), Secret);
        File.WriteAllText(Path.Combine(server.Outside, "secret.css"), Secret);
        var absolute = Uri.EscapeDataString(secret);
        string[] doors = ["/api/files/own/", "/api/files/samples/", "/api/files/", "/assets/", "/n/", "/picture/", "/api/page/",
            "/api/live/", "/file/own/", "/"];
        foreach (var door in doors)
        {
            foreach (var way in WaysOut.Concat([absolute, secret, "/" + absolute, "file:" + absolute])
                .SelectMany(way => (string[])[way, way.Replace(".yaml", ".ipynb", StringComparison.Ordinal),
                way.Replace(".yaml", ".css", StringComparison.Ordinal), way.Replace(".yaml", "", StringComparison.Ordinal)]))
            {
                var answer = await server.RawGetAsync(door + way);
                Assert.False(answer.Contains("This is the secret", StringComparison.Ordinal), door + way);
            }
        }
        // The file would be shown if it lay in the folder: the search above looks for the right thing.
        File.Copy(secret, Path.Combine(server.Rigs, "secret.yaml"));
        Assert.Contains("This is the secret", await server.RawGetAsync("/api/files/own/secret.yaml"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task No_way_of_writing_a_path_writes_a_file_outside()
    {
        await using var server = await TrialServer.StartAsync();
        var before = Listing(Path.GetDirectoryName(server.Rigs)!);
        foreach (var way in WaysOut.Append(Uri.EscapeDataString(Path.Combine(server.Outside, "new.yaml"))))
        {
            var body = "{\"text\":\"title: mine\",\"version\":null,\"replace\":true}";
            var answer = await server
                .RawAsync($"PUT /api/files/own/{way} HTTP/1.1\r\nHost: {server.Host}\r\n{server.Credentials}\r\nOrigin: "
                    + $"{server.Origin}\r\nContent-Type: application/json\r\nContent-Length: {body.Length}\r\nConnection: "
                        + $"close\r\n\r\n{body}");
            Assert.Matches("^HTTP/1.1 4", answer);
        }
        Assert.Equal(before, Listing(Path.GetDirectoryName(server.Rigs)!));
    }

    [Theory]
    [InlineData("rig.yaml", true)]
    [InlineData("My rig (2).yml", true)]
    [InlineData("Küste_3.1-b.yaml", true)]
    [InlineData("", false)]
    [InlineData(".yaml", false)]
    [InlineData(".hidden.yaml", false)]
    [InlineData("rig", false)]
    [InlineData("rig.yaml.exe", false)]
    [InlineData("rig.YAML\n", false)]
    [InlineData("rig.yaml\n", false)]
    [InlineData("a/b.yaml", false)]
    [InlineData("a\\b.yaml", false)]
    [InlineData("..yaml", false)]
    [InlineData("a..b.yaml", false)]
    [InlineData("c:rig.yaml", false)]
    [InlineData("rig.yaml:stream.yaml", false)]
    [InlineData("con.yaml", false)]
    [InlineData("LPT1.rig.yaml", false)]
    [InlineData("nul .yaml", false)]
    [InlineData("a\0.yaml", false)]
    [InlineData("a\u202Elmay.yaml", false)]
    [InlineData("a\u001b[31m.yaml", false)]
    [InlineData("<script>.yaml", false)]
    [InlineData("$(touch x).yaml", false)]
    [InlineData("-rf.yaml", false)]
    [InlineData("~root.yaml", false)]
    [InlineData("a%2fb.yaml", false)]
    public void A_name_is_a_plain_file_name(string name, bool isOne) => Assert.Equal(isOne, NamedFolder.IsName(name));

    [Fact]
    public void A_name_has_at_most_eighty_characters()
    {
        Assert.True(NamedFolder.IsName(new string('a', 75) + ".yaml"));
        Assert.False(NamedFolder.IsName(new string('a', 76) + ".yaml"));
    }

    [Fact]
    public async Task A_link_out_of_the_folder_is_neither_listed_nor_read_nor_written()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "making links needs rights on Windows");
        await using var server = await TrialServer.StartAsync();
        var secret = Path.Combine(server.Outside, "secret.yaml");
        File.WriteAllText(secret, Secret);
        File.CreateSymbolicLink(Path.Combine(server.Rigs, "direct.yaml"), secret);
        File.CreateSymbolicLink(Path.Combine(server.Rigs, "second.yaml"), "direct.yaml");
        File.CreateSymbolicLink(Path.Combine(server.Rigs, "circle.yaml"), "circle.yaml");
        File.CreateSymbolicLink(Path.Combine(server.Rigs, "gone.yaml"), Path.Combine(server.Outside, "not-there.yaml"));
        Directory.CreateSymbolicLink(Path.Combine(server.Rigs, "folder.yaml"), server.Outside);
        File.CreateSymbolicLink(Path.Combine(server.Notebooks, "09-linked.ipynb"), secret);
        var shelf = await (await server.GetAsync("/api/shelf")).TextAsync();
        Assert.DoesNotContain("secret", shelf, StringComparison.Ordinal);
        Assert.DoesNotContain("own/", shelf, StringComparison.Ordinal);
        Assert.DoesNotContain("linked", shelf, StringComparison.Ordinal);
        foreach (var name in (string[])["direct", "second", "circle", "gone", "folder"])
        {
            using var read = await server.GetAsync($"/api/files/own/{name}.yaml");
            Assert.Equal(HttpStatusCode.NotFound, read.StatusCode);
            using var written = await server.SendJsonAsync(HttpMethod.Put, $"/api/files/own/{name}.yaml",
                new { text = "title: mine", replace = true });
            Assert.Equal(HttpStatusCode.BadRequest, written.StatusCode);
        }
        Assert.Equal(Secret, File.ReadAllText(secret));
        Assert.Single(Directory.EnumerateFiles(server.Outside));
    }

    [Fact]
    public async Task A_link_within_the_folder_is_a_file_like_any_other()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "making links needs rights on Windows");
        await using var server = await TrialServer.StartAsync();
        File.WriteAllText(Path.Combine(server.Rigs, "real.yaml"), Secret);
        File.CreateSymbolicLink(Path.Combine(server.Rigs, "linked.yaml"), "real.yaml");
        Assert.Contains("This is the secret", await (await server.GetAsync("/api/files/own/linked.yaml")).TextAsync(),
            StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_samples_and_the_notebooks_cannot_be_written()
    {
        await using var server = await TrialServer.StartAsync();
        var before = Checkout.Sample("teaching-kit.yaml");
        using var answer = await server.SendJsonAsync(HttpMethod.Put, "/api/files/samples/teaching-kit.yaml",
            new { text = "x", replace = true });
        Assert.Equal(HttpStatusCode.MethodNotAllowed, answer.StatusCode);
        Assert.Equal(before, Checkout.Sample("teaching-kit.yaml"));
    }

    [Theory]
    [InlineData("../outside")]
    [InlineData("../outside/parts.yaml")]
    [InlineData("linked")]
    [InlineData("linked/parts.yaml")]
    [InlineData("ABSOLUTE")]
    [InlineData("a\\u0000b")]
    public async Task A_text_of_a_page_reaches_no_parts_outside(string parts)
    {
        await using var server = await TrialServer.StartAsync();
        File.WriteAllText(Path.Combine(server.Outside, "parts.yaml"), "secret-word: 1\n");
        if (!OperatingSystem.IsWindows())
            Directory.CreateSymbolicLink(Path.Combine(server.Rigs, "linked"), server.Outside);
        var name = parts.Replace("ABSOLUTE", server.Outside.Replace("\\", "\\\\", StringComparison.Ordinal),
            StringComparison.Ordinal);
        var text = $"rigscenarios: scenario 1\ntitle: A\nparts-from: [\"{name}\"]\n";
        var checkedText = await (await server.SendJsonAsync(HttpMethod.Post, "/api/text/check",
            new { text, file = (string?)null })).TextAsync();
        Assert.DoesNotContain("secret-word", checkedText, StringComparison.Ordinal);
        Assert.Contains(parts.Contains("u0000", StringComparison.Ordinal) ? "problems" : "outside of the folders", checkedText,
            StringComparison.Ordinal);
        using var saved = await server.SendJsonAsync(HttpMethod.Put, "/api/files/own/a.yaml", new { text });
        var answer = await saved.TextAsync();
        Assert.DoesNotContain("secret-word", answer, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(".")]
    [InlineData("mine")]
    [InlineData("loop")]
    public async Task A_folder_of_parts_that_holds_a_link_out_of_it_is_not_read(string parts)
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "links need rights there");
        await using var server = await TrialServer.StartAsync();
        File.WriteAllText(Path.Combine(server.Outside, "parts.yaml"), "secret-word: 1\n");
        Directory.CreateDirectory(Path.Combine(server.Rigs, "mine"));
        foreach (var folder in (string[])["", "mine"])
            File.CreateSymbolicLink(Path.Combine(server.Rigs, folder, "stolen.yaml"), Path.Combine(server.Outside, "parts.yaml"));
        File.CreateSymbolicLink(Path.Combine(server.Rigs, "loop"), Path.Combine(server.Rigs, "loop"));
        var text = $"rigscenarios: scenario 1\ntitle: A\nparts-from: [\"{parts}\"]\n";
        var told = await (await server.SendJsonAsync(HttpMethod.Post, "/api/text/check", new { text, file = (string?)null }))
            .TextAsync();
        Assert.DoesNotContain("secret-word", told, StringComparison.Ordinal);
        Assert.Contains("outside of the folders", told, StringComparison.Ordinal);
        // Without the link the folder may be named.
        File.Delete(Path.Combine(server.Rigs, "mine", "stolen.yaml"));
        File.WriteAllText(Path.Combine(server.Rigs, "mine", "own.yaml"), "rigscenarios: parts 1\nparts: {}\n");
        Assert.DoesNotContain("outside of the folders", await (await server.SendJsonAsync(HttpMethod.Post, "/api/text/check",
            new { text = text.Replace($"\"{parts}\"", "mine", StringComparison.Ordinal), file = (string?)null })).TextAsync(),
            StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("away/p.svg")]
    [InlineData("p.svg")]
    public async Task A_picture_that_a_link_leads_to_outside_is_not_shown(string picture)
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "links need rights there");
        await using var server = await TrialServer.StartAsync();
        File.WriteAllText(Path.Combine(server.Outside, "p.svg"), "<svg xmlns=\"http://www.w3.org/2000/svg\">secret</svg>");
        Directory.CreateSymbolicLink(Path.Combine(server.Notebooks, "away"), server.Outside);
        File.CreateSymbolicLink(Path.Combine(server.Notebooks, "p.svg"), Path.Combine(server.Outside, "p.svg"));
        var file = Path.Combine(server.Notebooks, "01-quick.ipynb");
        File.WriteAllText(file, File.ReadAllText(file).Replace("\"metadata\":{},\"cells\"",
            $"\"metadata\":{{\"rigscenarios\":{{\"sentence\":\"Says.\",\"picture\":\"{picture}\"}}}},\"cells\"",
            StringComparison.Ordinal));
        using var answer = await server.GetAsync("/picture/01-quick");
        Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
        Assert.DoesNotContain("secret", await answer.TextAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_a_file_on_disk_names_already_may_stay()
    {
        await using var server = await TrialServer.StartAsync();
        File.WriteAllText(Path.Combine(server.Outside, "parts.yaml"), "rigscenarios: parts 1\nparts: {}\n");
        const string text = "rigscenarios: scenario 1\ntitle: A\nparts-from: [../outside/parts.yaml]\n";
        File.WriteAllText(Path.Combine(server.Rigs, "mine.yaml"), text);
        var opened = await (await server.GetAsync("/api/files/own/mine.yaml")).JsonAsync();
        Assert.DoesNotContain("outside of the folders", opened.Problems(), StringComparison.Ordinal);
        using var saved = await server.SendJsonAsync(HttpMethod.Put, "/api/files/own/mine.yaml",
            new { text = text + "# more\n", version = opened.Text("version") });
        Assert.Equal(HttpStatusCode.OK, saved.StatusCode);
        using var copied = await server.SendJsonAsync(HttpMethod.Put, "/api/files/own/other.yaml", new { text });
        Assert.Equal(HttpStatusCode.BadRequest, copied.StatusCode);
    }

    [Theory]
    [InlineData("../outside/secret.yaml")]
    [InlineData("own/../outside/secret.yaml")]
    [InlineData("own/%2e%2e/outside/secret.yaml")]
    [InlineData("samples/../../notebooks/01-quick.ipynb")]
    [InlineData("own/..\\secret.yaml")]
    [InlineData("other/secret.yaml")]
    [InlineData("own/")]
    public async Task A_form_opens_no_file_outside(string file)
    {
        await using var server = await TrialServer.StartAsync();
        File.WriteAllText(Path.Combine(server.Outside, "secret.yaml"), Secret);
        using var answer = await server.GetAsync($"/api/rig/given?file={Uri.EscapeDataString(file)}&build=a&day=b");
        Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
        Assert.DoesNotContain("This is the secret", await answer.TextAsync(), StringComparison.Ordinal);
    }

    private static List<string> Listing(string folder) =>
        [.. Directory.EnumerateFileSystemEntries(folder, "*", SearchOption.AllDirectories).Order(StringComparer.Ordinal)];
}
