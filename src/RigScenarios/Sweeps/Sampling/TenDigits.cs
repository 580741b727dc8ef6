namespace RigScenarios.Sweeps.Sampling;

/// <summary>Numbers with ten digits: more than any figure of a rig means, and short in a table of a million rows.</summary>
internal static class TenDigits
{
    /// <summary>The number to ten digits.</summary>
    public static double Of(double number)
    {
        if (number == 0 || !double.IsFinite(number))
            return number;
        // Places behind the point; powers of ten to 22 are exact, so that a quotient of two exact numbers is the nearest one.
        var places = 9 - (int)Math.Floor(Math.Log10(Math.Abs(number)));
        return places switch
        {
            > 22 or < -12 => number,
            >= 0 => Math.Round(number * Power(places)) / Power(places),
            _ => Math.Round(number / Power(-places)) * Power(-places),
        };
    }

    /// <summary>The number to ten digits, where it lies between two ends: next to them a rounding of their difference is
    /// nothing, as the middle of -10 °C and 10 °C that comes out as 1e-16 °C.</summary>
    public static double Between(double number, double low, double high) =>
        Math.Abs(number) < 1e-13 * Math.Max(Math.Abs(low), Math.Abs(high)) ? Math.Clamp(0, low, high)
            : Math.Clamp(Of(number), low, high);

    private static double Power(int places)
    {
        var power = 1.0;
        for (var place = 0; place < places; place++)
            power *= 10;
        return power;
    }
}
