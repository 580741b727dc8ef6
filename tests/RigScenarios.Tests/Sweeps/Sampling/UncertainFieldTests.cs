using RigScenarios.Files;
using RigScenarios.Scenarios;
using RigScenarios.Sweeps.Sampling;

namespace RigScenarios.Tests.Sweeps.Sampling;

public sealed class UncertainFieldTests
{
    private const string Energy = "parts.brick-190wh.battery.energy";
    private const string Growth = "builds.tripod.battery.resistance-growth";
    private const string Charge = "builds.tripod.battery.charge";
    private const string Air = "days.day-one.ambient";

    private static readonly Scenario Harbour = ScenarioFile.Read(Repository.Data("scenarios", "winter-harbour.yaml"));

    [Theory]
    [InlineData(Energy + "=190 Wh +- 8 Wh", "150 Wh|190 Wh|230 Wh", null)]
    [InlineData(Energy + "=190 Wh ± 4 %", "152 Wh|190 Wh|228 Wh", "190 Wh +- 7.6 Wh")]
    [InlineData(Energy + "=190Wh +/- 0.008 kWh", "150 Wh|190 Wh|230 Wh", "190 Wh +- 8 Wh")]
    [InlineData(Energy + "=0.19 kWh give or take 8 Wh", "0.15 kWh|0.19 kWh|0.23 kWh", "0.19 kWh +- 0.008 kWh")]
    [InlineData(Energy + "=190 Wh +- 8 Wh, at least 180 Wh", "180 Wh|191.0624105 Wh|230 Wh", null)]
    [InlineData(Energy + "=190 Wh +- 8 Wh, within 180 Wh..200 Wh", "180 Wh|190 Wh|200 Wh", null)]
    [InlineData(Energy + "=190 Wh +- 8 Wh, at most 200 Wh, at least 180 Wh", "180 Wh|190 Wh|200 Wh",
        "190 Wh +- 8 Wh, within 180 Wh..200 Wh")]
    [InlineData(Energy + "=between 170 Wh and 200 Wh", "170 Wh|185 Wh|200 Wh", null)]
    [InlineData(Energy + "=Between 170 Wh And 0.2 kWh", "170 Wh|185 Wh|200 Wh", "between 170 Wh and 200 Wh")]
    [InlineData(Energy + "=between 170 Wh and 200 Wh, most likely 200 Wh", "170 Wh|191.2132034 Wh|200 Wh", null)]
    [InlineData(Growth + "=1.3 +- a factor of 1.1", "0.80719772|1.3|2.093663", null)]
    [InlineData(Growth + "=1.3 +- factor 1.1, at least 1", "1|1.300458908|2.093663", "1.3 +- a factor of 1.1, at least 1")]
    [InlineData(Growth + "=1.3 +- 10 %, at least 1", "1|1.301712101|1.95", "1.3 +- 0.13, at least 1")]
    [InlineData(Charge + "=88 % +- 2 %", "78 %|88 %|98 %", null)]
    [InlineData(Air + "=-8 °C +- 2 °C", "-18 °C|-8 °C|2 °C", null)]
    [InlineData(Air + "=0 °C +- 2 °C", "-10 °C|0 °C|10 °C", null)]
    [InlineData(Air + "=between -10 °C and 10 °C, most likely 0 °C", "-10 °C|0 °C|10 °C", null)]
    [InlineData(Air + "=20 °F +- 5 °F", "-5 °F|20 °F|45 °F", null)]
    [InlineData(Air + "=20 F +- 5 C", "-25 °F|20 °F|65 °F", "20 °F +- 9 °F")]
    [InlineData(Air + "=-8 °C +- 2 K", "-18 °C|-8 °C|2 °C", "-8 °C +- 2 °C")]
    [InlineData(Air + "=between −20 °C and 10 °C, most likely −8 °C", "-20 °C|-6.431676725 °C|10 °C",
        "between -20 °C and 10 °C, most likely -8 °C")]
    [InlineData("kit.brick.count=between 1 and 4", "1|3|4", null)]
    [InlineData("kit.brick.count=between 1 and 5", "1|3|5", null)]
    [InlineData("days.day-one.blocks.lunch.length=30 min +- 5 min", "5 min|30 min|55 min", null)]
    [InlineData("days.day-one.blocks.lunch.length=between 1 h 10 min and 2 h", "70 min|95 min|120 min",
        "between 70 min and 120 min")]
    [InlineData("days.day-one.starts=06:30 +- 10 min", "05:40|06:30|07:20", null)]
    [InlineData("builds.tripod.battery.age.until=2026-11-30 +- 4 d", "2026-11-10|2026-11-30|2026-12-20", null)]
    [InlineData("builds.tripod.battery.age.until=between 2026-11-30 and 2026-12-03", "2026-11-30|2026-12-02|2026-12-03", null)]
    [InlineData("parts.brick-190wh.battery.heat-conductance=0.4 W/K +- 0.05 W/K", "0.15 W/K|0.4 W/K|0.65 W/K", null)]
    public void A_spread_in_plain_words_gives_its_ends_and_its_median(string text, string values, string? words)
    {
        var field = UncertainField.Parse(Harbour, text);

        var path = text[..text.IndexOf('=', StringComparison.Ordinal)];
        Assert.Equal(path, field.Path);
        Each.Pair(values.Split('|'), new[] { 0, 0.5, 1 }.Select(field.Spread.TextAt), (wanted, found) =>
            Assert.Equal(wanted, found));
        // What is written reads back as the same spread.
        Assert.Equal(words ?? text[(path.Length + 1)..], field.Spread.Words);
        Assert.Equal(field, UncertainField.Parse(Harbour, field.ToString()));
    }

