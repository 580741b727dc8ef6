using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;
using RigScenarios.Files;
using RigScenarios.Notebooks.Parameters;
using RigScenarios.Page.Saved;
using RigScenarios.Page.Tests.Folder;
using RigScenarios.Page.Tests.Servers;

namespace RigScenarios.Page.Tests.Saved;

/// <summary>A notebook as one file with the library in it, as it is written; no browser opens it here.</summary>
public sealed class AnsweringPageTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("rigscenarios-answering-").FullName;
    private readonly string browser = StandInBuild.Make();

    public AnsweringPageTests() => TrialNotebooks.WriteTo(folder);

    public void Dispose()
    {
        Directory.Delete(folder, recursive: true);
        Directory.Delete(browser, recursive: true);
    }

    [Fact]
    public async Task The_same_run_gives_the_same_page_to_the_letter()
    {
        var notebook = SavedPages.Of(folder, "01-quick");
        var (one, other) = (await SavedPages.RecordAsync(notebook), await SavedPages.RecordAsync(notebook));
        Assert.Equal(AnsweringPage.Of(one, browser, "1.2.3"), AnsweringPage.Of(other, browser, "1.2.3"));
        Assert.NotEqual(AnsweringPage.Of(one, browser, "1.2.3"), AnsweringPage.Of(await SavedPages.RecordAsync(notebook,
            new() { ["amount"] = "6" }), browser, "1.2.3"));
    }

    [Fact]
    public async Task It_carries_what_its_page_hears_and_names_no_address()
    {
        var notebook = SavedPages.Of(folder, "01-quick");
        var html = AnsweringPage.Of(await SavedPages.RecordAsync(notebook, new() { ["words"] = "</script><b>" }), browser,
            "1.2.3");
        var saved = SavedPages.SavedIn(html);
        Assert.Equal("01-quick", saved.GetProperty("name").GetString());
        Assert.Equal("</script><b>", saved.GetProperty("given").GetProperty("words").GetString());
        Assert.Equal(["amount", "words", "side", "loud"],
            saved.GetProperty("values").EnumerateObject().Select(value => value.Name));
        Assert.Equal("notebook", saved.GetProperty("greeting").GetProperty("kind").GetString());
        var messages = saved.GetProperty("messages").EnumerateArray().ToList();
        Assert.Equal("parameters", messages[0].GetProperty("kind").GetString());
        Assert.Equal("done", messages[^1].GetProperty("kind").GetString());
        Each.Of(messages, message => Assert.False(message.TryGetProperty("run", out _)));
        Assert.Contains("Words: </script><b>.", saved.GetRawText().Replace("\\u003C", "<", StringComparison.Ordinal)
            .Replace("\\u003E", ">", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.DoesNotMatch("(?:src|href)=\"(?!#|data:,)", html);
        Assert.DoesNotContain("<b>", html, StringComparison.Ordinal);
        Assert.EndsWith("</html>\n", html, StringComparison.Ordinal);
        // What shows the page stands before the library, so that it is there first.
        Assert.True(html.IndexOf("carried.beginPage();</script>", StringComparison.Ordinal)
            < html.IndexOf("data-carried=\"library/library.bin\"", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Where_no_script_runs_the_answer_stands_there_with_its_cautions()
    {
        var html = AnsweringPage.Of(await SavedPages.RecordAsync(SavedPages.Of(folder, "01-quick"),
            new() { ["words"] = "<i>kept</i>" }), browser, "1.2.3");
        var without = Regex.Match(html, "<noscript>(?<text>.*?)</noscript>",
            RegexOptions.Singleline | RegexOptions.ExplicitCapture, TimeSpan.FromSeconds(10)).Groups["text"].Value;
        Assert.Contains("<h1>What is said?</h1>", without, StringComparison.Ordinal);
        Assert.Contains("Words: &lt;i&gt;kept&lt;/i&gt;. Side: left.", without, StringComparison.Ordinal);
        Assert.Contains("Carry a reserve.", without, StringComparison.Ordinal);
    }

    // Content Security Policy Level 3 (W3C), section 2.3.1: a script that stands in a page is run if its hash is named.
    [Fact]
    public async Task Its_policy_knows_each_script_that_stands_in_it_and_lets_it_ask_nobody()
    {
        var html = AnsweringPage.Of(await SavedPages.RecordAsync(SavedPages.Of(folder, "01-quick")), browser, "1.2.3");
        var policy = Regex.Match(html, "Content-Security-Policy\" content=\"(?<policy>[^\"]*)\"", RegexOptions.ExplicitCapture,
            TimeSpan.FromSeconds(10)).Groups["policy"].Value;
        var scripts = Regex.Matches(html, "<script>(?<text>.*?)</script>", RegexOptions.Singleline | RegexOptions.ExplicitCapture,
            TimeSpan.FromSeconds(10)).Select(script => script.Groups["text"].Value);
        Each.Of(scripts, script => Assert.Contains(
            $"'sha256-{Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(script)))}'", policy,
            StringComparison.Ordinal), atLeast: 3);
        Assert.StartsWith("default-src 'none'; script-src 'sha256-", policy, StringComparison.Ordinal);
        Each.Of(policy.Split("; "), rule => Assert.False(rule.StartsWith("script-src", StringComparison.Ordinal)
            && rule.Contains("'unsafe-inline'", StringComparison.Ordinal)));
        Each.Of((string[])["connect-src", "frame-src", "http:", "https:", "'self'", "'unsafe-eval'"],
            words => Assert.DoesNotContain(words, policy, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Its_size_stands_in_it_and_can_be_told_before()
    {
        File.WriteAllBytes(Path.Combine(browser, "library.bin"), new byte[3_000_000]);
        var html = AnsweringPage.Of(await SavedPages.RecordAsync(SavedPages.Of(folder, "01-quick")), browser, "1.2.3");
        Assert.Equal(AnsweringPage.InMegabytes(html.Length), SavedPages.SavedIn(html).GetProperty("size").GetString());
        var least = AnsweringPage.LeastBytes(browser);
        Assert.InRange(html.Length - least, 0, 150_000);
    }

    [Fact]
    public async Task An_own_rig_goes_along_with_its_parts_and_no_other_file_of_the_folder()
    {
        var own = ScenarioFile.Text(ScenarioFile.Read(Path.Combine(Checkout.Data, "scenarios", "winter-harbour.yaml"))
            .SelfContained());
        var conversation = await SavedPages.RecordAsync(SavedPages.Of(folder, "05-moves"),
            new() { ["scenario"] = "own/mine.yaml" }, new() { ["mine.yaml"] = own });
        Assert.Null(conversation.Failure);
        var saved = SavedPages.SavedIn(AnsweringPage.Of(conversation, browser, "1.2.3"));
        Assert.Equal(own, saved.GetProperty("own").GetProperty("mine.yaml").GetString());
        Assert.DoesNotContain("parts-from", own, StringComparison.Ordinal);
        var choices = saved.GetProperty("messages")[0].GetProperty("parameters")[0].GetProperty("choices").EnumerateArray()
            .Select(choice => choice.GetProperty("value").GetString())
            .Where(value => value!.StartsWith("own/", StringComparison.Ordinal));
        Assert.Equal(["own/mine.yaml"], choices);
    }

    [Fact]
    public async Task A_cell_that_fails_is_told_and_a_value_that_is_not_taken_is_refused()
    {
        var failed = await SavedPages.RecordAsync(SavedPages.Of(folder, "03-fails"));
        Assert.Contains("The lens is", failed.Failure!.ToString(), StringComparison.Ordinal);
        var refused = await Assert.ThrowsAsync<NotebookInputException>(() => SavedPages.RecordAsync(
            SavedPages.Of(folder, "01-quick"), new() { ["amount"] = "99" }));
        Assert.Contains("99 lies outside 0 to 10", Assert.Single(refused.Problems), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_build_that_is_not_whole_is_told()
    {
        var conversation = await SavedPages.RecordAsync(SavedPages.Of(folder, "01-quick"));
        File.Delete(Path.Combine(browser, "boot.js"));
        Assert.Contains("boot.js is missing", Assert.Throws<IOException>(
            () => AnsweringPage.Of(conversation, browser, "1.2.3")).Message, StringComparison.Ordinal);
    }
}
