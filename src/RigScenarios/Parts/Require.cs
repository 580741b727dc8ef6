using System.Diagnostics.CodeAnalysis;
using System.Numerics;
using System.Runtime.CompilerServices;

namespace RigScenarios.Parts;

/// <summary>
/// The guards of the domain types. Each message gives the name, the value that was found and the accepted range; NaN is always
/// refused.
/// </summary>
internal static class Require
{
    /// <summary>A finite value above zero in the unit that is compared.</summary>
    public static void Positive(double value, string unit, [CallerMemberName] string name = "")
    {
        if (!(value > 0) || !double.IsFinite(value))
            Refuse(name, value, unit, "above 0");
    }

    /// <summary>A finite value of zero or more.</summary>
    public static void NotNegative(double value, string unit, [CallerMemberName] string name = "")
    {
        if (!(value >= 0) || !double.IsFinite(value))
            Refuse(name, value, unit, "0 or more");
    }

    /// <summary>A finite value.</summary>
    public static void Finite(double value, string unit, [CallerMemberName] string name = "")
    {
        if (!double.IsFinite(value))
            Refuse(name, value, unit, "a finite number");
    }

    /// <summary>A value in a closed range.</summary>
    public static void Within(double value, double low, double high, string unit, [CallerMemberName] string name = "")
    {
        if (!(value >= low && value <= high))
            Refuse(name, value, unit, $"from {low:G6} to {high:G6}");
    }

    /// <summary>A value above the lower bound and up to the upper one.</summary>
    public static void AboveUpTo(double value, double low, double high, string unit, [CallerMemberName] string name = "")
    {
        if (!(value > low && value <= high))
            Refuse(name, value, unit, $"above {low:G6}, up to {high:G6}");
    }

    /// <summary>A whole number of at least the lower bound.</summary>
    public static void AtLeast<T>(T value, T low, [CallerMemberName] string name = "") where T : INumber<T>
    {
        if (!(value >= low))
            throw new ArgumentOutOfRangeException(name, $"{name} is {value}; accepted: {low} or more.");
    }

    [DoesNotReturn]
    private static void Refuse(string name, double value, string unit, string accepted) =>
        throw new ArgumentOutOfRangeException(name,
            $"{name} is {value:G9}{(unit.Length == 0 ? "" : " " + unit)}; accepted: "
                + $"{accepted}{(unit.Length == 0 ? "" : " " + unit)}.");
}
