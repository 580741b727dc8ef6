using System.Text.RegularExpressions;
using RigScenarios.Answers;
using RigScenarios.Files;

namespace RigScenarios.Tests.Answers;

/// <summary>The answer in one line says nothing else than the whole answer.</summary>
public sealed partial class AnswerLineTests
{
    [Fact]
    public void It_has_the_verdicts_word_and_times_of_the_headline_and_fits_on_two_lines_of_a_phone()
    {
        var answers = Directory.EnumerateFiles(Repository.Data("scenarios"), "*.yaml").Order(StringComparer.Ordinal)
            .Select(ScenarioFile.Read)
            .SelectMany(scenario => scenario.Builds.Keys
                .Select(build => RigAnswer.Of(scenario, build, [], AnswerOptions.EndOnly)))
            .ToList();
        Each.Of(answers, answer =>
        {
            var (line, headline) = (AnswerLine.Of(answer), AnswerSentences.Headline(answer));
            Assert.Equal(FirstWord().Match(headline).Value, FirstWord().Match(line).Value);
            foreach (Match time in ClockTime().Matches(line))
                Assert.Contains(time.Value, AnswerSentences.Questions(answer)[0].Words, StringComparison.Ordinal);
            Assert.InRange(line.Length, 10, 80);
        });
        // Both ways of ending are among them.
        Assert.Contains(answers, answer => answer.Simulation.Completes);
        Assert.Contains(answers, answer => !answer.Simulation.Completes);
    }

    [GeneratedRegex("^(Yes|Just|No|Not known)", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex FirstWord();

    [GeneratedRegex(@"\d\d:\d\d", RegexOptions.None, matchTimeoutMilliseconds: 1000)]
    private static partial Regex ClockTime();
}
