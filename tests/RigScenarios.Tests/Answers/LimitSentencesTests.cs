using RigScenarios.Answers;
using RigScenarios.Days;
using RigScenarios.Limits;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Tests.Answers;

/// <summary>Limits in words, read the right way round.</summary>
public class LimitSentencesTests
{
    private static readonly AnswerTimes Times = new([new ShootingDay
    {
        Starts = new TimeOnly(9, 0),
        Blocks = OrderedMap<DayBlock>.Empty.With("one", new DayBlock { Title = "Interview one", Length = Duration.FromHours(4) }),
    }]);

    private static readonly LimitMoment At = new(Duration.FromHours(11.4), 1, "one");

    [Fact]
    public void A_current_past_its_rating_says_by_how_much_when_and_where() =>
        Assert.Equal(
            "cable of the camera: 5.2 A of 3.0 A rated, 73 % over, at 11:24 in Interview one",
            LimitSentences.Of(new("cable of camera", LimitKind.RatedCurrent, ElectricCurrent.FromAmperes(5.2),
                ElectricCurrent.FromAmperes(3), LimitBasis.PartsFile) { At = At }, Times));

    [Theory]
    [InlineData(11.04, "camera: 11.04 V, 0.06 V under its least 11.10 V")]
    [InlineData(11.56, "camera: 11.56 V, 0.46 V over its least 11.10 V")]
    public void A_lower_limit_reads_the_right_way_round(double volts, string words) =>
        Assert.Equal(words,
            LimitSentences.Of(new("camera", LimitKind.LowestVoltage, ElectricPotential.FromVolts(volts),
            ElectricPotential.FromVolts(11.1), LimitBasis.PartsFile), null));

    [Fact]
    public void A_temperature_has_no_percent()
    {
        var limit = new Limit("battery", LimitKind.Temperature, Temperature.FromDegreesCelsius(41),
            Temperature.FromDegreesCelsius(60), LimitBasis.PartsFile);

        Assert.Equal("battery: 41 °C, 19 K under its highest 60 °C", LimitSentences.Of(limit, null));
        Assert.Equal("19 K left", LimitSentences.Left(limit));
        Assert.Null(AnswerShape.Limit(limit)["share"]);
        Assert.Equal(19, (double)AnswerShape.Limit(limit)["left"]!);
    }

    [Fact]
    public void Where_no_rating_is_known_it_says_so() =>
        Assert.Equal("no rating is known",
            LimitSentences.Left(new("arm", LimitKind.Moment, Torque.FromNewtonMeters(1), null, LimitBasis.PartsFile)));

    [Fact]
    public void Every_kind_has_words_and_numbers_with_a_unit()
    {
        foreach (var kind in Enum.GetValues<LimitKind>())
        {
            var one = ElectricCurrent.FromAmperes(1);
            var limit = new Limit("thing", kind, one, 2 * one, LimitBasis.PartsFile);
            Assert.NotEqual("", LimitSentences.Of(limit, null));
            Assert.Equal("A", (string?)AnswerShape.Limit(limit)["unit"]);
        }
    }

    [Theory]
    [InlineData(86, "1 h 26 min")]
    [InlineData(136, "2 h 16 min")]
    [InlineData(120, "2 h")]
    [InlineData(45, "45 min")]
    [InlineData(-17, "-17 min")]
    public void A_length_is_written_one_way(double minutes, string words) =>
        Assert.Equal(words, AnswerTimes.Length(Duration.FromMinutes(minutes)));

    [Fact]
    public void A_clock_runs_past_midnight_and_names_the_day_where_there_are_several()
    {
        var day = new ShootingDay { Starts = new TimeOnly(19, 0),
            Blocks = OrderedMap<DayBlock>.Empty.With("night", new DayBlock { Length = Duration.FromHours(8) }) };

        Assert.Equal("at 01:30", new AnswerTimes([day]).When(Duration.FromHours(25.5)));
        Assert.Equal("at 20:00 on day 2", new AnswerTimes([day, day]).When(Duration.FromHours(44)));
        Assert.Equal("2 h into the day", new AnswerTimes([day with { Starts = null }]).At(Duration.FromHours(10)));
    }
}
