using RigScenarios.Sweeps.Tables;

namespace RigScenarios.Tests.Sweeps.Tables;

/// <summary>Rate and time left, by a clock that the test turns.</summary>
public sealed class SweepPaceTests
{
    [Fact]
    public void It_goes_by_the_last_quarter_of_a_minute_and_not_by_what_was_done_before()
    {
        var clock = new TurnedClock();
        var pace = new SweepPace(500_000, 1_000_000, clock);
        Assert.Equal("500 000 of 1 000 000", pace.Words);
        for (var second = 1; second <= 60; second++)
        {
            clock.Now += TimeSpan.FromSeconds(1);
            pace.Tell(pace.Done + 1000);
        }
        Assert.Equal("560 000 of 1 000 000, 1 000 a second, about 8 min left", pace.Words);
        // The scenarios from here on take ten times as long.
        for (var second = 1; second <= 60; second++)
        {
            clock.Now += TimeSpan.FromSeconds(1);
            pace.Tell(pace.Done + 100);
        }
        Assert.Equal("566 000 of 1 000 000, 100 a second, about 73 min left", pace.Words);
        pace.Tell(1_000_000);
        Assert.StartsWith("1 000 000 of 1 000 000, ", pace.Words, StringComparison.Ordinal);
        Assert.DoesNotContain("left", pace.Words, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0.25, "0.25 a second, about 11.1 h left")]
    [InlineData(123.4, "123 a second, about 82 s left")]
    [InlineData(0.01, "0.01 a second, about 11.6 days left")]
    public void Slow_and_quick_sweeps_are_told_in_units_that_people_use(double rate, string words)
    {
        var clock = new TurnedClock();
        var pace = new SweepPace(0, 10_100, clock);
        clock.Now += TimeSpan.FromSeconds(100 / rate);
        pace.Tell(100);
        Assert.Equal($"100 of 10 100, {words}", pace.Words);
    }

    private sealed class TurnedClock : TimeProvider
    {
        public TimeSpan Now { get; set; }

        public override long TimestampFrequency => TimeSpan.TicksPerSecond;

        public override long GetTimestamp() => Now.Ticks;
    }
}
