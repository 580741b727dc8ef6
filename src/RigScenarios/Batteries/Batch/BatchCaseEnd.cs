using System.Runtime.InteropServices;

namespace RigScenarios.Batteries.Batch;

/// <summary>How one case of a batch ended, in plain numbers.</summary>
[StructLayout(LayoutKind.Auto)]
internal struct BatchCaseEnd
{
    /// <summary>End time, s from the start.</summary>
    public double Seconds;

    /// <summary>z.</summary>
    public double Charge;

    /// <summary>zn.</summary>
    public double NearCharge;

    /// <summary>T, K.</summary>
    public double Kelvin;

    /// <summary>The lowest T at the ends of the steps, K.</summary>
    public double LowestKelvin;

    /// <summary>Energy through the terminals, J.</summary>
    public double DeliveredJoules;

    /// <summary>Segments finished.</summary>
    public int SegmentsFinished;

    /// <summary>What ended it.</summary>
    public EndCause Cause;

    /// <summary>Whether the cause held right after a step of the demand.</summary>
    public bool AtStep;

    /// <summary>Whether a limit was only just missed.</summary>
    public bool GrazesLimit;
}
