using RigScenarios.Answers;
using RigScenarios.Files;
using RigScenarios.Page.Tests.Servers;
using RigScenarios.Requests.Settings;

namespace RigScenarios.Page.Tests.Asked;

/// <summary>Where own files lie in no folder, a saved rig is taken away by its reader: its file must stand alone.</summary>
public sealed class FileThatGoesAnywhereTests
{
    [Fact]
    public async Task A_sample_becomes_a_file_that_needs_no_other_and_answers_the_same()
    {
        using var page = new LocalPage();
        var text = await SavedAsync(page);
        var (mine, problems) = ScenarioFile.TryReadText(text, "/nowhere/harbour.yaml");
        Assert.Empty(problems);
        var sample = ScenarioFile.Read(Path.Combine(Checkout.Data, "scenarios", "winter-harbour.yaml"));
        var (build, day) = (sample.Builds.Keys.First(), sample.Days.Keys.First());
        Assert.Equal(AnswerSentences.Headline(Answer(sample)), AnswerSentences.Headline(Answer(mine!)));
        // A comment of the sample's stays.
        Assert.Contains("# Three winter days in a harbour", text, StringComparison.Ordinal);

        RigAnswer Answer(Scenarios.Scenario scenario) => RigAnswer.Of(scenario, build, [day],
            cancellation: TestContext.Current.CancellationToken);
    }

    [Fact]
    public async Task In_a_folder_it_names_the_parts_files_as_before()
    {
        using var page = new LocalPage(PageAbilities.All);
        Assert.Contains("parts-from:", await SavedAsync(page), StringComparison.Ordinal);
    }

    private static async Task<string> SavedAsync(LocalPage page)
    {
        const string file = "samples/winter-harbour.yaml";
        var opened = LocalPage.Json(await page.AskAsync("rig-given", new { file }));
        var saved = await page.AskAsync("save-rig", new { given = opened.GetProperty("given"), name = "harbour.yaml", file });
        Assert.Equal(200, saved.Status);
        return await File.ReadAllTextAsync(Path.Combine(page.Own, "harbour.yaml"), TestContext.Current.CancellationToken);
    }
}
