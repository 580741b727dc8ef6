using System.Text.Json.Nodes;
using RigScenarios.Benchmarks.Cases.Sets;
using RigScenarios.Page.Tests.Browser;
using RigScenarios.Page.Tests.Servers;

namespace RigScenarios.Page.Tests.InBrowser;

/// <summary>
/// The library in a browser against the same library on this machine: every demo, and the cases that independent programs have
/// solved. Where the checks hold this machine's answers against those programs, this holds the browser's against them too.
/// </summary>
internal static class SameFigures
{
    /// <summary>The names of all sets.</summary>
    public static TheoryData<string> Sets => [.. CaseSet.All.Select(set => set.Name)];

    /// <summary>Answers a set here and there, and compares.</summary>
    public static async Task CompareAsync(ReferencePage page, MachineBrowser machine, string name)
    {
        var set = CaseSet.All.Single(one => one.Name == name);
        var there = JsonNode.Parse(await page.AnswerAsync(machine, name, set.Path, CaseSet.Parts))!;
        // Numbers that come from a text are all of one kind.
        var here = JsonNode.Parse(set.Answer(Path.Combine(Checkout.Root, set.Path)).ToJsonString())!;
        var comparison = new FigureComparison(set.Within);
        comparison.Compare(name, here, there);
        Assert.True(comparison.Differences.Count == 0, string.Join('\n', comparison.Differences.Take(20)));
        Assert.True(set.Count(there) > 0 && comparison is { Figures: >= 50, Words: > 0 },
            $"only {set.Count(there)} cases, {comparison.Figures} figures, {comparison.Words} words");
    }
}

/// <summary>In Chromium.</summary>
[Collection(Browser.InABrowser.Name)]
public sealed class SameFiguresTests(Chromium chromium, ReferencePage page) : IClassFixture<ReferencePage>
{
    [Theory]
    [MemberData(nameof(SameFigures.Sets), MemberType = typeof(SameFigures))]
    public Task The_library_in_Chromium_answers_as_on_this_machine(string set) =>
        SameFigures.CompareAsync(page, chromium, set);

    [Fact]
    public void A_figure_that_differs_by_a_billionth_is_seen()
    {
        var comparison = new FigureComparison(1e-9);
        comparison.Compare("a", JsonNode.Parse("""{"t":100.0,"why":"empty"}"""),
            JsonNode.Parse("""{"t":100.0000002,"why":"voltage cut-off"}"""));
        Assert.Equal(2, comparison.Differences.Count);
    }
}

/// <summary>In Firefox.</summary>
[Collection(InFirefox.Name)]
public sealed class SameFiguresInFirefoxTests(Firefox firefox, ReferencePage page) : IClassFixture<ReferencePage>
{
    [Theory]
    [MemberData(nameof(SameFigures.Sets), MemberType = typeof(SameFigures))]
    public Task The_library_in_Firefox_answers_as_on_this_machine(string set) =>
        SameFigures.CompareAsync(page, firefox, set);
}
