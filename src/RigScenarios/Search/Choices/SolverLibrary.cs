using System.Runtime.InteropServices;
using Google.OrTools.Sat;

namespace RigScenarios.Search.Choices;

/// <summary>The solver's native library, which is made for one kind of machine and lies beside the program.</summary>
internal static class SolverLibrary
{
    /// <summary>The solver's setting that Ctrl-C stays with the program: else it takes it over, and ends the process at the next
    /// one without a word.</summary>
    public const string LeavesSignals = "catch_sigint_signal:false";

    /// <summary>Loads it, once in a process.</summary>
    /// <param name="load">What loads it; null for the first call of the solver.</param>
    /// <exception cref="FileNotFoundException">It is not there, or not for this machine; the message says what to do.</exception>
    public static void Require(Action? load = null)
    {
        try
        {
            (load ?? FirstCall)();
        }
        catch (Exception missing) when (missing is TypeInitializationException or DllNotFoundException or BadImageFormatException)
        {
            throw new FileNotFoundException("A search needs the native library of the solver OR-Tools for this machine "
                + $"({RuntimeInformation.RuntimeIdentifier}), and it is not beside the program. Build the program on this kind "
                + "of machine (dotnet build, dotnet pack): that brings it along. All other commands work without it.", missing);
        }
    }

    private static void FirstCall() => _ = FirstSolve.Status;

    /// <summary>The runtime does this when it is first asked for, and remembers a failure as well.</summary>
    private static class FirstSolve
    {
        public static readonly CpSolverStatus Status = OfNothing();

        private static CpSolverStatus OfNothing()
        {
            using var solver = new CpSolver { StringParameters = LeavesSignals };
            return solver.Solve(new CpModel());
        }
    }
}
