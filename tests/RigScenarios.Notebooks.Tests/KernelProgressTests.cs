using Microsoft.DotNet.Interactive;
using Microsoft.DotNet.Interactive.Commands;
using Microsoft.DotNet.Interactive.CSharp;
using Microsoft.DotNet.Interactive.Events;

namespace RigScenarios.Notebooks.Tests;

/// <summary>Jupyter's C# kernel itself, run here: what a parallel work reports from several threads is one line of the cell.</summary>
public sealed class KernelProgressTests
{
    [Fact]
    public async Task Reports_of_many_threads_at_once_are_one_line()
    {
        var cancellation = TestContext.Current.CancellationToken;
        using var kernel = new CSharpKernel();
        for (var cell = 0; cell < 20; cell++)
        {
            var result = await kernel.SendAsync(new SubmitCode($$"""
                #r "{{typeof(NotebookSession).Assembly.Location}}"
                using System.Threading;
                var door = new Barrier(8);
                var workers = Enumerable.Range(1, 8).Select(part => new Thread(() =>
                {
                    door.SignalAndWait();
                    RigScenarios.Notebooks.NotebookSession.Progress(part / 8.0, "trying");
                })).ToList();
                workers.ForEach(worker => worker.Start());
                workers.ForEach(worker => worker.Join());
                """), cancellation);
            Assert.Empty(result.Events.OfType<CommandFailed>().Select(failure => failure.Message));
            Assert.Single(result.Events.OfType<DisplayedValueProduced>());
            Assert.Equal(7, result.Events.OfType<DisplayedValueUpdated>().Count());
        }
    }
}
