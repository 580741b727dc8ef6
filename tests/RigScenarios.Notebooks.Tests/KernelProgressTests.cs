using Microsoft.DotNet.Interactive.Commands;
using Microsoft.DotNet.Interactive.CSharp;
using Microsoft.DotNet.Interactive.Events;

namespace RigScenarios.Notebooks.Tests;

/// <summary>Jupyter's C# kernel itself, run here: what a parallel work reports from several threads is one line of the
/// cell.</summary>
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
                using System.Threading.Tasks;
                var door = new Barrier(8);
                Task.WaitAll(Enumerable.Range(1, 8).Select(part => Task.Factory.StartNew(() =>
                {
                    door.SignalAndWait(TimeSpan.FromSeconds(10));
                    RigScenarios.Notebooks.NotebookSession.Progress(part / 8.0, "trying");
                }, TaskCreationOptions.LongRunning)).ToArray());
                """), cancellation);
            Assert.Empty(result.Events.OfType<CommandFailed>().Select(failure => failure.Message));
            Assert.Single(result.Events.OfType<DisplayedValueProduced>());
            Assert.Equal(7, result.Events.OfType<DisplayedValueUpdated>().Count());
        }
    }
}
