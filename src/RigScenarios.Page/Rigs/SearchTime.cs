using System.Diagnostics;
using RigScenarios.Search.Choices;
using RigScenarios.Search.Rigs;
using RigScenarios.Requests.Runs;

namespace RigScenarios.Page.Rigs;

/// <summary>Tells a page how much of a search's time is over, and what was found so far: nobody knows how much of the work is
/// done.</summary>
/// <param name="reply">Where it is told.</param>
/// <param name="limit">The time of the search.</param>
internal sealed class SearchTime(RunReply reply, TimeSpan limit) : IProgress<FrontProgress>
{
    private readonly Stopwatch clock = Stopwatch.StartNew();
    private bool hasFound;

    public void Report(FrontProgress value)
    {
        // From the first rig on there is something to stop for.
        var isFirst = !hasFound && value.Entries > 0;
        hasFound |= isFirst;
        try
        {
            reply.Progress(Math.Min(1, clock.Elapsed / limit), RigSearchSentences.SoFar(value), isNews: isFirst);
        }
        catch (OperationCanceledException)
        {
            // The search hears itself that it is to stop, and gives what it has.
        }
    }
}
