using System.Globalization;
using RigScenarios.Files.Formats;
using RigScenarios.Scenarios;

namespace RigScenarios.Sweeps.Sampling;

/// <summary>Two uncertain fields that go together: where one is large, the other tends to be large too, or small.</summary>
/// <remarks>A normal (Gaussian) copula: each field keeps its own spread, and the two are joined as normal variables with this
/// coefficient. The rank correlation of their values is <c>6/π·asin(coefficient/2)</c>, a little smaller (K. Pearson, "On
/// further methods of determining correlation", 1907).</remarks>
/// <param name="First">The path of one uncertain field of the plan.</param>
/// <param name="Second">The path of the other.</param>
/// <param name="Coefficient">The correlation of the normal variables, above -1 and below 1; 0 is none.</param>
public sealed record Correlation(string First, string Second, double Coefficient)
{
    private const string Between = " with ";

    private const string Accepted = "FIRST with SECOND=COEFFICIENT, two uncertain fields and a number above -1 and below 1, such "
        + "as \"builds.tripod.battery.capacity-left with builds.tripod.battery.resistance-growth=-0.7\"";

    /// <summary>Reads the short form of the command line, <c>FIRST with SECOND=COEFFICIENT</c>.</summary>
    /// <param name="text">The text.</param>
    /// <exception cref="ScenarioProblemsException">The text is not of that form.</exception>
    public static Correlation Parse(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var equals = text.LastIndexOf('=');
        var with = text.IndexOf(Between, StringComparison.OrdinalIgnoreCase);
        if (with <= 0 || equals < with + Between.Length)
            throw Problem(text, "This doesn't say which two fields go together.");
        var number = WrittenDigits.Plain(text[(equals + 1)..]);
        return double.TryParse(number, NumberStyles.Float, CultureInfo.InvariantCulture, out var coefficient)
            ? new Correlation(text[..with].Trim(), text[(with + Between.Length)..equals].Trim(), coefficient)
            : throw Problem(text, $"Found \"{number}\" for how much they go together.");
    }

    /// <summary>The two fields as <see cref="Parse"/> reads them.</summary>
    public override string ToString() => $"{First}{Between}{Second}={Coefficient.ToString("R", CultureInfo.InvariantCulture)}";

    private static ScenarioProblemsException Problem(string text, string problem) =>
        new([new Diagnostic(Severity.Error, "", TextPlace.None, text, problem, Accepted)]);
}
