using RigScenarios.Files;
using RigScenarios.Parts;
using RigScenarios.Scenarios;
using UnitsNet;

namespace RigScenarios.Tests.Files;

public class BestRigTests
{
    private const string Question = """
        best-rig:
          build: one
          days: [day]
          slots:
            light: {parts: [light, lamp], may-stay-empty: yes}
            power: {replaces: flat, kind: battery, from-kit: [spare]}
          musts: {lasts: {air: -5 °C, reserve: 15 %, reserve-time: 30 min}, flies: with-approval, balances: yes, holds: yes,
            budget: 900 EUR, mass: 3 kg, close-will-do: yes}
          wishes: [least-mass, largest-margin]
          upgrade: {budget-a-year: 400 EUR, years: 3}
        """;

    [Fact]
    public void Every_field_is_read_and_written_back()
    {
        var scenario = Read(Question).Scenario!;
        var best = scenario.BestRig!;
        Assert.Equal(("one", "flat", "light"), (best.Build, best.ReplacedBy("power"), best.ReplacedBy("light")));
        Assert.Equal(["light", "lamp"], best.Slots["light"].Parts);
        Assert.Equal(["spare"], best.Slots["power"].FromKit);
        Assert.Equal((true, PartKind.Battery), (best.Slots["light"].MayStayEmpty, best.Slots["power"].Kind));
        Assert.Equal(new LastsMust(Temperature.FromDegreesCelsius(-5), Ratio.FromPercent(15), Duration.FromMinutes(30)),
            best.Musts.Lasts);
        Assert.Equal((FliesMust.WithApproval, true, true, true), (best.Musts.Flies!.Value, best.Musts.Balances, best.Musts.Holds,
            best.Musts.CloseWillDo));
        Assert.Equal((new Money(900, "EUR"), Mass.FromKilograms(3)), (best.Musts.Budget!.Value, best.Musts.Mass!.Value));
        Assert.Equal([RigWish.LeastMass, RigWish.LargestMargin], best.Wishes);
        Assert.Equal(new UpgradeTerms { BudgetAYear = new Money(400, "EUR"), Years = 3 }, best.Upgrade);
        var text = ScenarioFile.Text(scenario);
        var (again, problems) = ScenarioFile.TryReadText(text, "again.yaml");
        Assert.Empty(problems);
        Assert.Equal(text, ScenarioFile.Text(again!));
        Assert.Contains("best-rig:", text, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_left_out_asks_for_nothing_and_wishes_for_money_and_time()
    {
        var best = Read("best-rig: {build: one, slots: {flat: {kind: battery}}}").Scenario!.BestRig!;
        Assert.Equal(new RigMusts(), best.Musts);
        Assert.Equal([RigWish.LeastCost, RigWish.LongestDay], best.Wishes);
        Assert.Empty(best.Days);
        Assert.Null(best.Upgrade);
    }

    [Theory]
    [InlineData("build: one", "build: won", "best-rig.build: The scenario has no build \"won\". Accepted: one.")]
    [InlineData("days: [day]", "days: [days]", "best-rig.days.1: The scenario has no day \"days\". Did you mean \"day\"?")]
    [InlineData("[light, lamp]", "[light, lmap]", "best-rig.slots.light.parts.2: There is no part \"lmap\" in this file or its "
        + "parts files. Did you mean \"lamp\"?")]
    [InlineData("[light, lamp]", "[light, flat]", "best-rig.slots.light.parts.2: \"flat\" is a battery, and \"light\" is a "
        + "monitor.")]
    [InlineData("replaces: flat", "replaces: flatt", "best-rig.slots.power.replaces: The build \"one\" has no \"flatt\". Did you "
        + "mean \"flat\"?")]
    [InlineData("power: {replaces: flat, ", "power: {", "best-rig.slots.power: The build \"one\" has no "
        + "\"power\", and the slot does not say what it replaces.")]
    [InlineData("kind: battery", "kind: plate", "best-rig.slots.power.kind: \"flat\" (Flat battery) is a battery: parts of "
        + "another kind can't stand in its place.")]
    [InlineData("from-kit: [spare]", "from-kit: [spear]", "best-rig.slots.power.from-kit.1: There is nothing named \"spear\" in "
        + "the kit. Did you mean \"spare\"?")]
    [InlineData("from-kit: [spare]", "from-kit: [camera]", "best-rig.slots.power.from-kit.1: \"camera\" (Camera) is not a "
        + "battery.")]
    [InlineData("from-kit: [spare]", "may-stay-empty: yes", "best-rig.slots.power.may-stay-empty: \"flat\" can't be left out: it "
        + "is the build's battery.")]
    [InlineData("light: {parts: [light, lamp]", "light: {replaces: flat, kind: battery", "best-rig.slots.power: \"flat\" is "
        + "replaced by two slots: light, power.")]
    [InlineData("least-mass, largest", "least-mass, least-mass, largest", "best-rig.wishes: \"least-mass\" stands in the list "
        + "twice.")]
    [InlineData("flies: with-approval", "flies: with-aproval", "best-rig.musts.flies: Found \"with-aproval\". Did you mean "
        + "\"with-approval\"?")]
    [InlineData("wishes: [least-mass, largest-margin]", "wishes: [least-cost]", "best-rig.upgrade: The purchases of some years "
        + "need a wish to serve, and there is none but \"least-cost\". Accepted: a wish such as \"longest-day\"")]
    [InlineData("budget-a-year: 400 EUR", "budget-a-year: 400 CHF", "best-rig.upgrade.budget-a-year: 400 CHF is in another "
        + "currency than the other amounts of this scenario (EUR)")]
    [InlineData("budget-a-year: 400 EUR", "budget-a-year: 400", "best-rig.upgrade.budget-a-year: Found \"400\"")]
    [InlineData("budget-a-year: 400 EUR, ", "", "best-rig.upgrade.budget-a-year")]
    [InlineData("years: 3", "years: 0", "best-rig.upgrade.years: Found \"0\". Accepted: a whole number, 1 to 20")]
    [InlineData("years: 3", "yaers: 3", "best-rig.upgrade.yaers")]
    [InlineData("reserve: 15 %", "reserve: 150 %", "best-rig.musts.lasts.reserve: Found \"150 %\"")]
    public void A_mistake_is_told_at_its_line_with_the_nearest_name(string right, string wrong, string told)
    {
        Assert.Contains(right, Question, StringComparison.Ordinal);
        var problems = Read(Question.Replace(right, wrong, StringComparison.Ordinal)).Problems;
        Assert.Contains(problems, problem => problem.ToString().Contains(told, StringComparison.Ordinal) && problem.At.Line > 10);
    }

    [Fact]
    public void What_feeds_something_can_not_be_left_out()
    {
        var problems = Read("best-rig: {build: one, slots: {regulator: {kind: regulator, may-stay-empty: yes}}}",
            "regulators: {regulator: {}}", "{camera: {essential: yes, fed-by: regulator}, light: {}}").Problems;
        Assert.Contains(problems, problem => problem.Problem == "\"regulator\" can't be left out: it feeds \"camera\".");
    }

    [Fact]
    public void A_scenario_on_its_own_takes_the_candidates_along()
    {
        var scenario = ScenarioFile.Read(Repository.Data("scenarios", "winter-harbour.yaml")) with
        {
            BestRig = new BestRig
            {
                Build = "tripod",
                Slots = new([KeyValuePair.Create("brick", new RigSlot { Parts = ["brick-98wh"], Kind = PartKind.Battery })]),
            },
        };
        var (again, problems) = ScenarioFile.TryReadText(ScenarioFile.Text(scenario.SelfContained()), "alone.yaml");
        Assert.DoesNotContain(problems, problem => problem.Severity == Severity.Error);
        Assert.NotNull(again!.FindPart("brick-290wh"));
        Assert.NotNull(again.FindPart("brick-98wh"));
    }

    [Fact]
    public void Interfaces_of_parts_are_read_and_written_back()
    {
        var scenario = Read("", parts: "  arm: {kind: arm, name: Arm, needs: [1/4-20 threads], gives: [shoe, pin]}")
            .Scenario!;
        Assert.Equal(["1/4-20 threads"], scenario.FindPart("arm")!.Needs);
        Assert.Equal(["shoe", "pin"], scenario.FindPart("arm")!.Gives);
        Assert.Contains("gives: [shoe, pin]", ScenarioFile.Text(scenario), StringComparison.Ordinal);
    }

    private static (Scenario? Scenario, IReadOnlyList<Diagnostic> Problems) Read(string question, string build = "",
        string devices = "{camera: {essential: yes}, light: {}}", string parts = "")
    {
        var text = SmallScenario.Text(devices, build, parts: "  lamp: {kind: monitor, name: Lamp, power: "
            + "{standby: 1 W, record: 2 W}}\n" + parts).Replace("kit: {flat: {part: flat},",
            "kit: {flat: {part: flat}, spare: {part: flat},", StringComparison.Ordinal);
        return ScenarioFile.TryReadText($"{text}\n{question}\n", "best.yaml");
    }
}
