using RigScenarios.Costs;
using UnitsNet;

namespace RigScenarios.Checks.Costs;

/// <summary>Payments of later years in today's money, and the days a year from which owning pays, against worked examples of
/// textbooks. They count each year's payments at its end; the program's own default is the middle.</summary>
public class PresentWorthChecks
{
    private const double EndOfYear = 1;

    [Fact]
    [Source(SourceKind.Handbook, "L. J. Gitman, Principles of Managerial Finance, Brief, 3rd ed. 2003, p. 346, as quoted with "
        + "its result in the reference of numpy.npv 1.17 (read there)")]
    public void The_worth_of_a_row_of_payments() => Assert.Equal(-0.0084785916384548798,
        (double)Worth(28.1, [-100, 39, 59, 55, 20]), 1e-12);

    // Maintenance of 1,000 that grows by 8 % a year, 15 years, 10 %: 12,030.40.
    [Fact]
    [Source(SourceKind.Handbook, "J. A. White et al., Principles of Engineering Economic Analysis, 5th ed., example 2.30 (read "
        + "as quoted on a page of course notes)")]
    public void The_worth_of_maintenance_that_grows() => Assert.Equal(12_030.40,
        (double)Worth(10, [0, .. Enumerable.Range(0, 15).Select(year => 1000 * (decimal)Math.Pow(1.08, year))]), 0.005);

    // 100,000 paid, then 25,000 in the first year and 10 % less in each of 20 years, 12 %: 12,204.15.
    [Fact]
    [Source(SourceKind.Handbook, "J. A. White et al., Principles of Engineering Economic Analysis, 5th ed., example 2.32 (read "
        + "as quoted on a page of course notes)")]
    public void The_worth_of_income_that_falls() => Assert.Equal(12_204.15,
        (double)Worth(12, [-100_000, .. Enumerable.Range(0, 20).Select(year => 25_000 * (decimal)Math.Pow(0.9, year))]), 0.005);

    // A truck of 800,000 that is worth 100,000 after 5 years, 20,000 of maintenance a year, 14 %: 237,898.48 a year; at 1,189 a
    // day that is 200 days.
    [Fact]
    [Source(SourceKind.Handbook, "engineers' board examination, buy a truck or rent a truck, with its solution "
        + "(mathalino.com, Comparing alternatives; read there)")]
    public void The_days_a_year_from_which_a_truck_is_worth_buying()
    {
        var truck = new OwnedThing("truck", 800_000) { Resale = 100_000, Rent = Linear(1189) };
        var terms = new OwningTerms { Years = 5, Rate = Ratio.FromPercent(14), RepairsPerYear = 20_000, PaidAt = EndOfYear };
        var aYear = Owning.Of([truck], terms, 0).Total / PresentValue.EachYear(terms.Rate, terms.Years, EndOfYear);
        Assert.Equal(237_898.48, (double)aYear, 0.005);
        // Their 200 is rounded from 200.08: at 200 renting is cheaper by a hair, and 201 is the first day on which buying is.
        Assert.Equal([new DayStretch(201, 365)], BreakEven.Of([truck], terms)!.Stretches);
        Assert.Equal(200, (double)aYear / 1189, 0.5);
    }

    // A truck of 42,000, 6 years, nothing left, 3,100 a year and 60 a day, 7 %; hired for 190 a day. 91.63 days; at 180 days
    // owning saves 11,488.58 a year, with the annuity factor rounded to five digits.
    [Fact]
    [Source(SourceKind.Handbook, "textbook exercise, a pipeline contractor's truck bought or hired, with its solution "
        + "(justaaa.com, economics 28316; read there)")]
    public void The_days_a_year_from_which_a_hired_truck_is_worth_buying()
    {
        var truck = new OwnedThing("truck", 42_000) { Resale = 0, Rent = Linear(190) };
        var terms = new OwningTerms
        {
            Years = 6, Rate = Ratio.FromPercent(7), RepairsPerYear = 3_100, ConsumablesPerDay = 60, PaidAt = EndOfYear,
        };
        var one = BreakEven.Of([truck], terms)!;
        Assert.Equal([new DayStretch(92, 365)], one.Stretches);
        var each = PresentValue.EachYear(terms.Rate, terms.Years, EndOfYear);
        Assert.Equal(11_488.58, (double)((one.Renting[180] - one.Owning[180]) / each), 0.3);
        // Between 91 and 92 days the difference goes through zero at 91.63.
        var (before, after) = (one.Owning[91] - one.Renting[91], one.Owning[92] - one.Renting[92]);
        Assert.Equal(91.63, 91 + (double)(before / (before - after)), 0.005);
    }

    private static RentPrice Linear(decimal day) => new(day, RentPrice.DaysOfWeek * day, RentPrice.DaysOfMonth * day);

    private static decimal Worth(double percent, IReadOnlyList<decimal> payments) => payments.Select((payment, year) =>
        payment * PresentValue.Factor(Ratio.FromPercent(percent), year)).Sum();
}
