using System.Runtime.InteropServices;

namespace RigScenarios.Cli.Commands;

/// <summary>
/// What happens when somebody stops the program: the command is asked to end, and left behind if it doesn't within a second. A
/// second signal ends everything at once.
/// </summary>
internal sealed class StopSignals : IDisposable
{
    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(1);

    private readonly CancellationTokenSource asked = new();
    private readonly TaskCompletionSource overdue = new(TaskCreationOptions.RunContinuationsAsynchronously);
    private readonly PosixSignalRegistration[] listening;
    private int code;

    public StopSignals() => listening =
    [
        PosixSignalRegistration.Create(PosixSignal.SIGINT, signal => Stop(signal, ExitCodes.Stopped)),
        PosixSignalRegistration.Create(PosixSignal.SIGTERM, signal => Stop(signal, ExitCodes.Terminated)),
    ];

    /// <summary>Asks the command to end.</summary>
    public CancellationToken Token => asked.Token;

    /// <summary>The exit code of a command, or of the signal that ended it.</summary>
    /// <param name="command">The command, running with <see cref="Token"/>.</param>
    public async Task<int> EndOf(Task<int> command)
    {
        if (await Task.WhenAny(command, overdue.Task) != command)
        {
            ErrorText.Line("Stopped. What was being worked on is left as it was.");
            return code;
        }
        var result = await command;
        return result == ExitCodes.Stopped && code != 0 ? code : result;
    }

    public void Dispose()
    {
        foreach (var registration in listening)
            registration.Dispose();
        asked.Dispose();
    }

    private void Stop(PosixSignalContext signal, int itsCode)
    {
        signal.Cancel = Interlocked.CompareExchange(ref code, itsCode, 0) == 0;
        if (!signal.Cancel)
            return;
        _ = Task.Delay(Longest).ContinueWith(_ => overdue.TrySetResult(), TaskScheduler.Default);
        _ = asked.CancelAsync();
    }
}
