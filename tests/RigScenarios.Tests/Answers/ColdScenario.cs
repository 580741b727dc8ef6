using RigScenarios.Answers;

namespace RigScenarios.Tests.Answers;

/// <summary>A label-only battery in the cold: 100 Wh at 14.4 V, one camera, one block.</summary>
internal static class ColdScenario
{
    /// <summary>The answer for it.</summary>
    /// <param name="celsius">The air, and the battery at the start, °C.</param>
    /// <param name="watts">What the camera draws, W.</param>
    /// <param name="hours">How long the day takes, h.</param>
    /// <param name="battery">More of the battery's data.</param>
    /// <param name="options">What is asked; the usual if null.</param>
    public static RigAnswer Of(double celsius, double watts, double hours, string battery = "", AnswerOptions? options = null)
    {
        var scenario = SmallScenario.Read(FormattableString.Invariant($$$"""
            rigscenarios: scenario 1
            title: Cold
            parts:
              brick: {kind: battery, name: Brick, mass: 900 g,
                battery: {energy: 100 Wh, voltage: 14.4 V, chemistry: nmc{{{battery}}} } }
              camera: {kind: body, name: Camera, power: {off: 0 W, standby: 1 W, record: {{{watts}}} W} }
            conditions: {ambient: {{{celsius}}} °C}
            kit: {brick: {part: brick}, camera: {part: camera}}
            builds:
              one: {stance: hand, battery: {item: brick}, devices: {camera: {essential: yes} } }
            days:
              day: {starts: "08:00", blocks: {all: {length: {{{hours}}} h, others: record} } }
            """));
        return RigAnswer.Of(scenario, "one", ["day"], options, cancellation: TestContext.Current.CancellationToken);
    }
}