    [Theory]
    [InlineData("", "no uncertain field")]
    [InlineData("=1 +- 2", "no uncertain field")]
    [InlineData(Energy, "no uncertain field")]
    [InlineData(Energy + "=190 Wh", "says no spread")]
    [InlineData(Energy + "=", "says no spread")]
    [InlineData(Energy + "=about 190 Wh", "says no spread")]
    [InlineData(Energy + "=between 170 Wh", "second end is missing")]
    [InlineData(Energy + "=between 200 Wh and 170 Wh", "200 Wh is not below 170 Wh")]
    [InlineData(Energy + "=between 170 Wh and 170 Wh", "170 Wh is not below 170 Wh")]
    [InlineData(Energy + "=between 170 Wh and 200 Wh, most likely 210 Wh", "210 Wh can't be the most likely")]
    [InlineData(Energy + "=190 Wh +- 0 Wh", "behind +- is above zero")]
    [InlineData(Energy + "=190 Wh +- -8 Wh", "behind +- is above zero")]
    [InlineData(Energy + "=190 Wh +- 0.000000000001 Wh", "the same number to ten digits")]
    [InlineData(Energy + "=190 Wh +- 8", "\"8\" behind +-")]
    [InlineData(Energy + "=190 Wh +- 8 A", "\"8 A\" behind +-")]
    [InlineData(Energy + "=190 Wh +- ", "\"\" behind +-")]
    [InlineData(Energy + "=190 Wh +- 8 Wh, at least 300 Wh", "nothing is left at least 300 Wh")]
    [InlineData(Energy + "=190 Wh +- 8 Wh, within 200 Wh..180 Wh", "nothing is left within 200 Wh..180 Wh")]
    [InlineData(Energy + "=190 Wh +- 8 Wh, within 190 Wh..190 Wh", "nothing is left")]
    [InlineData(Energy + "=190 Wh +- 8 Wh, within 180 Wh", "second end is missing")]
    [InlineData(Energy + "=190 Wh +- 8 Wh, at least 180 Wh, at least 170 Wh", "another one gave before")]
    [InlineData(Energy + "=190 Wh +- 8 Wh, most likely 180 Wh", "stands behind \"between")]
    [InlineData(Energy + "=190 Wh +- 8 Wh, mostly", "\"mostly\" behind a comma")]
    [InlineData(Growth + "=1.3 +- a factor of 1", "A factor of 1 is no spread")]
    [InlineData(Growth + "=1.3 +- a factor of 1000", "A factor of 1000 is no spread")]
    [InlineData(Growth + "=1.3 +- a factor of two", "factor is no number")]
    [InlineData(Energy + "=-190 Wh +- a factor of 2", "not above zero")]
    [InlineData(Growth + "=-1.3 +- a factor of 2", "Found \"-1.3\"")]
    [InlineData(Air + "=-8 °C +- 10 %", "no percent to be off by")]
    [InlineData(Air + "=8 °C +- a factor of 1.2", "takes no factor")]
    [InlineData("builds.tripod.battery.age.until=2026-11-30 +- 5 %", "no percent to be off by")]
    [InlineData("builds.tripod.battery.age.until=2026-11-30 +- 5 Wh", "no difference of two values")]
    [InlineData(Air + "=between -10 °C and 10 Wh", "\"Wh\" is not a unit of temperature")]
    [InlineData("days.day-nine.ambient=cold +- warm", "no day \"day-nine\"")]
    [InlineData("builds.tripod.battery.item=brick +- 1", "not values of the same quantity")]
    public void What_is_no_spread_is_refused_in_words(string text, string reason)
    {
        var problems = Assert.Throws<ScenarioProblemsException>(() => UncertainField.Parse(Harbour, text)).Problems;
        Assert.Contains(reason, Assert.Single(problems).Problem, StringComparison.Ordinal);
    }

    [Fact]
    public void A_spread_far_out_in_the_tail_keeps_its_digits()
    {
        var above = Spread.Normal(0, 1).Within(4.5, null);
        var below = Spread.Normal(0, 1).Within(null, -4.5);
        Each.Of(Enumerable.Range(1, 99).Select(part => part / 100.0), share =>
        {
            Assert.Equal(above.NumberAt(share), -below.NumberAt(1 - share), 1e-9);
            Assert.InRange(above.NumberAt(share), 4.5, 5);
        });
        Each.Step(Enumerable.Range(0, 101).Select(part => above.NumberAt(part / 100.0)), (one, next) => Assert.True(one < next));
    }

    [Fact]
    public void Of_whole_numbers_each_is_as_likely()
    {
        var spread = UncertainField.Parse(Harbour, "kit.brick.count=between 1 and 4").Spread;
        var texts = Enumerable.Range(0, 4000).Select(number => spread.TextAt((number + 0.5) / 4000)).CountBy(text => text);
        Assert.Equal([new("1", 1000), new("2", 1000), new("3", 1000), new("4", 1000)], texts.OrderBy(text => text.Key));
    }
}
