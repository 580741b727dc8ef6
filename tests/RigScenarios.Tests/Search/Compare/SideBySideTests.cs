using RigScenarios.Answers;
using RigScenarios.Limits;
using RigScenarios.Search.Compare;

namespace RigScenarios.Tests.Search.Compare;

/// <summary>Values, differences and standings of rigs side by side, worked out by hand.</summary>
public class SideBySideTests
{
    private const string WithLamp = "camera: {essential: yes}, lamp: {}";

    [Fact]
    public void A_load_costs_the_time_that_it_takes()
    {
        // 100 Wh at 20 W are 5 h, at 25 W 4 h, of a day of 2 h.
        var side = TwoRigs.Of(TwoRigs.Build("bare"), TwoRigs.Build("lamp", WithLamp));
        var difference = side.Second(FigureKind.Reserve);

        Assert.Equal(180, side.Row(FigureKind.Reserve).Values[0].Number!.Value, 3);
        Assert.Equal(-60, difference.Amount!.Number, 3);
        Assert.Equal(Standing.Worse, difference.Standing);
        Assert.Equal([0], side.Row(FigureKind.Reserve).Best);
        Assert.Equal((SplitWay.OnlyChange, "lamp"), (difference.Split!.Way, difference.Split.Shares.Single().Name));
    }

    [Fact]
    public void Two_changes_share_a_difference_that_is_no_sum_in_equal_parts_of_both_orders()
    {
        // 5 h; half a charge 2.5 h; the lamp 4 h; both 2 h. Half a charge: ½·(-2.5 - 2) h; the lamp: ½·(-1 - 0.5) h.
        var side = TwoRigs.Of(TwoRigs.Build("bare"), TwoRigs.Build("tired", WithLamp, "item: flat, charge: 50 %"));
        var split = side.Second(FigureKind.Reserve).Split!;

        Assert.Equal(SplitWay.OrderFreeMean, split.Way);
        Assert.Equal(["the battery", "lamp"], split.Shares.Select(share => share.Name));
        Assert.Equal(-135, split.Shares[0].Amount.Number, 2);
        Assert.Equal(-45, split.Shares[1].Amount.Number, 2);
    }

    [Fact]
    public void A_sum_is_traced_to_its_parts_and_one_that_takes_the_place_of_another_is_one_line()
    {
        var side = TwoRigs.Of(TwoRigs.Build("bare"), TwoRigs.Build("lamp", WithLamp, carries: "heavy-grip"));
        var mass = side.Second(FigureKind.Mass);

        Assert.Equal(500, mass.Amount!.Number, 6);
        Assert.Equal(SplitWay.Sum, mass.Split!.Way);
        Assert.Equal([("heavy grip instead of grip", 300.0), ("lamp", 200.0)],
            mass.Split.Shares.Select(share => (share.Name, Math.Round(share.Amount.Number, 6))));
        Assert.Equal("Mass of the rig +500 g, of which heavy grip instead of grip +300 g, lamp +200 g.",
            SideBySideWords.Cause(FigureKind.Mass, mass));
        Assert.Equal(5, side.Second(FigureKind.Draw).Amount!.Number, 6);
    }

    [Fact]
    public void What_is_smaller_than_both_figures_may_be_off_is_no_difference()
    {
        // Masses are known to 2 % where nobody says: 200 ± 4 g against 202 ± 4.04 g are 2 ± 5.7 g. Draws to 5 %.
        var side = TwoRigs.Of(TwoRigs.Build("lamp", WithLamp),
            TwoRigs.Build("near", "camera: {essential: yes}, near-lamp: {}"));
        var mass = side.Second(FigureKind.Mass);

        Assert.Equal(2, mass.Amount!.Number, 6);
        Assert.Equal(double.Hypot(4, 4.04), mass.Within!.Number, 6);
        Assert.Equal(Standing.NoneToTell, mass.Standing);
        Assert.Equal(Standing.NoneToTell, side.Second(FigureKind.Draw).Standing);
        Assert.Equal(Standing.NoneToTell, side.Second(FigureKind.Reserve).Standing);
        Assert.Empty(side.Row(FigureKind.Mass).Best);
        Assert.Null(mass.Split);
    }

    [Fact]
    public void What_both_rest_on_alike_makes_no_difference_unsure()
    {
        // The grip of 400 g is in both, and unsure by 8 g in both alike; only the lamp is left, 200 ± 4 g.
        var mass = TwoRigs.Of(TwoRigs.Build("bare"), TwoRigs.Build("lamp", WithLamp)).Second(FigureKind.Mass);

        Assert.Equal(4, mass.Within!.Number, 6);
        Assert.Equal(Standing.Worse, mass.Standing);
    }

