using System.Text;
using RigScenarios.Fits.Logs;
using RigScenarios.Scenarios;

namespace RigScenarios.Tests.Fits.Logs;

public class PowerLogFileTests
{
    [Theory]
    [InlineData("time_s,voltage_V,current_A\n0,16.5,1.5\n60,16.4,1.6\n120,16.3,1.7\n")]
    [InlineData("Time (s);U (mV);I (mA)\r\n0;16500;1500\r\n60;16400;1600\r\n120;16300;1700\r\n")]
    [InlineData("t/min\tVoltage/V\tCurrent/A\n0\t16,5\t1,5\n1\t16,4\t1,6\n2\t16,3\t1,7\n")]
    [InlineData("\"Elapsed ms\",\"Bus "
        + "voltage\",\"Current\"\n\"0\",\"16,5\",\"1,5\"\n\"60000\",\"16,4\",\"1,6\"\n\"120000\",\"16,3\",\"1,7\"\n")]
    [InlineData("\uFEFFclock;voltage;current\n0:00:00;16.5 V;1.5 A\n0:01:00;16.4 V;1.6 A\n0:02:00;16.3 V;1.7 A")]
    [InlineData("Logger of a bench, range 20 A\nStarted 2026-11-30\n\nTime|Temp C|Voltage|Current|Power "
        + "W\ns|C|mV|A|W\n0|20|16500|1.5|24\n60|20|16400|1.6|26\n120|20|16300|1.7|27\n")]
    [InlineData("timestamp,current,voltage\n2026-11-30T23:59:00Z,1.5,16.5\n2026-12-01T00:00:00Z,1.6,16.4\n"
        + "2026-12-01T00:01:00Z,1.7,16.3\n")]
    [InlineData("Date,Time,V,A\n30.11.2026,10:00:00,16.5,1.5\n30.11.2026,10:01:00,16.4,1.6\n30.11.2026,10:02:00,16.3,1.7\n")]
    [InlineData("time;u;i\n30.11.2026 10:00:00;16,5;1,5\n30.11.2026 10:01:00;16,4;1,6\n30.11.2026 10:02:00;16,3;1,7\n")]
    [InlineData("when,voltage,current,time\n11/30/2026 11:59:00 PM,16.5,1500,0\n12/1/2026 12:00:00 AM,16.4,1600,60\n12/1/2026 "
        + "12:01:00 AM,16.3,1700,120\n")]
    public void Usual_ways_to_write_a_log_are_read_alike(string text)
    {
        var log = Read(text);

        Assert.Equal([0, 60, 120], log.Rows.Seconds.ToArray());
        Close([16.5, 16.4, 16.3], log.Rows.Volts);
        Close([1.5, 1.6, 1.7], log.Rows.Amperes);
        Assert.Equal(new LogCounts(3, 0, 0, 0, Flipped: false, 0, 0, FirstDropped: null), log.Counts);
        Assert.Equal(60, log.Median.Seconds);
    }

    [Fact]
    public void What_was_guessed_is_told()
    {
        var log = Read("time;U (mV);I\n0;16500;1500\n60;16400;1600\n120;16300;1700\n");

        Assert.Equal(
        [
            new(LogQuantity.Time, "time", 1, 1, Guessed: true, UnitFrom.Usual),
            new(LogQuantity.Voltage, "U (mV)", 2, 0.001, Guessed: true, UnitFrom.Header),
            new(LogQuantity.Current, "I", 3, 0.001, Guessed: true, UnitFrom.Size),
        ], log.Columns);
        Assert.Equal((';', '.'), (log.Separator, log.DecimalMark));
    }

    [Fact]
    public void Told_columns_are_taken_with_their_factors()
    {
        var columns = new LogColumns
        {
            Time = new("ticks", 0.5),
            Voltage = new("CH2", 10),
            Current = new("ch1", -1),
            Samples = true,
        };

        var log = Read("ticks,ch1,ch2\n0,-1.5,1.65\n120,-1.6,1.64\n", columns);

        Assert.Equal([0, 60], log.Rows.Seconds.ToArray());
        Close([16.5, 16.4], log.Rows.Volts);
        Close([1.5, 1.6], log.Rows.Amperes);
        Assert.True(log.Rows.Samples);
    }

    [Fact]
    public void Columns_without_names_are_told_by_their_numbers()
    {
        var columns = new LogColumns { Time = new("1"), Voltage = new("3"), Current = new("2") };

        var log = Read("0,1.5,16.5\n60,1.6,16.4\n", columns);

        Close([16.5, 16.4], log.Rows.Volts);
    }

    [Fact]
    public void Rows_without_three_numbers_are_left_out_and_counted()
    {
        var log =
            Read("time,voltage,current\n0,16.5,1.5\n60,,1.6\n120,16.3,NaN\n180\n\n240,OL,1\n300,16.1,1.7,9\n360,\"16,1.7\n");

        Assert.Equal([0, 300], log.Rows.Seconds.ToArray());
        Assert.Equal((7, 5), (log.Counts.Rows, log.Counts.Dropped));
        Assert.Equal(new(3, "voltage", ""), log.Counts.FirstDropped);
    }

