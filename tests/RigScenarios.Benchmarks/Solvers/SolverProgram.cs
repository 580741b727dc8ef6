using System.Diagnostics;
using System.Globalization;

namespace RigScenarios.Benchmarks.Solvers;

/// <summary>A general solver that runs discharges, where its tools are on this machine.</summary>
/// <param name="Name">Its name for people.</param>
/// <param name="Command">The program and its first arguments.</param>
internal sealed record SolverProgram(string Name, IReadOnlyList<string> Command)
{
    /// <summary>CVODE, compiled with this machine's C compiler; null with the reason where that fails.</summary>
    /// <param name="folder">Where the program is put.</param>
    public static (SolverProgram? Program, string WhyNot) Cvode(string folder)
    {
        var made = Path.Combine(folder, "discharge");
        var (_, errors) = Run(["cc", "-O3", "-march=native", "-o", made, Source("discharge.c"), "-lsundials_cvode",
            "-lsundials_nvecserial", "-lm"]);
        return File.Exists(made) ? (new("CVODE (C, Adams)", [made]), "")
            : (null, "CVODE: needs a C compiler and SUNDIALS with its headers (Debian: gcc, libsundials-dev). "
                + FirstLine(errors));
    }

    /// <summary>SciPy, by this machine's Python; null with the reason where there is none.</summary>
    public static (SolverProgram? Program, string WhyNot) SciPy()
    {
        // Debian's own comes first: another Python on the path seldom has SciPy.
        foreach (var python in new[] { "/usr/bin/python3", "python3", "python" })
        {
            if (Run([python, "-c", "import scipy.integrate; print('here')"]).Output.StartsWith("here", StringComparison.Ordinal))
                return (new("SciPy (solve_ivp, RK45)", [python, Source("discharge.py")]), "");
        }
        return (null, "SciPy: needs Python with SciPy (Debian: python3-scipy).");
    }

    /// <summary>Runs discharges.</summary>
    /// <param name="cases">The file of <see cref="SolverCases"/>.</param>
    /// <param name="tolerance">Relative tolerance.</param>
    /// <returns>The end of each, s, and the processor time of all, s.</returns>
    /// <exception cref="IOException">It failed.</exception>
    public (IReadOnlyList<double> Ends, double Seconds) Run(string cases, double tolerance)
    {
        var (output, errors) = Run([.. Command, cases, tolerance.ToString("R", CultureInfo.InvariantCulture)]);
        return double.TryParse(errors.Trim(), CultureInfo.InvariantCulture, out var seconds)
            ? ([.. output.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(line =>
                double.Parse(line, CultureInfo.InvariantCulture))], seconds)
            : throw new IOException($"{Name} failed: {errors}");
    }

    private static (string Output, string Errors) Run(IReadOnlyList<string> command)
    {
        try
        {
            using var process = Process.Start(new ProcessStartInfo(command[0], command.Skip(1))
            {
                RedirectStandardOutput = true, RedirectStandardError = true, UseShellExecute = false,
            })!;
            var errors = process.StandardError.ReadToEndAsync();
            var output = process.StandardOutput.ReadToEnd();
            process.WaitForExit();
            return (output, errors.Result);
        }
        catch (System.ComponentModel.Win32Exception exception)
        {
            return ("", exception.Message);
        }
    }

    private static string Source(string name) => Path.Combine(AppContext.BaseDirectory, "Solvers", name);

    private static string FirstLine(string text) => text.Split('\n')[0].Trim();
}
