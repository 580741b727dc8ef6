namespace RigScenarios.Requests.Runs;

/// <summary>Tells a page how far a search has come.</summary>
/// <param name="reply">Where it is told.</param>
/// <param name="text">What is being done; may be empty.</param>
internal sealed class RunProgress(RunReply reply, string text) : IProgress<double>
{
    public void Report(double value) => reply.Progress(value, text);
}
