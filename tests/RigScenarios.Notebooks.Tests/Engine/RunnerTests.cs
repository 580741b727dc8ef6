using RigScenarios.Charts.Pages;
using RigScenarios.Notebooks.Pages;
using Xunit;

namespace RigScenarios.Notebooks.Tests.Engine;

public sealed class RunnerTests
{
    [Fact]
    public async Task A_notebook_shows_its_answer_charts_table_and_printed_text_in_order()
    {
        var run = await NotebookRunner.RunAsync(TestNotebook.Load("trial"), cancellation: TestContext.Current.CancellationToken);
        Assert.True(run.Succeeded, run.Failure?.ToString());
        var parts = run.Cells.SelectMany(cell => cell.Outputs).ToList();
        Assert.Single(parts.OfType<AnswerPart>());
        Assert.Single(parts.OfType<TablePart>());
        Assert.True(parts.FindIndex(part => part is AnswerPart) < parts.FindIndex(part => part is TablePart));
        Assert.Contains(parts.OfType<PrintedPart>(), part => part.Text.Contains("Batteries in the case: 2, spare waits on the rig.", StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_given_value_replaces_the_notebooks_own()
    {
        var run = await NotebookRunner.RunAsync(
            TestNotebook.Load("trial"), new Dictionary<string, string> { ["batteries"] = "5", ["place"] = "in a pocket" }, cancellation: TestContext.Current.CancellationToken);
        Assert.True(run.Succeeded, run.Failure?.ToString());
        Assert.Contains(run.Cells.SelectMany(cell => cell.Outputs).OfType<PrintedPart>(), part => part.Text.Contains("5, spare waits in a pocket.", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("ambientCelcius", "-8", "ambientCelsius")]
    [InlineData("ambientCelsius", "-80", "-30")]
    [InlineData("batteries", "two", "batteries")]
    [InlineData("place", "on the moon", "in a pocket")]
    [InlineData("place", "\"; System.IO.File.Delete(\"x\"); //", "in a pocket")]
    public async Task A_value_that_cannot_be_used_is_told_in_plain_words_and_nothing_runs(string name, string value, string says)
    {
        var told = new List<NotebookProgress>();
        var problem = await Assert.ThrowsAsync<NotebookInputException>(() => NotebookRunner.RunAsync(
            TestNotebook.Load("trial"), new Dictionary<string, string> { [name] = value }, new Listener(told), TestContext.Current.CancellationToken));
        Assert.Contains(says, Assert.Single(problem.Problems), StringComparison.Ordinal);
        Assert.Empty(told);
    }

    [Fact]
    public async Task A_cell_that_does_not_compile_is_named_with_its_line()
    {
        var run = await NotebookRunner.RunAsync(TestNotebook.Load("compile-error"), cancellation: TestContext.Current.CancellationToken);
        Assert.Equal((4, 3), (run.Failure!.Cell, run.Failure.Line));
        Assert.Contains("'aa'", run.Failure.Message, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", run.Failure.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_cell_that_fails_is_named_with_its_line_and_ends_the_run()
    {
        var run = await NotebookRunner.RunAsync(TestNotebook.Load("runtime-error"), cancellation: TestContext.Current.CancellationToken);
        Assert.Equal((3, 4), (run.Failure!.Cell, run.Failure.Line));
        Assert.Contains("The divisor is zero; give another.", run.Failure.Message, StringComparison.Ordinal);
        Assert.DoesNotContain(run.Cells.SelectMany(cell => cell.Outputs).OfType<PrintedPart>(), part => part.Text.Contains("never reached", StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_long_cell_tells_its_progress_and_can_be_stopped()
    {
        using var stop = CancellationTokenSource.CreateLinkedTokenSource(TestContext.Current.CancellationToken);
        var told = new List<NotebookProgress>();
        var listener = new Listener(told, progress =>
        {
            if (progress.Text.Contains("step", StringComparison.Ordinal))
                stop.Cancel();
        });
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => NotebookRunner.RunAsync(TestNotebook.Load("long"), progress: listener, cancellation: stop.Token));
        Assert.Contains(told, progress => progress.Text.Contains("step", StringComparison.Ordinal));
        // The engine is usable again afterwards.
        Assert.True((await NotebookRunner.RunAsync(TestNotebook.Load("trial"), cancellation: TestContext.Current.CancellationToken)).Succeeded);
    }

    [Fact]
    public async Task The_page_stands_alone_and_escapes_what_it_shows()
    {
        var run = await NotebookRunner.RunAsync(TestNotebook.Load("trial"), cancellation: TestContext.Current.CancellationToken);
        var html = NotebookPage.Of(run).ToHtml();
        Assert.DoesNotContain("<script>alert(\"no\")</script>", html, StringComparison.Ordinal);
        // Scripts carry addresses as text; what counts is that no element of the page loads one.
        var elements = System.Text.RegularExpressions.Regex.Replace(html, "(?s)<script.*?</script>", "");
        Assert.DoesNotMatch("(src|href)=\"https?:", elements);
        Assert.DoesNotMatch("<script[^>]* src=", html);
        Assert.DoesNotContain("@import", html, StringComparison.Ordinal);
        Assert.Equal(1, html.Split("plotly.js v").Length - 1);
    }

    private sealed class Listener(List<NotebookProgress> told, Action<NotebookProgress>? then = null) : IProgress<NotebookProgress>
    {
        public void Report(NotebookProgress value)
        {
            lock (told)
                told.Add(value);
            then?.Invoke(value);
        }
    }
}
