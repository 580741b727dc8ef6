using RigScenarios.Benchmarks.Coverage;
using RigScenarios.Fits;

namespace RigScenarios.Tests.Fits;

/// <summary>The promise of the intervals, on fewer trials than `-- coverage` makes.</summary>
public sealed class CoverageTests
{
    private const int Trials = 60;

    [Fact]
    public void The_truth_lies_in_the_intervals_as_often_as_they_say()
    {
        var options = FitOptions.Default with { ChecksIntervals = false };
        var hits = Enumerable.Range(0, Trials).SelectMany(number => CoverageTrials.Run(number, options)).ToList();

        // Six of each design: 192 intervals, three or four of a trial. If each held its truth with 95 %, independently of the
        // others, 182.4 would, with a deviation of 3.0; three deviations are 173. Were it 85 % only, 163 would, and more than 172
        // in 3 of 100 such tests.
        Assert.Equal(192, hits.Count);
        Assert.InRange(hits.Count(hit => hit.Inside), 173, 192);

        // Intervals that are too wide show in the squares: they are 1 in the mean, with a deviation of √(2/192) = 0.10, or 0.18
        // if the three of a trial were one. Three of those.
        Assert.InRange(hits.Average(hit => hit.Pull * hit.Pull), 0.5, 1.55);
    }

    [Fact]
    public void Each_design_says_of_what_it_rests()
    {
        var open = CoverageTrials.Run(0, FitOptions.Default with { ChecksIntervals = false }).Count(hit => hit.IsOpen);
        var separate = CoverageTrials.Run(5, FitOptions.Default with { ChecksIntervals = false }).Count(hit => hit.IsOpen);

        // Two notes with one scale for all loads; two logs.
        Assert.Equal((2, 0), (open, separate));
    }
}
