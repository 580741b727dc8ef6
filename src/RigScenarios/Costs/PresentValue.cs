using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Costs;

/// <summary>What later payments are worth today: 1/(1 + i)^t of them, i a yearly rate, t in years from now.</summary>
public static class PresentValue
{
    /// <summary>Where in its year a payment that is spread over it counts.</summary>
    public const double MidYear = 0.5;

    /// <summary>What a payment of 1 is worth today.</summary>
    /// <param name="rate">Yearly rate, 0 or more.</param>
    /// <param name="years">When it is paid, years from now; 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value lies outside its range.</exception>
    public static decimal Factor(Ratio rate, double years)
    {
        Require.NotNegative(rate.DecimalFractions, "", nameof(rate));
        Require.NotNegative(years, "years", nameof(years));
        return rate.DecimalFractions == 0 ? 1 : (decimal)Math.Pow(1 + rate.DecimalFractions, -years);
    }

    /// <summary>What a payment of 1 in each year is worth today.</summary>
    /// <param name="rate">Yearly rate, 0 or more.</param>
    /// <param name="years">For how many years; 0 or more.</param>
    /// <param name="paidAt">When in each year, 0…1; its middle unless given, 1 for its end.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value lies outside its range.</exception>
    public static decimal EachYear(Ratio rate, int years, double paidAt = MidYear)
    {
        Require.Within(paidAt, 0, 1, "", nameof(paidAt));
        return Enumerable.Range(0, years).Sum(year => Factor(rate, year + paidAt));
    }
}
