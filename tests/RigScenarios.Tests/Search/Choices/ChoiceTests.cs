using RigScenarios.Search.Choices;

namespace RigScenarios.Tests.Search.Choices;

public sealed class ChoiceTests
{
    [Fact]
    public void Choices_are_equal_by_their_candidates_and_stand_in_their_order()
    {
        var choice = new Choice([2, 0, 1]);
        Assert.Equal(choice, new Choice([2, 1, 1]).With(1, 0));
        Assert.Equal(choice.GetHashCode(), new Choice([2, 0, 1]).GetHashCode());
        Assert.True(choice != new Choice([2, 0, 2]));
        Assert.True(choice < new Choice([2, 0, 2]));
        Assert.True(choice > new Choice([1, 9, 9]));
        Assert.Equal("2 0 1", choice.ToString());
    }

    [Fact]
    public void A_sum_is_exact_and_unknown_where_one_of_its_parts_is()
    {
        var sum = new ChoiceSum([[0.1m, null], [0.2m, 7m]], 0.3m);
        Assert.Equal(0.6m, sum.Of(new Choice([0, 0])));
        Assert.Null(sum.Of(new Choice([1, 0])));
    }

    [Fact]
    public void A_box_has_the_choices_of_its_candidates_and_no_others()
    {
        var box = ChoiceBox.Of(new Choice([1, 0])).With(0, [3, 1]);
        Assert.True(box.Has(new Choice([3, 0])));
        Assert.False(box.Has(new Choice([2, 0])));
        Assert.False(box.Has(new Choice([1, 1])));
        Assert.False(box.IsDecided(0));
        Assert.True(box.IsDecided(1));
        Assert.Throws<ArgumentException>(() => box.With(1, []));
    }
}
