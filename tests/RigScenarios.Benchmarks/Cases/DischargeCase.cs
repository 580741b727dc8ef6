using RigScenarios.Batteries;
using UnitsNet;

namespace RigScenarios.Benchmarks.Cases;

/// <summary>One discharge of a case file.</summary>
internal sealed record DischargeCase(string Id, Pack Pack, Temperature Ambient, DischargeStart Start, Demand Demand);

/// <summary>A case file: its discharges and the time limit of each.</summary>
internal sealed record DischargeCaseFile(Duration TimeLimit, IReadOnlyList<DischargeCase> Cases);

/// <summary>A case file that can't be used; the message has a line for each problem.</summary>
internal sealed class CaseFileException : Exception
{
    public CaseFileException()
    {
    }

    public CaseFileException(string message) : base(message)
    {
    }

    public CaseFileException(string message, Exception inner) : base(message, inner)
    {
    }
}
