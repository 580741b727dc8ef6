namespace RigScenarios.Fits.Logs;

/// <summary>Everything that was done to a power log while it was read.</summary>
/// <param name="Rows">Rows in the file below its header, blank lines not counted.</param>
/// <param name="Dropped">Rows left out, because a number was missing or not finite.</param>
/// <param name="Resets">How often the time fell back: a new clock, which goes on one usual interval after the row before.</param>
/// <param name="Duplicates">Rows that had the time of the one before; both became their mean.</param>
/// <param name="Flipped">Whether the current was taken with the other sign: charge seemed to flow in while the voltage
/// fell.</param>
/// <param name="Gaps">Intervals longer than ten usual ones and than a minute: the mean current of both sides is held there, and
/// nothing is compared.</param>
/// <param name="Charging">Rows in stretches over a minute with a current into the battery, which are left out: such a
/// stretch ends one log, and another begins after it.</param>
/// <param name="FirstDropped">What was wrong with the first row that was left out; null if none was.</param>
public sealed record LogCounts(
    int Rows, int Dropped, int Resets, int Duplicates, bool Flipped, int Gaps, int Charging, DroppedCell? FirstDropped);

/// <summary>Why a row of a power log was left out.</summary>
/// <param name="Line">Line in the file, from 1.</param>
/// <param name="Column">The column.</param>
/// <param name="Found">What stands there; empty if nothing.</param>
public sealed record DroppedCell(long Line, string Column, string Found);
