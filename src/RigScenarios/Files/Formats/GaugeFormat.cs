using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using RigScenarios.Parts;
using RigScenarios.Wiring;

namespace RigScenarios.Files.Formats;

/// <summary>The gauge of a cable's conductors: American (<c>AWG 20</c>) or metric (<c>0.5 mm²</c>).</summary>
public sealed partial class GaugeFormat : PlainFormat<WireGauge>
{
    private const int Thickest = 4;
    private const int Thinnest = 40;

    /// <inheritdoc/>
    public override string Accepted =>
        $"an American gauge such as \"AWG 20\" ({Thickest} to {Thinnest}), or one of "
            + string.Join(", ",
                Conductor.MetricGauges.Select(area => area.SquareMillimeters.ToString("0.##", CultureInfo.InvariantCulture)))
            + " mm², such as \"0.5 mm²\"";

    /// <inheritdoc/>
    public override JsonObject Schema() =>
        new() { ["type"] = "string", ["pattern"] = @"^\s*(AWG ?\d+|\d+ ?AWG|\d+(\.\d+)? ?mm(²|2|\^2))\s*$",
        ["examples"] = new JsonArray("AWG 20", "0.5 mm²") };

    /// <inheritdoc/>
    protected override bool TryParse(string text, [MaybeNullWhen(false)] out WireGauge value)
    {
        value = default;
        if (text.Length > 40 || Gauge().Match(WrittenDigits.Plain(text)) is not { Success: true } match)
            return false;
        if (match.Groups["awg"] is { Success: true } awg)
        {
            if (!int.TryParse(awg.Value, CultureInfo.InvariantCulture, out var number) || number is < Thickest or > Thinnest)
                return false;
            value = WireGauge.American(number);
            return true;
        }
        var area = double.Parse(match.Groups["area"].Value, CultureInfo.InvariantCulture);
        if (!Conductor.MetricGauges.Any(one => Math.Abs(one.SquareMillimeters - area) < 1e-9))
            return false;
        value = WireGauge.Metric(area);
        return true;
    }

    /// <inheritdoc/>
    protected override string Text(WireGauge value) => value.ToString();

    [GeneratedRegex(@"^\s*(AWG ?(?<awg>[0-9]+)|(?<awg>[0-9]+) ?AWG|(?<area>[0-9]+(\.[0-9]+)?) ?mm(²|2|\^2))\s*$",
        RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Gauge();
}
