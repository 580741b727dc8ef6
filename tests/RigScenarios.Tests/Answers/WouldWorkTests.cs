using RigScenarios.Answers;
using RigScenarios.Files;
using RigScenarios.Limits;

namespace RigScenarios.Tests.Answers;

/// <summary>What would make it work: every set was run, and gives what it promises when it is applied.</summary>
public class WouldWorkTests
{
    public static TheoryData<string, string> Builds
    {
        get
        {
            var data = new TheoryData<string, string>();
            foreach (var file in Repository.ScenarioFiles)
            {
                foreach (var build in ScenarioFile.Read(file).Builds.Keys)
                    data.Add(Path.GetFileName(file), build);
            }
            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Builds))]
    public void On_every_demo_a_set_holds_when_it_is_applied_to_the_digit_or_what_stays_in_the_way_is_told(string file,
        string build)
    {
        var cancellation = TestContext.Current.CancellationToken;
        var scenario = ScenarioFile.Read(Repository.Data("scenarios", file));
        var now = RigAnswer.Of(scenario, build, [], AnswerOptions.EndOnly, cancellation: cancellation);
        var sets = WouldWork.Find(now, cancellation: cancellation);

        if (now.Verdict is Verdict.Holds or Verdict.NotKnown)
        {
            Assert.False(sets.Asked);
            return;
        }
        Assert.True(sets.Sets.Count > 0 || now.Verdict == Verdict.Close || WouldWorkSentences.InTheWay(sets).Count > 0);
        foreach (var set in sets.Sets)
        {
            Each.HasNot(set.Then.Questions, question => question.Verdict == Verdict.Fails);
            var applied = ScenarioPath.SetAll(scenario, set.Settings.Select(setting => (setting.Path, setting.Value)));
            
            // What is run for a caution alone is left out of both.
            var again = RigAnswer.Of(applied, build, [], new AnswerOptions { FollowsUp = false }, cancellation: cancellation);
            Assert.Equal(AnswerShape.Of(set.Then, null).ToJsonString(), AnswerShape.Of(again, null).ToJsonString());
            Assert.Equal(AnswerSentences.Headline(set.Then), AnswerSentences.Headline(again));
        }
    }

    [Fact]
    public void No_set_can_do_with_one_change_less()
    {
        var cancellation = TestContext.Current.CancellationToken;
        foreach (var file in Repository.ScenarioFiles)
        {
            var scenario = ScenarioFile.Read(file);
            var now = RigAnswer.Of(scenario, scenario.Builds.Keys.First(), [], AnswerOptions.EndOnly, cancellation: cancellation);
            foreach (var set in WouldWork.Find(now, cancellation: cancellation).Sets.Where(set => set.Changes.Count > 1))
            {
                foreach (var left in set.Changes)
                {
                    var rest = set.Changes.Where(change => change != left).SelectMany(change => change.Settings)
                        .Select(setting => (setting.Path, setting.Value));
                    var without = RigAnswer.Of(ScenarioPath.SetAll(scenario, rest), now.Build, [], AnswerOptions.EndOnly,
                        cancellation: cancellation);
                    Assert.True(without.Verdict > set.Then.Verdict,
                        $"{scenario.Title}: without \"{left.Words}\" it holds as well.");
                }
            }
        }
    }

    [Fact]
    public void Nothing_is_looked_for_where_everything_holds()
    {
        var now = RigAnswer.Of(SmallScenario.Read(SmallScenario.Text()), "one", [], AnswerOptions.EndOnly,
            cancellation: TestContext.Current.CancellationToken);

        Assert.Equal(Verdict.Holds, now.Of(QuestionKind.Power)!.Verdict);
        Assert.False(WouldWork.Find(now, cancellation: TestContext.Current.CancellationToken).Asked);
    }

    [Fact]
    public void A_search_can_be_stopped()
    {
        using var stop = new CancellationTokenSource();
        var now = RigAnswer.Of(SmallScenario.Read(SmallScenario.Text(blocks: "{all: {length: 9 h, others: record}}")), "one", [],
            AnswerOptions.EndOnly, cancellation: TestContext.Current.CancellationToken);
        stop.Cancel();

        Assert.Throws<OperationCanceledException>(() => WouldWork.Find(now, cancellation: stop.Token));
    }

    [Fact]
    public void A_device_is_switched_off_only_where_nobody_looks_at_a_picture()
    {
        const string blocks = "{check: {length: 1 h, states: {camera: standby, light: standby}}, wait: {length: 1 h, states: "
            + "{camera: standby}}, takes: {length: 9 h, others: record}}";
        var now = RigAnswer.Of(SmallScenario.Read(SmallScenario.Text(devices: "{camera: {essential: yes}, light: {}}",
            blocks: blocks)), "one", [], AnswerOptions.EndOnly, cancellation: TestContext.Current.CancellationToken);

        var off = Assert.Single(CandidateChanges.Of(now),
            change => change.Words.StartsWith("Switch the camera off", StringComparison.Ordinal));
        Assert.Equal(["days.day.blocks.wait.states.camera=off"], off.Settings.Select(setting => setting.ToString()));
    }

    [Fact]
    public void A_new_battery_says_that_it_is_new_and_a_second_one_leaves_the_first_its_age()
    {
        const string other = "  larger: {kind: battery, name: Larger battery, battery: {energy: 200 Wh, voltage: 10 V}}";
        var now = RigAnswer.Of(
            SmallScenario.Read(SmallScenario.Text(battery: ", capacity-left: 80 %, resistance-growth: 1.5", parts: other,
                blocks: "{all: {length: 9 h, others: record}}")), "one", [], AnswerOptions.EndOnly,
            cancellation: TestContext.Current.CancellationToken);
        var changes = CandidateChanges.Of(now);

        var larger = Assert.Single(changes, change => change.Words.StartsWith("Take a new Larger battery",
            StringComparison.Ordinal));
        Assert.Equal(["kit.flat.part=larger", "builds.one.battery.capacity-left=100 %", "builds.one.battery.resistance-growth=1"],
            larger.Settings.Select(setting => setting.ToString()));
        var second = Assert.Single(changes, change => change.Words.StartsWith("Carry a second battery, a new Larger battery",
            StringComparison.Ordinal));
        Assert.Contains("batteries.first={item: flat, capacity-left: 80 %, resistance-growth: 1.5}",
            second.Settings.Select(setting => setting.ToString()));
        Assert.Contains("batteries.second={item: larger}", second.Settings.Select(setting => setting.ToString()));
    }
}
