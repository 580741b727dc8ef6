namespace RigScenarios.Batteries.Batch;

/// <summary>
/// A number for each of some cases side by side. The kernel is written once over it; each width is compiled on its own. What is
/// done in one lane never depends on another, so that a case ends the same whatever stands beside it.
/// </summary>
/// <typeparam name="T">The type itself.</typeparam>
/// <remarks>A condition is such a number, too: all bits set where it holds, none where it doesn't.</remarks>
internal interface ILanes<T> where T : unmanaged, ILanes<T>
{
    /// <summary>How many cases there are side by side.</summary>
    static abstract int Count { get; }

    static abstract T operator +(T left, T right);

    static abstract T operator -(T left, T right);

    static abstract T operator *(T left, T right);

    static abstract T operator /(T left, T right);

    /// <summary>Where both hold.</summary>
    static abstract T operator &(T left, T right);

    /// <summary>Where one holds, or both.</summary>
    static abstract T operator |(T left, T right);

    /// <summary>The same number in all lanes.</summary>
    static abstract T Of(double value);

    /// <summary>factor·other + added, rounded once.</summary>
    static abstract T Sum(T factor, T other, T added);

    /// <summary>The square root.</summary>
    static abstract T Root(T value);

    /// <summary>The exponential.</summary>
    static abstract T Exponential(T value);

    /// <summary>Without its sign.</summary>
    static abstract T Size(T value);

    /// <summary>The lower of two.</summary>
    static abstract T Lower(T left, T right);

    /// <summary>The higher of two.</summary>
    static abstract T Higher(T left, T right);

    /// <summary>Where the left one is below the right one.</summary>
    static abstract T Below(T left, T right);

    /// <summary>Where the left one is below the right one or equal to it.</summary>
    static abstract T UpTo(T left, T right);

    /// <summary>The one number where the condition holds, else the other.</summary>
    static abstract T Choose(T condition, T yes, T no);

    /// <summary>A bit for each lane in which a condition holds.</summary>
    static abstract uint Bits(T condition);

    /// <summary>Reads a cell of a table in each lane.</summary>
    /// <param name="tables">Where the table of each lane begins: an address, as bits.</param>
    /// <param name="place">Which cell, counted from 0 and cut to a whole number; not below 0.</param>
    /// <param name="value">The value at the start of the cell.</param>
    /// <param name="rise">What it rises by to the end of the cell.</param>
    /// <param name="cell">The number of the cell.</param>
    static abstract void Look(T tables, T place, out T value, out T rise, out T cell);
}
