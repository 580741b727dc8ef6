using BenchmarkDotNet.Attributes;
using RigScenarios.Fits.Logs;
using RigScenarios.Tests.Shared;

namespace RigScenarios.Benchmarks;

/// <summary>A power log from its text to bins; an invented one.</summary>
[MemoryDiagnoser]
public class LogBenchmarks
{
    private string text = "";
    private LogRows rows = InventedLog.Of(2, 1);

    /// <summary>Rows of the log.</summary>
    [Params(10_000, 1_000_000)]
    public int Rows { get; set; }

    /// <summary>Makes the log once.</summary>
    [GlobalSetup]
    public void Make()
    {
        rows = InventedLog.Of(Rows, 1);
        using var writer = new StringWriter();
        InventedLog.Write(rows, writer);
        text = writer.ToString();
    }

    /// <summary>Text to rows.</summary>
    [Benchmark(Baseline = true)]
    public LogReading? Read() => PowerLogFile.TryRead(new StringReader(text), "log").Reading;

    /// <summary>Rows to bins and blocks.</summary>
    [Benchmark]
    public LogBins Bins() => LogBins.Of(rows, InventedLog.Battery.Capacity);
}
