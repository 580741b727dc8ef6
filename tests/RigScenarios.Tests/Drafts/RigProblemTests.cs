using System.Text.RegularExpressions;
using RigScenarios.Drafts;
using RigScenarios.Scenarios;

namespace RigScenarios.Tests.Drafts;

/// <summary>What is wrong with a form is told without the keys of a file, which the form does not have.</summary>
public sealed partial class RigProblemTests
{
    [Theory]
    [InlineData("No device is marked \"essential: yes\", so only the battery's own end stops the day.", null)]
    [InlineData("\"brick\" has no mass in its parts file, so its place changes nothing.", null)]
    [InlineData("What Monitor draws in the state record is not known.",
        "a draw in its parts file, or \"power: {record: 8 W}\" at builds.rig.devices.monitor")]
    [InlineData("\"plate\" has no named outlets.", "no \"outlet\" here, or outlets in the part of what feeds it")]
    [InlineData("The day begins at 08:00, before the day before it is over.",
        "\"starts\" at 08:30 or later, or shorter blocks on the day before")]
    [InlineData("The build needs 3 of \"cable\" (camera, monitor), the kit has 1.", "\"count: 3\" in the kit, or another cable")]
    public void It_names_no_key_and_no_path(string problem, string? accepted)
    {
        var told = RigProblem.Of(new Diagnostic(Severity.Error, "", TextPlace.None, "builds.rig.devices.monitor", problem,
            accepted));
        Assert.Equal("builds.rig.devices.monitor", told.Path);
        Assert.DoesNotMatch(FileWords(), $"{told.Problem} {told.Accepted}");
    }

    [Fact]
    public void What_is_accepted_stays_where_it_names_none()
    {
        var told = RigProblem.Of(new Diagnostic(Severity.Error, "", TextPlace.None, "swaps.reserve",
            "It would be swapped at once.", "a share that the battery has to fall to, such as \"15 %\""));
        Assert.Equal("a share that the battery has to fall to, such as \"15 %\"", told.Accepted);
    }

    [Fact]
    public void A_tripod_without_a_head_is_told_in_the_words_of_the_form()
    {
        var answer = Drafting.Answer(Drafting.Small);
        Each.Of(answer.Answer!.Balance!.BalanceMissing.Concat(answer.Answer.Balance.StandMissing),
            missing => Assert.DoesNotMatch(FileWords(), missing));
    }

    [GeneratedRegex("parts file|essential: |carries\"|count: |\"outlet\"|\"starts\"|builds\\.|power: ",
        RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex FileWords();
}
