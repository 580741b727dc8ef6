using System.Globalization;

namespace RigScenarios.Checks;

/// <summary>
/// A prediction is as far off a published figure as the test says: neither further, nor nearer. Where a model gets better the
/// statement beside it is renewed; one that stays on would claim too little.
/// </summary>
internal static class StatedError
{
    /// <param name="predicted">What the project computes.</param>
    /// <param name="published">What the source says, in the same unit.</param>
    /// <param name="percent">The error that is stated, % of the published figure; above zero the prediction is too much.</param>
    /// <param name="points">How far the error may be from the stated one, in points of percent.</param>
    public static void Holds(double predicted, double published, double percent, double points)
    {
        var error = 100 * ((predicted / published) - 1);
        Assert.True(Math.Abs(error - percent) <= points, string.Create(CultureInfo.InvariantCulture,
            $"predicted {predicted:G5}, published {published:G5}: {error:+0.00;-0.00} %, stated {percent:+0.0;-0.0;0} ± "
                + $"{points} %"));
    }
}