    [Fact]
    public void A_clock_that_begins_anew_goes_on_after_the_row_before()
    {
        var log = Read("time,voltage,current\n100,16.5,1.5\n160,16.4,1.5\n220,16.3,1.5\n3,16.2,1.5\n63,16.1,1.5\n1,16,1.5\n");

        Assert.Equal([0, 60, 120, 180, 240, 300], log.Rows.Seconds.ToArray());
        Assert.Equal(2, log.Counts.Resets);
    }

    [Fact]
    public void Rows_of_one_time_become_their_mean()
    {
        var log = Read("time,voltage,current\n0,16.5,1.5\n60,16,1\n60,17,2\n60,18,3\n120,16,1\n");

        Assert.Equal([0, 60, 120], log.Rows.Seconds.ToArray());
        Close([16.5, 17, 16], log.Rows.Volts);
        Close([1.5, 2, 1], log.Rows.Amperes);
        Assert.Equal(2, log.Counts.Duplicates);
    }

    [Theory]
    [InlineData("-1.5", "16.0", true)]
    [InlineData("1.5", "16.0", false)]
    [InlineData("-1.5", "16.9", false)]
    public void A_current_counted_the_other_way_is_turned_where_the_voltage_falls(string amperes, string last, bool flipped)
    {
        var text = $"time,voltage,current\n0,16.5,{amperes}\n20,16.4,{amperes}\n40,{last},{amperes}\n";

        var log = Read(text);

        Assert.Equal(flipped, log.Counts.Flipped);
        Assert.Equal(flipped ? 1.5 : double.Parse(amperes), log.Rows.Amperes[0]);
    }

    [Fact]
    public void A_charge_ends_one_log_and_begins_another()
    {
        var text = new StringBuilder("time,voltage,current\n");
        for (var minute = 0; minute < 60; minute++)
        {
            // Twenty minutes out, twenty in, twenty out.
            text.Append($"{60 * minute},{(minute is >= 20 and < 40 ? 16.5 : 16)},{(minute is >= 20 and < 40 ? -0.5 : 2)}\n");
        }

        var log = Read(text.ToString());

        Assert.Equal([20, 20], log.Parts.Select(part => part.Count));
        Assert.Equal([0, 2400], log.Parts.Select(part => part.StartsAtSeconds));
        Each.Of(log.Parts, part => Assert.Equal(0, part.Seconds[0]));
        Assert.Equal(20, log.Counts.Charging);
    }

    [Fact]
    public void A_short_current_back_is_no_charge()
    {
        var log = Read("time,voltage,current\n0,16.5,2\n10,16.6,-1\n60,16.3,2\n120,16.2,2\n");

        Assert.Single(log.Parts);
        Assert.Equal(-1, log.Rows.Amperes[1]);
    }

    [Fact]
    public void Gaps_are_counted()
    {
        var log = Read("time,voltage,current\n0,16.5,2\n10,16.5,2\n20,16.5,2\n30,16.5,2\n130,16.4,2\n231,16.3,2\n");

        // Ten usual intervals are 100 s.
        Assert.Equal(1, log.Counts.Gaps);
    }

    [Fact]
    public void Two_bytes_a_letter_are_read_where_the_file_begins_so()
    {
        using var folder = new TemporaryFolder();
        var path = folder.Write("log.csv", Encoding.Unicode.GetPreamble().Concat(
            Encoding.Unicode.GetBytes("time,voltage,current\n0,16.5,2\n60,16.4,2\n")).ToArray());

        Assert.Equal(2, PowerLogFile.Read(path, cancellation: TestContext.Current.CancellationToken).Rows.Count);
    }

    [Fact]
    public void A_long_text_without_rows_is_left_after_its_beginning()
    {
        var text = new EndlessText();

        var (log, problems) = PowerLogFile.TryRead(
            text, "log.csv", cancellation: TestContext.Current.CancellationToken);

        Assert.Null(log);
        Assert.Single(problems);
        Assert.True(text.Taken < 1 << 20, $"{text.Taken} characters were read.");
    }

    [Fact]
    public void Reading_can_be_ended()
    {
        var text = new StringBuilder("time,voltage,current\n");
        for (var row = 0; row < 100_000; row++)
            text.Append(row).Append(",16.5,2\n");

        Assert.Throws<OperationCanceledException>(() =>
            PowerLogFile.TryRead(new StringReader(text.ToString()), "log.csv", null, new CancellationToken(canceled: true)));
    }

    private static LogReading Read(string text, LogColumns? columns = null)
    {
        var (reading, problems) = PowerLogFile.TryRead(new StringReader(text), "log.csv", columns);
        return reading ?? throw new ScenarioProblemsException(problems);
    }

    private static void Close(double[] expected, ReadOnlySpan<double> actual) =>
        Each.Pair(expected, actual.ToArray(), (one, other) => Assert.Equal(one, other, 1e-12));

    private sealed class EndlessText : TextReader
    {
        public long Taken { get; private set; }

        public override int Read(char[] buffer, int index, int count)
        {
            Array.Fill(buffer, 'x', index, count);
            Taken += count;
            return count;
        }
    }
}
