using RigScenarios.Files;
using RigScenarios.Scenarios;

namespace RigScenarios.Tests.Files;

/// <summary>What a file or an argument holds reaches a terminal as text and never as an order to it.</summary>
public class ShownTextTests
{
    [Theory]
    [InlineData("plain", "plain")]
    [InlineData("naïve, 日本語, مرحبا, 👩‍🚀 🏴󠁧󠁢󠁳󠁣󠁴󠁿", "naïve, 日本語, مرحبا, 👩‍🚀 🏴󠁧󠁢󠁳󠁣󠁴󠁿")]
    [InlineData("\u001b[2J", @"\u001B[2J")]
    [InlineData("\u009b2J", @"\u009B2J")]
    [InlineData("a\rb\nc\td", @"a\rb\nc\td")]
    [InlineData("\u0000\u007f", @"\u0000\u007F")]
    [InlineData("\u202Egpj.exe", @"\u202Egpj.exe")]
    [InlineData("\u2066x\u2069", @"\u2066x\u2069")]
    [InlineData("\u2028", @"\u2028")]
    [InlineData("\uFFFE", @"\uFFFE")]
    public void Characters_that_move_or_turn_are_written_out(string text, string shown) =>
        Assert.Equal(shown, ShownText.Of(text));

    [Fact]
    public void Half_of_a_pair_is_no_character()
    {
        Assert.Equal(@"\uD800x", ShownText.Of("\uD800x"));
        Assert.Equal(@"x\uDC00", ShownText.Of("x\uDC00"));
        Assert.Equal(@"\uDC00\uD800", ShownText.Of("\uDC00\uD800"));
        Assert.Equal(@"\uD83D😀", ShownText.Of("\uD83D😀"));
    }

    [Theory]
    [InlineData("two\nlines")]
    [InlineData("cr\rhere")]
    [InlineData("tab\there")]
    [InlineData("escape \u001b]0;owned\u0007")]
    [InlineData("c1 \u0085")]
    [InlineData("\u202Eturned")]
    [InlineData("\u2067isolated\u2069")]
    [InlineData("line\u2028separator")]
    public void A_title_or_name_with_one_is_refused_and_shown_escaped(string title)
    {
        var text = SmallScenario.Text().Replace("title: By hand", $"title: \"{Escaped(title)}\"", StringComparison.Ordinal);
        var (scenario, problems) = ScenarioFile.TryReadText(text, "a.yaml");
        Assert.Null(scenario);
        var told = Assert.Single(problems).ToString();
        Assert.Contains("on one line", told, StringComparison.Ordinal);
        Assert.Contains(ShownText.Of(title), told, StringComparison.Ordinal);
        Assert.Equal(-1, ShownText.FirstUnseen(told));
        var named = SmallScenario.Text().Replace("name: Camera", $"name: \"{Escaped(title)}\"", StringComparison.Ordinal);
        Assert.Null(ScenarioFile.TryReadText(named, "a.yaml").Scenario);
    }

    [Theory]
    [InlineData("two\nlines\n", true)]
    [InlineData("a\ttab", true)]
    [InlineData("\u001b[1m", false)]
    [InlineData("\u202Eturned", false)]
    [InlineData("cr\rhere", false)]
    public void A_remark_may_have_lines_and_no_orders(string note, bool accepted)
    {
        var text = SmallScenario.Text().Replace("title: By hand", $"title: By hand\nnote: \"{Escaped(note)}\"",
            StringComparison.Ordinal);
        Assert.Equal(accepted, ScenarioFile.TryReadText(text, "a.yaml").Scenario is not null);
    }

    [Theory]
    [InlineData("spare\n")]
    [InlineData("\u001b[31mred")]
    [InlineData("\u202Egpj")]
    public void A_short_name_with_one_is_refused(string name)
    {
        var text = SmallScenario.Text().Replace("kit: {flat:", $"kit: {{\"{Escaped(name)}\": {{part: camera}}, flat:",
            StringComparison.Ordinal);
        var (scenario, problems) = ScenarioFile.TryReadText(text, "a.yaml");
        Assert.Null(scenario);
        Each.Of(problems, problem => Assert.Equal(-1, ShownText.FirstUnseen(problem.ToString())));
    }

    [Fact]
    public void Whatever_stands_in_a_file_each_problem_is_one_line_of_plain_text()
    {
        for (var character = '\u0001'; character < '\u00A0'; character++)
        {
            var text = SmallScenario.Text().Replace("stance: hand", $"stance: \"ha\\u{(int)character:X4}nd\"",
                StringComparison.Ordinal);
            var (_, problems) = ScenarioFile.TryReadText(text, $"a{character}.yaml");
            Assert.NotEmpty(problems);
            Each.Of(problems, problem => Assert.Equal(-1, ShownText.FirstUnseen(problem.ToString())));
        }
    }

    // As a file in double quotes writes it.
    private static string Escaped(string text) => string.Concat(text.Select(character =>
        character < ' ' || character > '~' ? $"\\u{(int)character:X4}" : character.ToString()));
}