    [Fact]
    public void What_a_difference_of_times_may_be_off_by_is_worked_out_by_hand()
    {
        // 5 h and 4 h on one battery through one day: the model's share is off alike in both, so that it counts for the hour
        // between them. The camera's draw, off by 5 %, moves 5 h by 5 % and 4 h by 20 of 25 W of that; the lamp only the 4 h.
        var side = TwoRigs.Of(TwoRigs.Build("bare"), TwoRigs.Build("lamp", WithLamp));
        var model = side.Rigs[0].Answer.Simulation.ExpectedError.Share!.Value.DecimalFractions;
        double[] errors = [60 * model, 0.05 * ((60 * 5) - (60 * 4 * 20 / 25.0)), 0.05 * 60 * 4 * 5 / 25.0];

        Assert.Equal(Math.Sqrt(errors.Sum(error => error * error)), side.Second(FigureKind.Reserve).Within!.Number, 3);
    }

    [Fact]
    public void On_another_battery_nothing_of_the_time_is_shared_but_the_draws()
    {
        // 5 h and 2.5 h: each off by its own share, and the same camera at both.
        var side = TwoRigs.Of(TwoRigs.Build("bare"), TwoRigs.Build("half", battery: "item: flat, charge: 50 %"));
        double Model(int rig) => side.Rigs[rig].Answer.Simulation.ExpectedError.Share!.Value.DecimalFractions;
        double[] errors = [300 * Model(0), 150 * Model(1), 0.05 * (300 - 150)];

        Assert.Equal(Math.Sqrt(errors.Sum(error => error * error)), side.Second(FigureKind.Reserve).Within!.Number, 3);
    }

    [Fact]
    public void A_current_against_the_same_rating_is_unsure_only_by_what_is_not_in_both()
    {
        // 2 A and 2.5 A of 100 A: half an ampere of them is the lamp's, and 5 % of that are 0.025 % of the rating.
        var left = TwoRigs.Of(TwoRigs.Build("bare"), TwoRigs.Build("lamp", WithLamp)).Second(FigureKind.WiringLeft);

        Assert.Equal(-0.5, left.Amount!.Number, 3);
        Assert.Equal(0.025, left.Within!.Number, 4);
    }

    [Fact]
    public void The_other_way_round_every_difference_is_the_opposite()
    {
        string[] builds = [TwoRigs.Build("bare"), TwoRigs.Build("tired", WithLamp, "item: flat, charge: 50 %", "heavy-grip")];
        var (there, back) = (TwoRigs.Of(builds), TwoRigs.Of([.. builds.Reverse()]));
        Each.Pair(there.Figures, back.Figures, (one, other) =>
        {
            var (forth, and) = (one.Differences[1]!, other.Differences[1]!);
            Assert.Equal(forth.Amount?.Number ?? 0, -(and.Amount?.Number ?? 0), 6);
            Assert.Equal(forth.Within?.Number ?? 0, and.Within?.Number ?? 0, 6);
            Assert.Equal(forth.Standing, and.Standing switch
            {
                Standing.Better => Standing.Worse, Standing.Worse => Standing.Better, var same => same,
            });
            Assert.Equal(forth.Split?.Shares.Sum(share => share.Amount.Number) ?? 0,
                -(and.Split?.Shares.Sum(share => share.Amount.Number) ?? 0), 4);
        }, atLeast: 9);
    }

    [Fact]
    public void A_rig_beside_itself_differs_in_nothing()
    {
        var side = TwoRigs.Of(TwoRigs.Build("one", WithLamp), TwoRigs.Build("same", WithLamp));

        Each.Of(side.Figures, row => Assert.Contains(row.Differences[1]!.Standing, new[] { Standing.NoneToTell,
            Standing.NotKnown }),
            atLeast: 9);
        Each.Of(side.Figures, row => Assert.Empty(row.Best));
        Each.Of(side.Verdicts, row => Assert.Empty(row.Best), atLeast: 5);
    }

    [Fact]
    public void A_set_of_changes_without_a_figure_leaves_the_split_to_leaving_one_out()
    {
        // The great store alone runs on beyond what is looked at (250 h); with either load it ends within a day.
        var side = TwoRigs.Of(TwoRigs.Build("bare"), TwoRigs.Build("loaded",
            "camera: {essential: yes}, big: {}, bigger: {}", "item: store", "grip"));
        var split = side.Second(FigureKind.Reserve).Split!;

        Assert.Equal(SplitWay.LeaveOneOut, split.Way);
        Assert.Equal(side.Second(FigureKind.Reserve).Amount!.Number,
            split.Shares.Sum(share => share.Amount.Number) + split.Together!.Number, 6);
        // 5 kWh at 420 W, and at 220 W without one of both loads.
        Assert.Equal(60 * ((5_000 / 420.0) - (5_000 / 220.0)), split.Shares.Single(share => share.Name == "big").Amount.Number,
            1);
    }

