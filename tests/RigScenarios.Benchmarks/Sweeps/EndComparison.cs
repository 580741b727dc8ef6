using RigScenarios.Batteries;
using RigScenarios.Batteries.Batch;

namespace RigScenarios.Benchmarks.Sweeps;

/// <summary>The end of one scenario by the batch, held against the single run.</summary>
/// <param name="Error">How far the end time is off, relative.</param>
/// <param name="OtherCause">Whether another cause ended it.</param>
/// <param name="Grazes">Whether the end moves by more than 0.1 % where resistances and capacity are 0.01 % off.</param>
/// <param name="Marked">Whether the batch says that it grazes a limit.</param>
internal sealed record EndComparison(double Error, bool OtherCause, bool Grazes, bool Marked)
{
    private const double Trifle = 1e-4;
    private const double Moved = 1e-3;

    public static EndComparison Of(BatchScenario one, in BatchCaseEnd end)
    {
        var exact = Single(one);
        var seconds = exact.EndTime.Seconds;
        var other = Single(one with { Pack = Changed(one.Pack, Trifle) });
        var another = Single(one with { Pack = Changed(one.Pack, -Trifle) });
        var moves = Math.Max(Math.Abs(other.EndTime.Seconds - seconds), Math.Abs(another.EndTime.Seconds - seconds));
        var off = Math.Abs(end.Seconds - seconds);
        return new EndComparison(seconds == 0 ? (off == 0 ? 0 : 1) : off / seconds, end.Cause != exact.Cause,
            moves > Moved * seconds, end.GrazesLimit);
    }

    /// <summary>The end of one scenario by the single run.</summary>
    public static DischargeResult Single(BatchScenario one) => Discharge.Run(one.Pack, one.Ambient, one.Start, one.Demand,
        new DischargeOptions { TimeLimit = one.TimeLimit, SeriesPoints = 0 });

    private static Pack Changed(Pack pack, double part) => pack with
    {
        Capacity = pack.Capacity * (1 - part),
        Resistance0 = pack.Resistance0 * (1 + part),
        Resistance1 = pack.Resistance1 * (1 + part),
        Resistance2 = pack.Resistance2 * (1 + part),
        LeadResistance = pack.LeadResistance * (1 + part),
    };
}
