using System.Globalization;
using System.Text.RegularExpressions;
using RigScenarios.Files.Formats;
using UnitsNet;
using UnitsNet.Units;

namespace RigScenarios.Tests.Files;

/// <summary>The short way of reading a unit gives what the units library's own parser gives, and the project's files need no
/// other.</summary>
public partial class UsualUnitsTests
{
    [Fact]
    public void Each_is_the_unit_that_the_units_library_reads()
    {
        Assert.True(UsualUnits.All.Count > 30);
        foreach (var (quantity, unit) in UsualUnits.All)
        {
            var found = UsualUnits.Find(quantity, unit, 2.5)!;
            var unitType = found.Unit.GetType();
            // The library writes minutes as "m"; its parser knows "min" as well.
            Assert.Equal(UnitParser.Default.Parse(unit, unitType, CultureInfo.InvariantCulture), found.Unit);
            Assert.Equal(2.5, (double)found.Value);
            Assert.Equal(quantity, found.GetType());
        }
    }

    [Fact]
    public void Each_sign_is_the_one_that_the_units_library_writes()
    {
        var looked = 0;
        foreach (var info in Quantity.Infos.SelectMany(quantity => quantity.UnitInfos))
        {
            if (UsualUnits.Sign(info.Value) is not { } sign)
                continue;
            looked++;
            Assert.Equal(UnitAbbreviationsCache.Default.GetDefaultAbbreviation(info.Value.GetType(),
                Convert.ToInt32(info.Value, CultureInfo.InvariantCulture), CultureInfo.InvariantCulture), sign);
        }
        Assert.Equal(23, looked);
        Assert.Null(UsualUnits.Sign(ElectricChargeUnit.AmpereHour));
    }

    [Fact]
    public void A_number_in_any_unit_is_the_quantity_that_the_units_library_makes()
    {
        var looked = 0;
        foreach (var unit in Quantity.Infos.SelectMany(quantity => quantity.UnitInfos).Select(info => info.Value))
        {
            Assert.Equal(Quantity.From(2.5, unit), UsualUnits.From(2.5, unit));
            looked++;
        }
        Assert.True(looked > 1000, $"Only {looked} units were looked at.");
    }

    [Fact]
    public void The_projects_files_use_no_unit_that_would_take_the_long_way()
    {
        var known = UsualUnits.All.Select(one => one.Unit).ToHashSet(StringComparer.Ordinal);
        var looked = 0;
        foreach (var file in Directory.EnumerateFiles(Repository.Data(), "*.yaml", SearchOption.AllDirectories))
        {
            foreach (Match figure in Figure().Matches(File.ReadAllText(file)))
            {
                looked++;
                Assert.True(known.Contains(figure.Groups["unit"].Value),
                    $"{file}: \"{figure.Value}\" makes every start on this file build all tables of the units library.");
            }
        }
        Assert.True(looked > 500, $"Only {looked} quantities were found.");
    }

    // A value in quotes or at a line's end that is a number and a unit; an amount of money and a gauge are no quantities.
    [GeneratedRegex(@": ""?[+-]?\d+(\.\d+)? ?(?<unit>(?!EUR|mm²|wh\b)[^\d\s""',.:}\]-][^\s""',}\]]*)""?\s*([,}\]#]|$)",
        RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant | RegexOptions.Multiline, 1000)]
    private static partial Regex Figure();
}
