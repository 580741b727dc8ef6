using RigScenarios.Answers;
using RigScenarios.Days;
using RigScenarios.Files;
using RigScenarios.Limits;
using RigScenarios.Tests.Simulation;
using UnitsNet;

namespace RigScenarios.Tests.Answers;

/// <summary>What goes with a generator, with batteries over days, and with a charger's outlet.</summary>
public sealed class PowerCautionTests
{
    private static readonly string Island = Repository.Data("scenarios", "island-crossing.yaml");

    private static DayCharger Charger { get; } = new(ElectricCurrent.FromAmperes(3)) { Bays = 2 };

    private static DayPlan With(DayCharger charger) => Plans.Plan(2, 4) with { Chargers = Plans.One(charger) };

    [Fact]
    public void A_generator_has_its_exhaust_and_its_wet_plugs_in_every_answer_that_plans_one()
    {
        var cautions = PowerCautions.Generators(With(Charger with { PowerFrom = PowerSource.Generator })).ToList();
        Assert.Equal(2, cautions.Count);
        Each.Of((string[])["exhaust kills", "never in a room, van or tent", "6 m or more from doors, windows and vents"],
            words => Assert.Contains(words, cautions[0], StringComparison.Ordinal));
        Each.Of((string[])["dry", "residual-current device (30 mA)", "made for outdoors"],
            words => Assert.Contains(words, cautions[1], StringComparison.Ordinal));
        var answer = RigAnswer.Of(ScenarioFile.Read(Island), "tripod", [], new() { SeriesPoints = 0 },
            cancellation: TestContext.Current.CancellationToken);
        Each.Of(cautions, caution => Assert.Contains(caution, AnswerCautions.Of(answer)));
        Each.Of(cautions, caution => Assert.Contains(caution,
            Charts.Timeline.TimelineCautions.Of(answer.Plan, answer.Simulation)));
    }

    [Fact]
    public void Power_at_hours_from_nobody_knows_where_may_be_a_generator_and_the_mains_are_none()
    {
        var hours = Charger with { PowerHours = [new(new(12, 0), new(14, 0))] };
        Assert.StartsWith("If the charger's power is a generator's", PowerCautions.Generators(With(hours)).First(),
            StringComparison.Ordinal);
        Assert.Empty(PowerCautions.Generators(With(hours with { PowerFrom = PowerSource.Mains })));
        Assert.Empty(PowerCautions.Generators(With(Charger)));
        Assert.Empty(PowerCautions.Generators(With(Charger with { PowerFrom = PowerSource.Generator, Bays = 0 })));
    }

    [Fact]
    public void Batteries_over_days_are_stored_and_one_that_smokes_is_left()
    {
        Assert.Empty(PowerCautions.Batteries(Plans.Plan(2, 4)));
        Assert.Contains("don't touch it", Assert.Single(PowerCautions.Batteries(With(Charger))), StringComparison.Ordinal);
        var days = PowerCautions.Batteries(Plans.Plan(2, 4, 2)).ToList();
        Assert.Contains("40 to 60 % charge, cool and dry", days[0], StringComparison.Ordinal);
        Assert.Contains("call the fire service", days[1], StringComparison.Ordinal);
    }

    [Fact]
    public void A_charger_says_where_it_stands_and_how_many_volt_amperes_its_watts_may_be()
    {
        var standing = Charger with
        {
            Stands = "in the hall", Ambient = Temperature.FromDegreesCelsius(15), PowerFrom = PowerSource.Generator,
            PowerHours = [new(new(12, 0), new(14, 30))],
        };
        // 2 × 3 A × 16.8 V / 88 % = 114.5 W; over 0.6 that is 190.9 VA.
        Assert.Equal("charger: 2 bays of 3 A, in the hall, in air of 15 °C; power from a generator 12:00 to 14:30. It draws up "
            + "to 115 W, which is 191 VA at a power factor of 0.6, assumed; compare that with the outlet's label.",
            Assert.Single(ChargerWords.Of(With(standing))));
        var corrected = standing with { PowerFactor = Ratio.FromPercent(98), WallLimit = Power.FromWatts(90) };
        Assert.Contains("90 W, which is 92 VA at a power factor of 0.98; compare", ChargerWords.Of(With(corrected))[0],
            StringComparison.Ordinal);
        var rated = standing with { SupplyRating = ElectricApparentPower.FromVoltamperes(90) };
        Assert.EndsWith("54 W, which is 90 VA at a power factor of 0.6, assumed; the outlet is rated for 90 VA.",
            ChargerWords.Of(With(rated))[0], StringComparison.Ordinal);
        Assert.EndsWith("It gets no power.", ChargerWords.Of(With(standing with { WallLimit = Power.Zero }))[0],
            StringComparison.Ordinal);
    }

    [Fact]
    public void A_charger_that_is_counted_in_air_of_its_own_and_stands_nowhere_is_told()
    {
        var scenario = ScenarioFile.Read(Island);
        Assert.DoesNotContain(NotPlanned.Of(scenario, "tripod"), line => line.Contains("stands", StringComparison.Ordinal));
        var (name, charger) = scenario.Chargers.Single();
        var nowhere = scenario with { Chargers = scenario.Chargers.With(name, charger with { Stands = null }) };
        Assert.Contains("The file does not say where the charger \"two-bay\" stands (chargers.two-bay.stands): it is counted in "
            + "air of 15 °C.", NotPlanned.Of(nowhere, "tripod"));
    }

    [Theory]
    [InlineData(0.34, true)]
    [InlineData(0.36, false)]
    public void What_a_screw_clamps_by_feel_is_close_where_less_than_its_scatter_is_left(double share, bool close)
    {
        var limit = new Limit("cage", LimitKind.Clamping, Force.FromNewtons(1000 * (1 - share)), Force.FromNewtons(1000),
            new(LimitForce.Default, "1/4-20"));
        Assert.Equal(close, StatedErrors.IsClose(limit));
        Assert.Equal(!close, AnswerDetails.HoldsWithEase(limit));
    }
}
