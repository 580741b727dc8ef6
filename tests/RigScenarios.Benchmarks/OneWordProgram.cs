using System.Diagnostics;

namespace RigScenarios.Benchmarks;

/// <summary>A program that prints one word, made and built in a temporary folder: what any start costs on this machine. Loaded
/// into
/// another program as a start-up hook, it counts the methods that were compiled while that one ran.</summary>
internal sealed class OneWordProgram : IDisposable
{
    private const string Project = """
        <Project Sdk="Microsoft.NET.Sdk">
          <PropertyGroup>
            <OutputType>Exe</OutputType>
            <TargetFramework>net10.0</TargetFramework>
            <InvariantGlobalization>true</InvariantGlobalization>
          </PropertyGroup>
        </Project>
        """;

    private const string Source = """
        internal static class Program
        {
            public static void Main() => System.Console.WriteLine("yes");
        }

        internal static class StartupHook
        {
            public static void Initialize() => System.AppDomain.CurrentDomain.ProcessExit += (_, _) =>
                System.IO.File.WriteAllText(System.Environment.GetEnvironmentVariable("METHODS_TO")!,
                    System.Runtime.JitInfo.GetCompiledMethodCount().ToString());
        }
        """;

    private OneWordProgram(string folder) => Folder = folder;

    /// <summary>The command that starts it.</summary>
    public string Command => Path.Combine(Folder, "built", OperatingSystem.IsWindows() ? "word.exe" : "word");

    private string Folder { get; }

    /// <summary>Makes and builds it.</summary>
    public static OneWordProgram Build()
    {
        var program = new OneWordProgram(Directory.CreateTempSubdirectory("one-word-").FullName);
        File.WriteAllText(Path.Combine(program.Folder, "word.csproj"), Project);
        File.WriteAllText(Path.Combine(program.Folder, "Program.cs"), Source);
        Dotnet(program.Folder, "build", "-c", "Release", "-o", "built", "--nologo");
        return program;
    }

    /// <summary>How many methods a command compiles while it runs.</summary>
    /// <param name="start">The command; what it writes is not looked at.</param>
    public int MethodsCompiled(ProcessStartInfo start)
    {
        ArgumentNullException.ThrowIfNull(start);
        var count = Path.Combine(Folder, "methods.txt");
        start.Environment["DOTNET_STARTUP_HOOKS"] = Path.Combine(Folder, "built", "word.dll");
        start.Environment["METHODS_TO"] = count;
        Finish(start);
        return int.Parse(File.ReadAllText(count), System.Globalization.CultureInfo.InvariantCulture);
    }

    /// <summary>Runs the SDK's command in a folder; throws with its output where it fails.</summary>
    public static void Dotnet(string folder, params string[] arguments) =>
        Finish(new ProcessStartInfo("dotnet", arguments) { WorkingDirectory = folder });

    /// <summary>Runs a command to its end, in silence; throws with its output where it fails.</summary>
    public static void Finish(ProcessStartInfo start)
    {
        ArgumentNullException.ThrowIfNull(start);
        (start.RedirectStandardOutput, start.RedirectStandardError) = (true, true);
        using var process = Process.Start(start)!;
        var errors = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        if (process.ExitCode != 0)
            throw new IOException($"{start.FileName} {string.Join(' ', start.ArgumentList)} ended with {process.ExitCode}:\n"
                + output + errors.Result);
    }

    public void Dispose() => Directory.Delete(Folder, recursive: true);
}
