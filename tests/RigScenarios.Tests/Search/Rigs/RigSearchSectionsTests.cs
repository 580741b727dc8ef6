using RigScenarios.Charts.Pages;
using RigScenarios.Charts.Search;
using RigScenarios.Search.Rigs;

namespace RigScenarios.Tests.Search.Rigs;

/// <summary>What is told of a search beside its rigs is the same in the page of a search and in the parts of another
/// page.</summary>
public class RigSearchSectionsTests
{
    private const string Slots = "{light: {parts: [thrifty]}, flat: {parts: [small, large]}}";

    [Theory]
    [InlineData("musts: {lasts: {}}\n  upgrade: {budget-a-year: 400 EUR, years: 2}", "What more money buys",
        "What each must costs", "In which order to buy", "How far this goes")]
    [InlineData("musts: {lasts: {}, budget: 900 EUR}", "What stands in the way", "How far this goes")]
    public void Every_face_has_every_part_under_its_title(string more, params string[] titles)
    {
        var result = RigSearch.Find(SmallQuestion.Of(Slots, more), cancellation: TestContext.Current.CancellationToken);
        List<RigSearchSection> sections = [.. RigSearchSections.Before(result), .. RigSearchSections.After(result)];
        Assert.Equal(titles, sections.Select(section => section.Title));
        var lists = RigSearchParts.Of(result).OfType<ListPart>().ToList();
        Assert.Equal(titles.Select(title => $"{title}:"), lists.Select(list => list.Heading));
        Assert.Equal(sections.Select(section => section.Lines), lists.Select(list => list.Items));
        var parts = RigSearchPage.Of(result).Parts;
        Assert.Equal(titles, parts.OfType<HeadingPart>().Select(part => part.Text).Intersect(titles));
        Each.Of(sections.SelectMany(section => section.Lines), line =>
            Assert.Contains(parts.OfType<ProsePart>(), part => part.Text == line));
    }
}
