using System.Text.Encodings.Web;
using System.Text.Json;
using RigScenarios.Batteries;

namespace RigScenarios.Cli.Answers;

/// <summary>What all answers for programs have in common: how they are written, how far they are rounded, how a default is told.</summary>
internal static class JsonText
{
    private static readonly JsonSerializerOptions Options = new() { WriteIndented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    public static string Of(object answer) => JsonSerializer.Serialize(answer, Options);

    /// <summary>Four decimals are beyond what any of these figures means, and keep the text readable.</summary>
    /// <param name="value">The figure; null where there is none.</param>
    public static double? Round(double? value) => value is { } number ? Math.Round(number, 4) : null;

    public static object Assumed(AssumedValue assumed) =>
        new { field = assumed.Field, name = assumed.Name, value = assumed.Value, why = assumed.Why, source = assumed.Source.ToString() };
}
