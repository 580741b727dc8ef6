using System.Text.RegularExpressions;
using RigScenarios.Files.Formats;

namespace RigScenarios.Tests.Files;

/// <summary>What is read without a pattern is read as the pattern would.</summary>
public partial class PlainQuantityTests
{
    private static readonly string[] Pieces = ["0", "7", "12", ".", ",", "+", "-", " ", "  ", "e", "E", "h", "min", "Wh", "°C",
        "%", "m/s", "N·m", "\t", "\n", "Ω", "5 mm"];

    [Fact]
    public void A_text_is_parted_as_the_pattern_parts_it() =>
        Drawn.Cases(firstSeed: 31, cases: 4000, atLeast: 300, (random, looked) =>
        {
            var text = string.Concat(Enumerable.Range(0, random.Next(1, 6)).Select(_ => Pieces[random.Next(Pieces.Length)]));
            if (!PlainQuantity.TrySplit(text, out var figure, out var unit))
                return;
            looked.One();
            var match = NumberThenUnit().Match(text);
            Assert.True(match.Success, text);
            Assert.Equal(match.Groups["number"].Value.Replace(" ", "", StringComparison.Ordinal), figure);
            Assert.Equal(match.Groups["unit"].Value.Trim(), unit);
        });

    [Theory]
    [InlineData("150 Wh", "150", "Wh")]
    [InlineData("-8.5 °C", "-8.5", "°C")]
    [InlineData("7.2", "7.2", "")]
    public void What_nearly_everybody_writes_needs_no_pattern(string text, string figure, string unit)
    {
        Assert.True(PlainQuantity.TrySplit(text, out var number, out var sign));
        Assert.Equal((figure, unit), (number, sign));
    }

    [Fact]
    public void A_name_is_one_by_its_letters_as_by_its_pattern() =>
        Drawn.Cases(firstSeed: 47, cases: 2000, random =>
        {
            const string Letters = "abz059-- _Aé\n";
            var word = new string([.. Enumerable.Range(0, random.Next(8) == 0 ? random.Next(58, 63) : random.Next(6))
                .Select(_ => random.Next(6) > 0 ? 'k' : Letters[random.Next(Letters.Length)])]);
            Assert.Equal(Name().IsMatch(word), MapFormat<string>.IsName(word));
        });

    // As QuantityText takes any other way of writing.
    [GeneratedRegex(@"^(?<number>[+-]? ?([0-9]+(\.[0-9]*)?|\.[0-9]+)([eE][+-]?[0-9]+)?)\s*(?<unit>[^0-9\s,.+-].*)?$",
        RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 1000)]
    private static partial Regex NumberThenUnit();

    [GeneratedRegex(@"^[a-z0-9][a-z0-9-]{0,59}\z", RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Name();
}
