using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using RigScenarios.Files.Formats;

namespace RigScenarios.Fits.Notes;

/// <summary>How the use of a device stands in a file: <c>record</c>, <c>record 60 %</c>,
/// <c>record 50 %, standby 20 %</c>.</summary>
public sealed partial class DeviceUseFormat : PlainFormat<DeviceUse>
{
    private static readonly string[] States = ["off", "standby", "record", "on"];

    /// <inheritdoc/>
    public override string Accepted => "off, standby, record or on (which means record); with a share of the time such as "
        + "\"record 60 %\" (standby the rest) or \"record 50 %, standby 20 %\" (off the rest)";

    /// <inheritdoc/>
    public override JsonObject Schema() => new()
    {
        ["type"] = "string",
        ["pattern"] = @"^\s*(off|standby|record|on)(\s+[0-9.]+\s*%)?(\s*,\s*(off|standby|record|on)\s+[0-9.]+\s*%)*\s*$",
        ["examples"] = new JsonArray("record", "record 60 %", "record 50 %, standby 20 %"),
    };

    /// <inheritdoc/>
    protected override IEnumerable<string> Words => States;

    /// <inheritdoc/>
    protected override bool TryParse(string text, [MaybeNullWhen(false)] out DeviceUse value)
    {
        value = null;
        var parts = text.Length > 100 ? [] : WrittenDigits.Plain(text).Split(',');
        Span<double> shares = stackalloc double[3];
        foreach (var part in parts)
        {
            if (Part().Match(part) is not { Success: true } match || (parts.Length > 1 && !match.Groups["share"].Success))
                return false;
            var share = 100.0;
            if (match.Groups["share"].Success && !double.TryParse(match.Groups["share"].ValueSpan, NumberStyles.AllowDecimalPoint,
                CultureInfo.InvariantCulture, out share))
                return false;
            shares[Place(match.Groups["state"].Value)] += share / 100;
        }
        var rest = 1 - shares[0] - shares[1] - shares[2];
        if (parts.Length == 0 || rest < -1e-9)
            return false;
        // A device that records part of the time waits between the takes; whoever says more of it has said all.
        shares[parts.Length == 1 && shares[2] > 0 ? 1 : 0] += Math.Max(0, rest);
        value = DeviceUse.Of(shares[0], shares[1], shares[2]);
        return true;
    }

    /// <inheritdoc/>
    protected override string Text(DeviceUse value)
    {
        ArgumentNullException.ThrowIfNull(value);
        var (off, standby, record) = (value.Off.Percent, value.Standby.Percent, value.Record.Percent);
        if (off >= 100)
            return "off";
        if (standby >= 100)
            return "standby";
        if (record >= 100)
            return "record";
        return off == 0 && record > 0 ? $"record {Percent(record)}"
            : string.Join(", ", new[] { ("record", record), ("standby", standby), ("off", off) }
                .Where(part => part.Item2 > 0).Select(part => $"{part.Item1} {Percent(part.Item2)}"));
    }

    private static string Percent(double percent) => string.Create(CultureInfo.InvariantCulture, $"{percent:0.######} %");

    private static int Place(string state) => state switch { "off" => 0, "standby" => 1, _ => 2 };

    [GeneratedRegex(@"^\s*(?<state>off|standby|record|on)(\s+(?<share>[0-9]+(\.[0-9]*)?)\s*%)?\s*$",
        RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Part();
}
