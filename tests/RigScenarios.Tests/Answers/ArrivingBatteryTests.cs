using RigScenarios.Answers;
using RigScenarios.Limits;
using RigScenarios.Scenarios;

namespace RigScenarios.Tests.Answers;

/// <summary>
/// Journey and days are one answer: what a journey before the days leaves behind takes no part in them. By hand: 20 W on a
/// battery of 100 Wh last 5 h, on one of 200 Wh 10 h; the day has 8 h. No battery above 160 Wh travels as baggage, and of those
/// above 100 Wh a person takes two spare ones (International Civil Aviation Organization, Technical Instructions, edition of
/// 2026, part 8; second-hand, as docs/travel.md has it).
/// </summary>
public class ArrivingBatteryTests
{
    private const string Flight = "out: {title: Out, date: 2026-11-30, by: flight";

    [Fact]
    public void What_cannot_fly_takes_no_part_in_the_days()
    {
        var answer = Of($"{Flight}}}");

        Assert.Equal("large", Assert.Single(answer.Staying).Name);
        Assert.Equal(["small"], answer.Plan.Batteries.Keys);
        Assert.Equal(-3, answer.Reserve.Time.Hours, 2);
        Assert.Equal(Verdict.Fails, answer.Of(QuestionKind.Power)!.Verdict);
        Assert.Equal(Verdict.Fails, answer.Of(QuestionKind.Travel)!.Verdict);
        Assert.Equal("No: the Large battery stays behind, and without it the camera stops 5 h into the day, 3 h before wrap.",
            AnswerSentences.Headline(answer));
        Assert.Equal("With the Large battery: it lasts the day with 7 h left. Without it: the camera stops 5 h into the day, "
            + "3 h before wrap; in all it is down for 3 h.", ArrivalSentences.Cost(answer, Everything(answer)));
    }

    [Theory]
    [InlineData("out-freight: {date: 2026-11-30, by: cargo, batteries: [large], packed: {large: {charge: 28 %}}}")]
    [InlineData("out-road: {date: 2026-11-30, by: road, batteries: [large]}")]
    public void What_goes_another_way_arrives(string other)
    {
        var answer = Of($"{Flight}}}, {other}");

        Assert.Empty(answer.Staying);
        Assert.Equal(7, answer.Reserve.Time.Hours, 2);
        Assert.Equal(Verdict.Holds, answer.Of(QuestionKind.Travel)!.Verdict);
        Assert.Null(ArrivalSentences.Cost(answer, Everything(answer)));
    }

    [Fact]
    public void Another_way_after_the_days_brings_nothing_to_them()
    {
        var answer = Of($"{Flight}}}, later: {{date: 2026-12-30, by: road, batteries: [large], after-days: yes}}");

        Assert.Equal("large", Assert.Single(answer.Staying).Name);
    }

    [Fact]
    public void A_journey_after_the_days_takes_nothing_from_them()
    {
        var answer = Of($"{Flight}, after-days: yes}}");

        Assert.Empty(answer.Staying);
        Assert.Equal(Verdict.Holds, answer.Of(QuestionKind.Power)!.Verdict);
        Assert.Equal(Verdict.Fails, answer.Of(QuestionKind.Travel)!.Verdict);
    }

    [Fact]
    public void With_everything_is_the_answer_of_a_file_without_the_journey()
    {
        var with = Of($"{Flight}}}").WithEverything(TestContext.Current.CancellationToken);
        var scenario = Read($"{Flight}}}");
        var none = Of(scenario with { Journeys = scenario.Journeys.Without("out") });

        Assert.Equal(none.Reserve.Time.Seconds, with.Reserve.Time.Seconds);
        Assert.Equal(none.Plan.Batteries.Keys, with.Plan.Batteries.Keys);
    }

    [Fact]
    public void Of_equal_ones_the_most_worn_stays()
    {
        var text = Text($"{Flight}}}").Replace("energy: 200 Wh", "energy: 150 Wh", StringComparison.Ordinal)
            .Replace("large: {part: large}", "large: {part: large, count: 3}", StringComparison.Ordinal)
            .Replace("large: {item: large}", "a: {item: large}, b: {item: large, capacity-left: 80 %}, c: {item: large}",
                StringComparison.Ordinal);
        var answer = Of(SmallScenario.Read(text));

        Assert.Equal("b", Assert.Single(answer.Staying).Name);
        Assert.Equal(["small", "a", "c"], answer.Plan.Batteries.Keys);
    }

    [Fact]
    public void Where_no_battery_arrives_power_fails_and_says_so()
    {
        var text = Text($"{Flight}, batteries: [large]}}").Replace("small: {item: flat}, ", "", StringComparison.Ordinal);
        var answer = Of(SmallScenario.Read(text));

        Assert.True(answer.NothingArrives);
        Assert.Equal(Verdict.Fails, answer.Of(QuestionKind.Power)!.Verdict);
        Assert.Equal("No: no battery gets there: the Large battery stays behind on \"Out\".", AnswerSentences.Headline(answer));
    }

    [Fact]
    public void Sending_it_another_way_makes_it_work()
    {
        var sets = WouldWork.Find(Of($"{Flight}}}"), cancellation: TestContext.Current.CancellationToken);

        Assert.Equal(Verdict.Holds, sets.Reach);
        Each.Of(sets.Sets, set => Assert.Empty(set.Then.Staying));
        Assert.Contains(sets.Sets, set => set.Changes[0].Words.Contains("by road", StringComparison.Ordinal));
        Assert.Contains(sets.Sets, set => set.Changes[0].Words.Contains("as freight", StringComparison.Ordinal));
    }

    private static RigAnswer Everything(RigAnswer answer) => answer.WithEverything(TestContext.Current.CancellationToken);

    private static RigAnswer Of(string journeys) => Of(Read(journeys));

    private static RigAnswer Of(Scenario scenario) =>
        RigAnswer.Of(scenario, "one", [], AnswerOptions.EndOnly, cancellation: TestContext.Current.CancellationToken);

    private static Scenario Read(string journeys) => SmallScenario.Read(Text(journeys));

    private static string Text(string journeys)
    {
        var battery = SmallScenario.Battery[..SmallScenario.Battery.IndexOf("  camera:", StringComparison.Ordinal)];
        var large = battery.Replace("flat:", "large:", StringComparison.Ordinal)
            .Replace("Flat battery", "Large battery", StringComparison.Ordinal)
            .Replace("100 Wh", "200 Wh", StringComparison.Ordinal).Replace("10 Ah", "20 Ah", StringComparison.Ordinal);
        return SmallScenario.Text(blocks: "{all: {length: 8 h, others: record}}", parts: large.TrimEnd())
            .Replace("plate: {part: plate}}", "plate: {part: plate}, large: {part: large}}", StringComparison.Ordinal)
            + "\nbatteries: {small: {item: flat}, large: {item: large}}\nswaps: {swap-time: 0 s, restart: 0 s}"
            + $"\njourneys: {{{journeys}}}\n";
    }
}
