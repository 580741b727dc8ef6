using System.Runtime.InteropServices;

namespace RigScenarios.Batteries.Batch;

/// <summary>The states of the cases that stand side by side. Symbols as in docs/discharge.md.</summary>
[StructLayout(LayoutKind.Sequential)]
internal struct LaneState<T> where T : unmanaged, ILanes<T>
{
    /// <summary>z.</summary>
    public T Charge;

    /// <summary>v1, V of one group.</summary>
    public T Voltage1;

    /// <summary>v2, V of one group.</summary>
    public T Voltage2;

    /// <summary>T, K.</summary>
    public T Kelvin;

    /// <summary>w; 0 with one well.</summary>
    public T Lag;
}

/// <summary>What the circuits do in their states.</summary>
[StructLayout(LayoutKind.Sequential)]
internal struct LaneNode<T> where T : unmanaged, ILanes<T>
{
    /// <summary>V at the terminals, V; beyond the power limit that of the limit.</summary>
    public T Voltage;

    /// <summary>I, A.</summary>
    public T Current;

    /// <summary>b² - 4·a·P·R, V², negative for a negative b: below 0 a constant power cannot be delivered.</summary>
    public T Margin;

    /// <summary>Its root, V; never quite 0. dV/dE = V/root.</summary>
    public T Root;

    /// <summary>dI/dE, A/V.</summary>
    public T Response;

    /// <summary>S·R0·rho·aR + Rp, Ω.</summary>
    public T Resistance;

    /// <summary>rho.</summary>
    public T Factor;

    /// <summary>I·rho, A, which drives both pairs.</summary>
    public T PairDriver;

    /// <summary>-dz/dt, 1/s.</summary>
    public T ChargeDriver;

    /// <summary>State of charge for each ampere-second at this temperature, 1/(3600·Q·aQ·kappa).</summary>
    public T UnitRate;

    /// <summary>Heat that the pack makes, W.</summary>
    public T Heat;

    /// <summary>U(zn), V of one group.</summary>
    public T OpenCircuit;

    /// <summary>dU/dz at zn, V.</summary>
    public T Slope;

    /// <summary>1/tau(T), 1/s; not set with one well.</summary>
    public T ExchangeRate;

    /// <summary>What drives the lag beside its decay at the rate of the step's start, 1/s; not set with one well.</summary>
    public T LagDriver;
}

/// <summary>The packs, the air around them and their limits, in numbers that the kernel needs.</summary>
[StructLayout(LayoutKind.Sequential)]
internal struct LanePack<T> where T : unmanaged, ILanes<T>
{
    public T Tables, TableCells, LastCell;
    public T Groups, UnitsPerCharge, GroupResistance0, Resistance1, Resistance2, LeadResistance;
    public T ActivationTemperature, ActivationShift, Floor, ColdestUsable;
    public T TimeConstant1, Rate1, Rate2, CoolingRate, KelvinPerJoule;

    // What the quick part of a driver, which goes as v1 does, leaves in z, in v2 and in the temperature.
    public T QuickOn2, QuickOnHeat;
    public T AmbientKelvin, CutoffVoltage, MaximumCurrent, MaximumKelvin;
    public T LagPerCharge, FarPerLag, ExchangeTemperature, ExchangeLogarithm, MixingCharge;
    public T StartCharge;
}

/// <summary>A hinge of the usable capacity in each lane; one that a case does not have has no slope there.</summary>
[StructLayout(LayoutKind.Sequential)]
internal struct LaneHinge<T> where T : unmanaged, ILanes<T>
{
    public T From, Width, Slope;
}

/// <summary>Where the cases stand in their demands.</summary>
[StructLayout(LayoutKind.Sequential)]
internal struct LaneDemand<T> where T : unmanaged, ILanes<T>
{
    /// <summary>P, W.</summary>
    public T Power;

    /// <summary>Ic, A.</summary>
    public T Current;

    /// <summary>g, S.</summary>
    public T Conductance;

    /// <summary>Time from the start of the demand, s.</summary>
    public T Time;

    /// <summary>End of the segment or the time limit, whichever comes first, s.</summary>
    public T Target;

    /// <summary>Start of the run, s from the start of the demand.</summary>
    public T Start;

    /// <summary>Where the draw has just changed: a condition, see <see cref="ILanes{T}"/>.</summary>
    public T Fresh;

    /// <summary>How long the next step may be, s.</summary>
    public T Next;

    /// <summary>Length of the step in hand, s.</summary>
    public T Length;
}

/// <summary>How a branch that decays answers to its driver in a step: value = Left·before + (Steady·c0 + Linear·c1 + Square·c2),
/// the driver being c0 + c1·s + c2·s² over s from 0 to 1, apart from its quick part.</summary>
[StructLayout(LayoutKind.Sequential)]
internal struct LaneBranch<T> where T : unmanaged, ILanes<T>
{
    /// <summary>What is left of the value after half of the step, and after the whole.</summary>
    public T LeftHalf, Left;

    /// <summary>Parts of the driver that have arrived.</summary>
    public T SteadyHalf, Steady, Linear, Square;

    /// <summary>Part of the driver's quick part, which decays with the first pair, that has arrived.</summary>
    public T QuickHalf, Quick;

    /// <summary>How fast it decays, 1/s, where that changes from step to step.</summary>
    public T Rate;
}

/// <summary>The quick parts of the drivers at the start of a step; they decay with the first pair.</summary>
[StructLayout(LayoutKind.Sequential)]
internal struct LaneQuick<T> where T : unmanaged, ILanes<T>
{
    /// <summary>Of the current, A; of what drives the pairs, A; of what drives the charge and the lag, 1/s; of the heat,
    /// W.</summary>
    public T Current, Pair, Charge, Lag, Heat;
}

/// <summary>Everything of the cases that stand side by side, in one piece of memory.</summary>
[StructLayout(LayoutKind.Sequential)]
internal struct LaneBlock<T> where T : unmanaged, ILanes<T>
{
    public LanePack<T> Pack;
    public LaneDemand<T> Demand;
    public LaneState<T> State, Trial, End;
    public LaneNode<T> First, Middle, Last;
    public LaneBranch<T> Pair1, Pair2, Heat, Exchange;

    public LaneQuick<T> Quick;

    /// <summary>T and zn in the middle of the step.</summary>
    public T MiddleKelvin, MiddleNear;

    /// <summary>What the correction makes of the end of the step: of V, V; of T, K; of zn.</summary>
    public T VoltageChange, KelvinChange, NearChange;

    /// <summary>How far the current at the end lies from the line through start and middle, A, without its quick part.</summary>
    public T CurrentBend;

    /// <summary>Error of the step over what it may be; part of the step after which the first limit is met.</summary>
    public T Error, Soonest;

    /// <summary>Part of the step after which each limit is met, in the order in which they are looked at; infinite for
    /// never.</summary>
    public T PowerRoot, VoltageRoot, EmptyRoot, CurrentRoot, KelvinRoot;

    /// <summary>Where the step is taken, and where a case ends in it: conditions, see <see cref="ILanes{T}"/>.</summary>
    public T Accepted, Ended;

    /// <summary>Energy through the terminals, J; the lowest temperature, K; the time at which a limit was only just missed
    /// first, s.</summary>
    public T Delivered, LowestKelvin, Grazed;
}
