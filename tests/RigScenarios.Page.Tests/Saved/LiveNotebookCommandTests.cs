using RigScenarios.Page.Tests.Folder;
using RigScenarios.Page.Tests.Servers;

namespace RigScenarios.Page.Tests.Saved;

/// <summary><c>rigscenarios notebook --live</c>, as a program of its own, with a stand-in for the browser build.</summary>
public sealed class LiveNotebookCommandTests : CommandWithStandIn
{
    [Fact]
    public async Task It_writes_one_file_and_tells_its_size_and_the_answer()
    {
        var (code, told, wrong) = await RunAsync("notebook", "06-what-fails-first.ipynb", "--live", "--notebook-files", Browser,
            "--set", "degreesColder=4", "--out", "x.html");
        Assert.True(code == 0, wrong);
        Assert.Matches(@"Page: x\.html \([0-9]+\.[0-9] MB; its controls answer, also without a network\)", told);
        var saved = SavedPages.SavedIn(await File.ReadAllTextAsync(Path.Combine(Around, "x.html"),
            TestContext.Current.CancellationToken));
        Assert.Equal("4", saved.GetProperty("given").GetProperty("degreesColder").GetString());
        Assert.Single(Directory.EnumerateFileSystemEntries(Around));
        // The first line is the answer that stands in the page.
        Assert.Contains(told.Split('\n')[0].TrimEnd(), saved.GetProperty("messages").EnumerateArray()
            .Where(message => message.GetProperty("kind").GetString() == "cell")
            .SelectMany(message => message.GetProperty("parts").EnumerateArray())
            .Where(part => part.GetProperty("type").GetString() == "answer")
            .Select(part => part.GetProperty("text").GetString()));
    }

    public static TheoryData<string, string> NeedingTheProgram => new()
    {
        { "08-which-uncertainty-matters.ipynb", "Its controls answer only in the program on a computer." },
        { "11-the-best-rig-for-the-money.ipynb", "Its controls answer only in the program on a computer." },
    };

    [Theory]
    [MemberData(nameof(NeedingTheProgram))]
    public async Task A_notebook_that_needs_the_program_is_refused_with_the_reason(string notebook, string why)
    {
        var (code, told, wrong) = await RunAsync("notebook", notebook, "--live", "--notebook-files", Browser, "--out", "x.html");
        Assert.Equal((2, ""), (code, told));
        Assert.StartsWith($"error: {notebook}: {why}", wrong, StringComparison.Ordinal);
        Assert.Contains("Without --live", wrong, StringComparison.Ordinal);
        Assert.Empty(Directory.EnumerateFileSystemEntries(Around));
    }

    [Fact]
    public async Task A_notebook_that_is_not_in_the_library_is_refused()
    {
        var text = await File.ReadAllTextAsync(Path.Combine(Checkout.Root, "notebooks", "01-one-build-one-day.ipynb"),
            TestContext.Current.CancellationToken);
        await File.WriteAllTextAsync(Path.Combine(Around, "01-one-build-one-day.ipynb"),
            text.Replace("degreesColder = 0", "degreesColder = 1", StringComparison.Ordinal),
            TestContext.Current.CancellationToken);
        var (code, _, wrong) = await RunAsync("notebook", "01-one-build-one-day.ipynb", "--live", "--notebook-files", Browser,
            "--out", "x.html");
        Assert.Equal(2, code);
        Assert.Contains("this one is another, or was changed", wrong, StringComparison.Ordinal);
        Assert.False(File.Exists(Path.Combine(Around, "x.html")));
    }

    [Theory]
    [InlineData("--live --executed y.ipynb", "--executed: found together with --live")]
    [InlineData("--notebook-files .", "--notebook-files: found without --live")]
    [InlineData("--live --notebook-files none", "--notebook-files: there is no folder none")]
    [InlineData("--live --notebook-files . --set moreWorn=99", "99 lies outside -30 to 50")]
    public async Task What_does_not_go_together_is_refused_before_any_work(string words, string why)
    {
        var (code, told, wrong) = await RunAsync(
            ["notebook", "01-one-build-one-day.ipynb", "--out", "x.html", .. words.Split(' ')]);
        Assert.Equal((2, ""), (code, told));
        Assert.Contains(why, wrong, StringComparison.Ordinal);
        Assert.Empty(Directory.EnumerateFileSystemEntries(Around));
    }

    [Fact]
    public async Task What_stood_there_stays_where_the_build_is_not_whole()
    {
        File.WriteAllText(Path.Combine(Around, "x.html"), "mine");
        File.Delete(Path.Combine(Browser, "boot.js"));
        var (code, _, wrong) = await RunAsync("notebook", "06-what-fails-first.ipynb", "--live", "--notebook-files", Browser,
            "--out", "x.html");
        Assert.Equal(1, code);
        Assert.Contains("boot.js is missing", wrong, StringComparison.Ordinal);
        Assert.Equal("mine", File.ReadAllText(Path.Combine(Around, "x.html")));
        Assert.Single(Directory.EnumerateFileSystemEntries(Around));
    }
}
