using System.Net;
using System.Text.Json;
using RigScenarios.Files;
using RigScenarios.Notebooks.Documents;
using RigScenarios.Page.Settings;
using RigScenarios.Page.Tests.Folder;
using RigScenarios.Page.Tests.Servers;

namespace RigScenarios.Page.Tests.Saved;

/// <summary>"Save as page" with the library in it, asked of the local server.</summary>
public sealed class SavedPageRequestTests : IDisposable
{
    private readonly string browser = StandInBuild.Make();

    public void Dispose() => Directory.Delete(browser, recursive: true);

    [Fact]
    public async Task The_page_is_made_with_the_values_and_its_size_is_told_before()
    {
        await using var server = await TrialServer.StartAsync(library: new Library(browser, null));
        using var told = await server.GetAsync("/api/page-that-answers/01-quick/size");
        var bytes = (await told.JsonAsync()).GetProperty("bytes").GetInt64();
        using var answer = await server.GetAsync("/api/page-that-answers/01-quick?words=kept&amount=3");
        Assert.Equal("01-quick.html", answer.Content.Headers.ContentDisposition!.FileName!.Trim('"'));
        var page = await answer.TextAsync();
        Assert.InRange(page.Length - bytes, 0, 150_000);
        var saved = SavedPages.SavedIn(page);
        Assert.Equal("kept", saved.GetProperty("values").GetProperty("words").GetString());
        Assert.Contains("Words: kept.", saved.GetRawText(), StringComparison.Ordinal);
        using var wrong = await server.GetAsync("/api/page-that-answers/01-quick?amount=99");
        Assert.Equal(HttpStatusCode.BadRequest, wrong.StatusCode);
        Assert.Contains("99 lies outside 0 to 10", (await wrong.JsonAsync()).Problems(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Before_its_library_is_built_no_size_is_told()
    {
        await using var server = await TrialServer.StartAsync(library: new Library(browser, null) { IsBuilt = false });
        using var told = await server.GetAsync("/api/page-that-answers/01-quick/size");
        var size = await told.JsonAsync();
        Assert.Equal((JsonValueKind.Null, JsonValueKind.Null),
            (size.GetProperty("bytes").ValueKind, size.GetProperty("why").ValueKind));
    }

    [Fact]
    public async Task Where_none_can_be_made_the_reason_is_told_and_none_is_made()
    {
        await using var without = await TrialServer.StartAsync();
        await using var server = await TrialServer.StartAsync(library: new Library(browser, "It needs a computer."));
        foreach (var (asked, why) in ((TrialServer, string)[])
            [(without, "did not come with this program"), (server, "needs a computer")])
        {
            using var told = await asked.GetAsync("/api/page-that-answers/01-quick/size");
            Assert.Contains(why, (await told.JsonAsync()).GetProperty("why").GetString(), StringComparison.Ordinal);
            using var refused = await asked.GetAsync("/api/page-that-answers/01-quick");
            Assert.Equal(HttpStatusCode.BadRequest, refused.StatusCode);
            Assert.Contains(why, (await refused.JsonAsync()).Problems(), StringComparison.Ordinal);
            using var none = await asked.GetAsync("/api/page-that-answers/none");
            Assert.Equal(HttpStatusCode.NotFound, none.StatusCode);
        }
    }

    [Fact]
    public async Task An_own_rig_that_is_shown_goes_along()
    {
        await using var server = await TrialServer.StartAsync(library: new Library(browser, null));
        var rig = ScenarioFile.Text(ScenarioFile.Read(Path.Combine(Checkout.Data, "scenarios", "winter-harbour.yaml"))
            .SelfContained());
        foreach (var name in (string[])["mine.yaml", "secret.yaml"])
            await File.WriteAllTextAsync(Path.Combine(server.Rigs, name), rig, TestContext.Current.CancellationToken);
        using var missing = await server.GetAsync("/api/page-that-answers/05-moves?scenario=own/none.yaml");
        Assert.Equal(HttpStatusCode.NotFound, missing.StatusCode);
        using var answer = await server.GetAsync("/api/page-that-answers/05-moves?scenario=own/mine.yaml");
        var saved = SavedPages.SavedIn(await answer.TextAsync());
        Assert.Equal(["mine.yaml"], saved.GetProperty("own").EnumerateObject().Select(file => file.Name));
        Assert.DoesNotContain("secret", saved.GetRawText(), StringComparison.Ordinal);
    }

    private sealed class Library(string folder, string? why) : ICarriedLibrary
    {
        public bool IsBuilt { get; init; } = true;

        public string? Ready => IsBuilt ? folder : null;

        public string? WhyNot(Notebook notebook) => why;

        public Task<string> FolderAsync(CancellationToken cancellation) => Task.FromResult(folder);
    }
}