    [Fact]
    public void What_is_not_known_has_no_difference_and_nobody_wins()
    {
        // Nobody gave the mass of the big load.
        var side = TwoRigs.Of(TwoRigs.Build("bare"), TwoRigs.Build("big", "camera: {essential: yes}, big: {}"));
        var row = side.Row(FigureKind.Mass);

        Assert.True(row.Values[1].IsAtLeast);
        Assert.Contains("no mass is given for", row.Values[1].Missing, StringComparison.Ordinal);
        Assert.Empty(row.Best);
        Assert.Equal(Standing.NotKnown, side.Second(FigureKind.CentreForward).Standing);
    }

    [Fact]
    public void Verdicts_have_a_best_only_where_they_differ()
    {
        // 100 Wh at 220 W are over within half an hour: it fails.
        var side = TwoRigs.Of(TwoRigs.Build("bare"), TwoRigs.Build("big", "camera: {essential: yes}, big: {}"));

        Assert.Equal([Verdict.Holds, Verdict.Fails],
            side.Verdicts.Single(row => row.Kind == QuestionKind.Power).Verdicts.OfType<Verdict>());
        Assert.Equal([0], side.Verdicts.Single(row => row.Kind == QuestionKind.Power).Best);
        Assert.Empty(side.Verdicts.Single(row => row.Kind == QuestionKind.Wiring).Best);
    }

    [Fact]
    public void Money_is_a_sum_over_what_is_bought_and_what_has_no_price_makes_it_a_least()
    {
        var side = TwoRigs.Of(TwoRigs.Build("bare"), TwoRigs.Build("lamp", WithLamp, carries: "heavy-grip"));
        var row = side.Row(FigureKind.Cost);

        // Camera and battery have no price in either: of both alike, so that the difference is known all the same.
        Assert.True(row.Values[0].IsAtLeast);
        Assert.Equal(120, row.Differences[1]!.Amount!.Number, 6);
        Assert.Equal("+120 EUR", FigureWords.Of(row.Differences[1]!));
        Assert.Equal([("heavy grip instead of grip", 60m), ("lamp", 60m)],
            row.Differences[1]!.Split!.Shares.Select(share => (share.Name, share.Amount.Money!.Value.Amount)));
    }

    [Fact]
    public void Three_rigs_have_one_base_and_those_that_nobody_beats()
    {
        var side = TwoRigs.Of(TwoRigs.Build("bare"), TwoRigs.Build("lamp", WithLamp),
            TwoRigs.Build("near", "camera: {essential: yes}, near-lamp: {}"));

        Assert.Null(side.Row(FigureKind.Reserve).Differences[0]);
        Assert.Equal([0], side.Row(FigureKind.Reserve).Best);
        Assert.Equal(Standing.Worse, side.Row(FigureKind.Draw).Differences[2]!.Standing);
        var other = SideBySide.Of(side.Rigs, 1, splits: false, cancellation: TestContext.Current.CancellationToken);
        Assert.Equal(Standing.Better, other.Row(FigureKind.Reserve).Differences[0]!.Standing);
        Assert.Equal(Standing.NoneToTell, other.Row(FigureKind.Reserve).Differences[2]!.Standing);
    }

    [Fact]
    public void What_can_not_be_compared_is_refused()
    {
        var rigs = TwoRigs.Of(TwoRigs.Build("bare"), TwoRigs.Build("lamp", WithLamp)).Rigs;

        Assert.Throws<ArgumentException>(() => SideBySide.Of([rigs[0]], cancellation: TestContext.Current.CancellationToken));
        Assert.Throws<ArgumentException>(() => SideBySide.Of([rigs[0], rigs[0]],
            cancellation: TestContext.Current.CancellationToken));
        Assert.Throws<ArgumentException>(() => SideBySide.Of(rigs, 2, cancellation: TestContext.Current.CancellationToken));
        using var stopped = new CancellationTokenSource();
        stopped.Cancel();
        var other = TwoRigs.Of(TwoRigs.Build("bare"), TwoRigs.Build("tired", WithLamp, "item: flat, charge: 50 %")).Rigs;
        Assert.ThrowsAny<OperationCanceledException>(() => SideBySide.Of(other, cancellation: stopped.Token));
    }
}
