using System.Globalization;

namespace RigScenarios.Drafts;

/// <summary>Three sizes of each kind of thing to pick from: those of the invented parts of the library, small, middle and
/// large.</summary>
internal static class UsualSizes
{
    private static readonly string[] Words = ["small", "middle", "large"];

    /// <summary>The sizes of the things that answer a question.</summary>
    public static IReadOnlyList<(string Question, IReadOnlyList<FieldChoice> Choices)> All { get; } =
    [
        Of(RigQuestions.Camera, (61, 96, 72), (83, 126, 90), (142, 112, 114)),
        Of("lens", (68, 70, 70), (124, 84, 84), (212, 92, 92)),
        Of("battery", (48, 76, 110), (72, 86, 122), (98, 92, 134)),
        Of("plate", (20, 78, 112), (24, 80, 114), (31, 84, 128)),
        Of("monitor", (24, 138, 86), (38, 186, 120), (45, 240, 160)),
        Of("transmitter", (96, 58, 22), (104, 64, 26), (122, 72, 30)),
        Of("motor", (42, 38, 84), (48, 42, 94), (54, 46, 104)),
        Of("motor-controller", (60, 40, 22), (80, 55, 28), (104, 64, 32)),
        Of(RigQuestions.Device, (60, 40, 30), (100, 70, 40), (160, 110, 70)),
        Of("regulator", (18, 28, 48), (24, 46, 62), (40, 70, 110)),
        Of("head", (112, 108, 122), (138, 132, 152), (164, 158, 186)),
        Of("legs", (690, 130, 130), (760, 150, 150), (820, 180, 180)),
        Of("other", (60, 40, 30), (120, 80, 60), (240, 140, 110)),
    ];

    private static (string Question, IReadOnlyList<FieldChoice> Choices) Of(string question,
        params (double Length, double Width, double Height)[] sizes) =>
        (question, [.. sizes.Zip(Words).Select(size =>
        {
            var text = string.Create(CultureInfo.InvariantCulture,
                $"{size.First.Length} x {size.First.Width} x {size.First.Height} mm");
            return new FieldChoice(text, $"{size.Second} ({text})");
        })]);
}
