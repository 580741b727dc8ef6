using UnitsNet;
using RigScenarios.Parts;
using UnitsNet.Units;

namespace RigScenarios.Drafts;

/// <summary>A part in the few words that stand beside its name in a list to choose from. What is not known is empty.</summary>
/// <param name="Mass">Its mass, such as <c>820 g</c>.</param>
/// <param name="Draw">What it draws, such as <c>13 W standby, 21 W record</c>.</param>
/// <param name="Price">Price to buy, and to rent for a day.</param>
/// <param name="Detail">What matters most of its kind: watt-hours, voltages, focal length, rated load.</param>
public sealed record PartInWords(string Mass, string Draw, string Price, string Detail)
{
    /// <summary>The words for a part.</summary>
    public static PartInWords Of(Part part)
    {
        ArgumentNullException.ThrowIfNull(part);
        return new PartInWords(
            part.Mass is { } mass ? MassText(mass) : "",
            Join(", ", Watts(part.Power?.Standby, " standby"), Watts(part.Power?.Record, " record"),
                Watts(part.Plate?.OwnDraw ?? part.Regulator?.OwnDraw, " itself")),
            Join(", ", part.Buy?.ToString(), part.RentPerDay is { } rent ? $"{rent} a day" : null),
            DetailOf(part));
    }

    /// <summary>All of it on one line.</summary>
    public override string ToString() => Join(" · ", Mass, Draw, Price, Detail);

    /// <summary>A mass as people say it: grams below 2 kg, above it kilograms.</summary>
    public static string MassText(UnitsNet.Mass mass) => mass.Grams < 2000 ? $"{mass.Grams:0} g" : $"{mass.Kilograms:0.0#} kg";

    private static string DetailOf(Part part) => part switch
    {
        { Battery: { } battery } => Join(", ", $"{battery.Energy.WattHours:0.#} Wh", $"{battery.Voltage.Volts:0.#} V",
            battery.MaximumCurrent is { } most ? $"{most.Amperes:0.#} A" : null),
        { Plate: { } plate } => Join(", ", plate.SwitchOffVoltage is { } off ? $"switches off at {off.Volts:0.#} V" : null,
            plate.MaximumCurrent is { } most ? $"{most.Amperes:0.#} A" : null),
        { Regulator: { } regulator } =>
            Join(", ", $"{regulator.OutputVoltage.Volts:0.##} V from {regulator.InputMinimum.Volts:0.##} to "
                + $"{regulator.InputMaximum.Volts:0.##} V", regulator.MaximumCurrent is { } most
                ? $"{most.Amperes:0.#} A" : null),
        { RatedLoad: { } load } => $"rated for {MassText(load)}",
        { FocalLength: { } focal } => focal,
        { Voltage: { Minimum: { } low, Maximum: { } high } } => $"{low.Volts:0.##} to {high.Volts:0.##} V",
        _ => "",
    };

    private static string? Watts(Power? power, string of) => power is { } watts ? $"{watts.As(PowerUnit.Watt):0.##} W{of}" : null;

    private static string Join(string between, params IEnumerable<string?> texts) =>
        string.Join(between, texts.Where(text => !string.IsNullOrEmpty(text)));
}
