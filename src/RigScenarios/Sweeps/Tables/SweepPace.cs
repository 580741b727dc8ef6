using System.Globalization;

namespace RigScenarios.Sweeps.Tables;

/// <summary>How quickly a long sweep goes, and how much time it still needs if it goes on so: by the last quarter of a minute,
/// for some scenarios take longer than others.</summary>
public sealed class SweepPace
{
    private static readonly TimeSpan Window = TimeSpan.FromSeconds(15);

    private readonly TimeProvider clock;
    private readonly Queue<(long At, long Done)> seen = [];

    /// <summary>A sweep that begins or goes on.</summary>
    /// <param name="done">Scenarios that are done already.</param>
    /// <param name="count">All scenarios.</param>
    /// <param name="clock">The clock.</param>
    public SweepPace(long done, long count, TimeProvider clock)
    {
        ArgumentNullException.ThrowIfNull(clock);
        (Count, this.clock, Done) = (count, clock, done);
        seen.Enqueue((clock.GetTimestamp(), done));
    }

    /// <summary>How many there are.</summary>
    public long Count { get; }

    /// <summary>How many are done.</summary>
    public long Done { get; private set; }

    /// <summary>Scenarios a second; null before anything is known.</summary>
    public double? Rate
    {
        get
        {
            var (at, done) = seen.Peek();
            var seconds = clock.GetElapsedTime(at).TotalSeconds;
            return Done > done && seconds > 0.2 ? (Done - done) / seconds : null;
        }
    }

    /// <summary>The time that is left at this rate; null before anything is known.</summary>
    public TimeSpan? Left => Rate is { } rate && (Count - Done) / rate is var seconds and < 1e9 ? TimeSpan.FromSeconds(seconds)
        : null;

    /// <summary>It has come so far.</summary>
    /// <param name="done">How many are done.</param>
    public void Tell(long done)
    {
        Done = Math.Max(Done, done);
        var now = clock.GetTimestamp();
        seen.Enqueue((now, Done));
        while (seen.Count > 2 && clock.GetElapsedTime(seen.Peek().At, now) > Window)
            seen.Dequeue();
    }

    /// <summary>In words: <c>412 000 of 1 000 000, 61 000 a second, about 10 s left</c>.</summary>
    public string Words =>
        $"{Whole(Done)} of {Whole(Count)}" + (Rate is { } rate ? $", {Whole(rate)} a second" : "")
        + (Left is { } left && Done < Count ? $", about {Time(left)} left" : "");

    /// <summary>A whole number as people read it, to three figures where it is a rate.</summary>
    /// <param name="number">The number.</param>
    internal static string Whole(double number)
    {
        if (number is > 0 and < 100 && !double.IsInteger(number))
            return number.ToString("G2", CultureInfo.InvariantCulture);
        if (!double.IsInteger(number) && Math.Pow(10, Math.Floor(Math.Log10(number)) - 2) is var step)
            number = Math.Round(number / step) * step;
        return number.ToString("#,0", CultureInfo.InvariantCulture).Replace(',', ' ');
    }

    private static string Time(TimeSpan time) => time switch
    {
        { TotalSeconds: < 90 } => $"{Math.Ceiling(time.TotalSeconds):0} s",
        { TotalMinutes: < 90 } => $"{Math.Ceiling(time.TotalMinutes):0} min",
        { TotalHours: < 48 } => $"{time.TotalHours.ToString("0.#", CultureInfo.InvariantCulture)} h",
        _ => $"{time.TotalDays.ToString("0.#", CultureInfo.InvariantCulture)} days",
    };
}
