using System.Diagnostics;
using System.Globalization;
using System.Net;
using System.Net.Sockets;

namespace RigScenarios.Tests.Cli;

/// <summary>A cluster of one node: Slurm's own programs, on this machine alone, with all of their files in one folder, gone with
/// it.</summary>
internal sealed class SlurmOnThisMachine : IDisposable
{
    private readonly Process controller;
    private readonly Process node;

    private SlurmOnThisMachine(string configuration)
    {
        Configuration = configuration;
        controller = Start("slurmctld");
        node = Start("slurmd");

        Process Start(string program) => Process.Start(new ProcessStartInfo(PathOf(program)!, ["-D", "-f", configuration])
        {
            UseShellExecute = false, RedirectStandardOutput = true, RedirectStandardError = true,
        })!;
    }

    /// <summary>The file that its commands are to read (<c>SLURM_CONF</c>).</summary>
    public string Configuration { get; }

    /// <summary>Starts it; the test is skipped where Slurm is not installed.</summary>
    /// <param name="folder">Where its files go.</param>
    public static async Task<SlurmOnThisMachine> StartAsync(string folder)
    {
        Assert.SkipWhen(new[] { "slurmctld", "slurmd", "sbatch" }.Any(program => PathOf(program) is null),
            "Slurm is not installed");
        Directory.CreateDirectory(folder);
        var host = Dns.GetHostName().Split('.')[0];
        var configuration = Path.Combine(folder, "slurm.conf");
        // No keys, no accounts, nothing of the system: whoever runs the test is user and administrator.
        await File.WriteAllLinesAsync(configuration,
        [
            "ClusterName=test", $"SlurmctldHost={host}(127.0.0.1)", "AuthType=auth/none", "CredType=cred/none",
            $"SlurmUser={Environment.UserName}", $"SlurmdUser={Environment.UserName}", $"SlurmctldPort={FreePort()}",
            $"SlurmdPort={FreePort()}", $"StateSaveLocation={folder}", $"SlurmdSpoolDir={folder}/node",
            $"SlurmctldPidFile={folder}/controller.pid", $"SlurmdPidFile={folder}/node.pid",
            $"SlurmctldLogFile={folder}/controller.log", $"SlurmdLogFile={folder}/node.log", "ProctrackType=proctrack/linuxproc",
            "TaskPlugin=task/none", "JobAcctGatherType=jobacct_gather/none", "AccountingStorageType=accounting_storage/none",
            "SwitchType=switch/none", "MpiDefault=none", "SelectType=select/cons_tres", "SelectTypeParameters=CR_Core",
            "ReturnToService=2", $"NodeName={host} NodeAddr=127.0.0.1 CPUs={Environment.ProcessorCount} State=UNKNOWN",
            "PartitionName=all Nodes=ALL Default=YES MaxTime=INFINITE State=UP",
        ], TestContext.Current.CancellationToken);
        return new SlurmOnThisMachine(configuration);
    }

    /// <summary>Where a program is that is found by its name; null if nowhere.</summary>
    public static string? PathOf(string program) => (Environment.GetEnvironmentVariable("PATH") ?? "").Split(':')
        .Concat(["/usr/sbin"]).Select(folder => Path.Combine(folder, program)).FirstOrDefault(File.Exists);

    public void Dispose()
    {
        foreach (var program in (Process[])[node, controller])
        {
            program.Kill();
            program.WaitForExit();
            program.Dispose();
        }
    }

    private static string FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port.ToString(CultureInfo.InvariantCulture);
    }
}
