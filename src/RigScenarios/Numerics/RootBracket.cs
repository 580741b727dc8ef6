namespace RigScenarios.Numerics;

/// <summary>Finds where a function changes its sign, or is least, inside a bracket.</summary>
internal static class RootBracket
{
    /// <summary>
    /// The place in [low, high] where the function passes from its sign at low to that at high. Regula falsi with the Illinois
    /// weights (M. Dowell and P. Jarratt, BIT 11 (1971) 168-174), a bisection wherever that gains too little.
    /// </summary>
    /// <param name="function">A continuous function.</param>
    /// <param name="low">One end; the function there must not have the sign that it has at the other.</param>
    /// <param name="high">The other end.</param>
    /// <param name="tolerance">Width of the bracket at which it is found.</param>
    public static double Root(Func<double, double> function, double low, double high, double tolerance)
    {
        double atLow = function(low), atHigh = function(high);
        if (atLow == 0)
            return low;
        var side = 0;
        for (var i = 0; i < 100 && high - low > tolerance && atHigh != 0; i++)
        {
            var width = high - low;
            var middle = i % 4 == 3 ? low + (width / 2) : high - (atHigh * width / (atHigh - atLow));
            if (!(middle > low && middle < high))
                middle = low + (width / 2);
            var value = function(middle);
            if (Math.Sign(value) == Math.Sign(atLow))
            {
                (low, atLow) = (middle, value);
                if (side == -1)
                    atHigh /= 2;
                side = -1;
            }
            else
            {
                (high, atHigh) = (middle, value);
                if (side == 1)
                    atLow /= 2;
                side = 1;
            }
        }

        return high;
    }

    /// <summary>The place in [low, high] where the function is least, by golden section; for one with a single minimum
    /// there.</summary>
    public static double Minimum(Func<double, double> function, double low, double high, double tolerance)
    {
        const double golden = 0.6180339887498949;
        double left = high - (golden * (high - low)), right = low + (golden * (high - low));
        double atLeft = function(left), atRight = function(right);
        while (high - low > tolerance)
        {
            if (atLeft < atRight)
            {
                (high, right, atRight) = (right, left, atLeft);
                left = high - (golden * (high - low));
                atLeft = function(left);
            }
            else
            {
                (low, left, atLeft) = (left, right, atRight);
                right = low + (golden * (high - low));
                atRight = function(right);
            }
        }

        return atLeft < atRight ? left : right;
    }
}
