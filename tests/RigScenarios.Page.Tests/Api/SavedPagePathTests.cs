using RigScenarios.Page.Tests.Servers;

namespace RigScenarios.Page.Tests.Api;

/// <summary>A page that is kept may be sent to anybody: it names no folder of the machine that made it.</summary>
public sealed class SavedPagePathTests
{
    public static TheoryData<string> Notebooks =>
        [.. Directory.GetFiles(Path.Combine(Checkout.Root, "notebooks"), "*.ipynb").Select(Path.GetFileNameWithoutExtension)
            .Order(StringComparer.Ordinal).Select(name => name!)];

    [Theory]
    [MemberData(nameof(Notebooks))]
    public async Task A_kept_page_names_no_folder_of_this_machine(string notebook)
    {
        await using var server = await TrialServer.StartAsync(ownNotebooks: true);
        var parts = $"parts-from: ['{Path.Combine(Checkout.Data, "parts")}']";
        await File.WriteAllTextAsync(Path.Combine(server.Rigs, "mine.yaml"), Checkout.Sample("island-crossing.yaml")
            .Replace("parts-from: [../parts]", parts, StringComparison.Ordinal), TestContext.Current.CancellationToken);
        foreach (var query in (string[])["", "?scenario=own/mine.yaml"])
        {
            using var answer = await server.GetAsync($"/api/page/{notebook}{query}");
            if (query.Length > 0 && !answer.IsSuccessStatusCode)
                continue;
            var page = await answer.TextAsync();
            Assert.Contains("<main>", page, StringComparison.Ordinal);
            var home = Environment.GetFolderPath(Environment.SpecialFolder.UserProfile) + Path.DirectorySeparatorChar;
            foreach (var folder in (string[])[server.Rigs, server.Outside, Checkout.Root, AppContext.BaseDirectory,
                Path.GetTempPath(), home])
                Assert.False(page.Contains(folder, StringComparison.Ordinal), $"{notebook}{query} names {folder}");
        }
    }
}
