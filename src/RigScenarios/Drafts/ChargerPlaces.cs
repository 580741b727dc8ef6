using UnitsNet;

namespace RigScenarios.Drafts;

/// <summary>Where a charger usually stands, and how warm it is there. Common practice, no source.</summary>
internal static class ChargerPlaces
{
    /// <summary>A heated room; taken where nobody says.</summary>
    public const string Indoors = "in a heated room";

    private const string Vehicle = "in a heated vehicle";

    private const string Outside = "outside, in the air of the day";

    /// <summary>The places to pick from.</summary>
    public static IReadOnlyList<FieldChoice> Choices { get; } =
        [new(Indoors, "in a heated room (20 °C)"), new(Vehicle, "in a heated vehicle (15 °C)"), new(Outside, Outside)];

    /// <summary>The air around a charger; null for that of the day.</summary>
    /// <param name="stands">Where it stands, in anyone's words; null where nobody says.</param>
    public static Temperature? Air(string? stands) => stands switch
    {
        Outside => null,
        Vehicle => Temperature.FromDegreesCelsius(15),
        _ => Temperature.FromDegreesCelsius(20),
    };
}
