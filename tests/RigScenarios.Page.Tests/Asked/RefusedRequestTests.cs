using RigScenarios.Page.Tests.Servers;
using RigScenarios.Requests;
using RigScenarios.Requests.Settings;

namespace RigScenarios.Page.Tests.Asked;

/// <summary>What can't be answered is answered in words, with its status.</summary>
public sealed class RefusedRequestTests
{
    [Fact]
    public async Task A_request_that_is_not_answered_here_is_told()
    {
        using var page = new LocalPage();
        Told(await page.AskAsync("class-tasks", new { }), 404, "doesn't answer this");
    }

    [Theory]
    [InlineData("{")]
    [InlineData("[]")]
    [InlineData("")]
    [InlineData("{\"id\":\"a\",\"id\":\"b\"}")]
    [InlineData("{\"id\":\"\\ud800\"}")]
    public async Task Broken_json_is_told(string json)
    {
        using var page = new LocalPage();
        Told(await page.AskTextAsync("file", json), 400, "can't be read");
    }

    [Fact]
    public async Task What_is_too_large_is_refused()
    {
        var limits = new RequestLimits();
        using var page = new LocalPage();
        Told(await page.AskAsync("rig-edit", new { more = new string('x', limits.LargestJsonBytes) }), 413, "256 kB");
        Told(await page.AskAsync("check-text", new { text = new string('x', limits.LargestFileBytes) }), 413, "2048 kB");
        // No file goes with this one.
        Told(await page.AskAsync("rig-questions", new { }, new byte[1]), 413, "at once");
        using var small = new LocalPage(limits: limits with { LargestLogBytes = 9 });
        Told(await small.AskAsync("rig-log", new { }, new byte[10]), 413, "at once");
    }

    [Theory]
    [InlineData("own/../../secret.yaml")]
    [InlineData("own/none.yaml")]
    [InlineData("samples/../parts/batteries.yaml")]
    [InlineData("elsewhere/mine.yaml")]
    [InlineData("mine.yaml")]
    public async Task A_file_that_is_not_in_the_folders_is_not_there(string id)
    {
        using var page = new LocalPage();
        Told(await page.AskAsync("file", new { id }), 404, "There is no scenario file");
    }

    [Fact]
    public async Task A_fault_is_told_without_its_inside_and_says_where_more_stands()
    {
        using var page = new LocalPage();
        // No folder can be written where a file stands.
        Directory.Delete(page.Own);
        await File.WriteAllTextAsync(page.Own, "", TestContext.Current.CancellationToken);
        var reply = await page.AskAsync("save-file", new { name = "mine.yaml", text = "title: mine" });
        File.Delete(page.Own);
        Directory.CreateDirectory(page.Own);
        Told(reply, 500, "The place for reports says more.");
        Assert.DoesNotContain(page.Own, LocalPage.Json(reply).GetRawText(), StringComparison.Ordinal);
        Assert.Single(page.Reports);
    }

    [Fact]
    public async Task An_answer_that_is_no_longer_wanted_is_given_up()
    {
        using var page = new LocalPage();
        using var left = new CancellationTokenSource();
        await left.CancelAsync();
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() =>
            page.Requests.AskAsync("shelf", "{}"u8.ToArray(), default, left.Token));
    }

    private static void Told(RequestReply reply, int status, string words)
    {
        Assert.Equal(status, reply.Status);
        Assert.Contains(words, LocalPage.Json(reply).Problems(), StringComparison.Ordinal);
    }
}
