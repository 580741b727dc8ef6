using RigScenarios.Search.Choices;
using UnitsNet;

namespace RigScenarios.Tests.Search.Choices;

public sealed class OneChoiceTests
{
    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public void The_least_of_each_goal_is_the_least_of_all_choices() =>
        Drawn.Cases(800, 25, atLeast: 25, (random, looked) =>
        {
            var model = new DrawnModel(random);
            var points = Feasible(model);
            for (var goal = 0; goal < model.Goals.Count; goal++)
            {
                var least = points.Select(point => point[goal]).Where(figure => !double.IsNaN(figure))
                    .DefaultIfEmpty(double.PositiveInfinity).Min();
                var found = OneChoice.Least(model, goal, null, null, Stop);
                Assert.True(found.IsProven);
                Assert.Equal(least, found.AtLeast);
                Assert.Equal(least, found.Entry?.Goals[0] ?? double.PositiveInfinity);
                if (found.Entry is not null)
                    looked.One();
            }
        });

    [Fact]
    public void A_wish_costs_the_difference_of_the_two_leasts() =>
        Drawn.Cases(900, 30, atLeast: 4, (random, looked) =>
        {
            var drawn = new DrawnModel(random);
            if (drawn.Goals.ToList().FindIndex(goal => goal.Name == "price") is not (>= 0 and var price))
                return;
            var model = drawn with { Musts = [new("flies") { DependsOn = [0, 1] }, new("runs long enough")] };
            var cost = OneChoice.WhatItCosts(model, price, wish: 1, null, Stop);
            double Least(IReadOnlyList<ChoiceMust> musts) => Feasible(model with { Musts = musts })
                .Select(goals => goals[price]).Where(figure => !double.IsNaN(figure)).DefaultIfEmpty(double.NaN).Min();
            var extra = Least(model.Musts) - Least([model.Musts[0]]);
            Assert.Equal(extra, cost.Extra ?? double.NaN);
            if (extra > 0)
                looked.One();
        });

    [Fact]
    public void Any_choice_that_is_found_holds_what_was_asked_and_none_means_that_there_is_none() =>
        Drawn.Cases(1000, 25, random =>
        {
            var model = new DrawnModel(random);
            var (choice, isProven) = OneChoice.Any(model, null, null, Stop);
            Assert.True(isProven);
            Assert.Equal(Feasible(model).Count > 0, choice is not null);
            if (choice is not null)
            {
                Assert.Contains(BruteForce.Feasible(new ChoiceTables(model, false), model, Stop),
                    point => point.Choice == choice);
            }
        });

    [Fact]
    public void Without_time_the_least_is_only_bounded()
    {
        var model = new DrawnModel(new Random(804)) { Musts = [] };
        var found = OneChoice.Least(model, 0, null,
            new() { TimeLimit = Duration.FromSeconds(1), Clock = new SteppingClock() }, Stop);
        Assert.False(found.IsProven);
        var least = Feasible(model).Select(goals => goals[0]).Where(figure => !double.IsNaN(figure)).Min();
        Assert.True(found.AtLeast <= least, $"{found.AtLeast} is said, {least} is there");
    }

    private static List<double[]> Feasible(DrawnModel model)
    {
        var tables = new ChoiceTables(model, knownOnly: false);
        return [.. BruteForce.Feasible(tables, model, Stop).Select(point => point.Goals(tables))];
    }
}
