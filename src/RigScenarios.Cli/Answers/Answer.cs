using RigScenarios.Answers;
using RigScenarios.Builds;
using RigScenarios.Days;
using RigScenarios.Scenarios;
using UnitsNet;

namespace RigScenarios.Cli.Answers;

/// <summary>One build on one day, with everything that the text and the JSON say of it.</summary>
/// <param name="BuildName">The build's short name.</param>
/// <param name="Build">The build.</param>
/// <param name="DayName">The day's short name.</param>
/// <param name="Day">The day.</param>
/// <param name="Ambient">The air temperature.</param>
/// <param name="Result">How it went.</param>
/// <param name="Helps">What would help most.</param>
internal sealed record Answer(string BuildName, Build Build, string DayName, ShootingDay Day, Temperature Ambient, DayResult Result, IReadOnlyList<Help> Helps)
{
    public string BuildTitle => Build.Title ?? BuildName;

    public string DayTitle => Day.Title ?? DayName;

    public IReadOnlyList<string> Cautions => DayWords.Cautions(Result, Build.Battery, Ambient);

    /// <summary>Runs all pairs, the one with the least margin first.</summary>
    public static IReadOnlyList<Answer> All(Scenario scenario, IReadOnlyList<(string Build, string Day)> pairs, CancellationToken cancellation) =>
    [
        .. pairs.Select(pair =>
        {
            var day = scenario.Days[pair.Day];
            return new Answer(
                pair.Build, scenario.Builds[pair.Build], pair.Day, day, scenario.AmbientOn(day),
                ScenarioRun.Run(scenario, pair.Build, pair.Day, new DayRunOptions(SeriesPoints: 200), cancellation),
                WhatHelps.Find(scenario, pair.Build, pair.Day, cancellation: cancellation));
        }).OrderBy(answer => answer.Result.Margin.Seconds),
    ];
}
