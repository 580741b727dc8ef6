namespace RigScenarios.Drafts;

/// <summary>An answer that can be picked: the text of the file with its name for people.</summary>
/// <param name="Text">The text that the field gets.</param>
/// <param name="Title">Its name for people.</param>
public sealed record FieldChoice(string Text, string Title);

/// <summary>One figure of a label, for what is not listed.</summary>
/// <param name="Path">Its path inside the part.</param>
/// <param name="Label">What is asked for.</param>
/// <param name="Help">Where to find it and what happens if it is left open.</param>
/// <param name="Example">How it is written.</param>
/// <param name="Unit">The unit of a number that is written without one; empty for words.</param>
/// <param name="Of">The keys of the questions whose things have it.</param>
/// <param name="Needed">Those for which it can't be left open (a device's watts can where volts and amperes are given).</param>
public sealed record LabelQuestion(string Path, string Label, string Help, string Example, string Unit,
    IReadOnlyList<string> Of, IReadOnlyList<string> Needed)
{
    /// <summary>Its key: the path with hyphens; for sizes that of the question behind it.</summary>
    public string Key => Choices.Count == 0 ? Path.Replace('.', '-') : $"{Path}-{Of[0]}";

    /// <summary>Answers to pick from; none where only a figure can be written.</summary>
    public IReadOnlyList<FieldChoice> Choices { get; init; } = [];
}

/// <summary>What is asked of a thing that is not listed. One line a figure: whatever else a form needs is in the format of the
/// part.</summary>
public static class LabelQuestions
{
    private static readonly string[] Devices = [RigQuestions.Camera, "monitor", "transmitter", "motor", "motor-controller",
        RigQuestions.Device];

    private static readonly string[] Battery = ["battery"];

    private static readonly string[] Plate = ["plate"];

    private static readonly string[] Regulator = ["regulator"];

    private static readonly string[] Head = ["head"];

    private static readonly string[] Legs = ["legs"];

    private static readonly string[] Everything = [.. RigQuestions.All.Select(question => question.Key)];

    private static readonly string[] None = [];

    /// <summary>The figures, in the order in which they are asked.</summary>
    public static IReadOnlyList<LabelQuestion> All { get; } =
    [
        new("name", "Name", "What you call it.", "My monitor", "", Everything, None),
        new("battery.energy", "Watt-hours", "On every battery's label, as Wh.", "98 Wh", "Wh", Battery, Battery),
        new("battery.voltage", "Volts", "The voltage on the label. A battery without one is taken as 14.4 V.", "14.4 V", "V",
            Battery, None),
        new("battery.maximum-current", "Amperes", "The most that the battery gives, if its label says so.", "10 A", "A",
            Battery, None),
        new("power.record", "Watts", "What it draws when it works. No watts on the label? Give volts and amperes instead.",
            "9 W", "W", Devices, Devices),
        new("label.voltage", "Volts", "The voltage on the label.", "12 V", "V", Devices, None),
        new("label.current", "Amperes", "The current on the label. It is the most that it takes.", "0.8 A", "A", Devices, None),
        new("regulator.output-voltage", "Volts it gives", "What comes out of the regulator.", "7.6 V", "V", Regulator,
            Regulator),
        new("regulator.maximum-current", "Amperes it gives", "The most that comes out of it.", "4 A", "A", Regulator, None),
        new("regulator.own-draw", "Watts of its own", "What it draws with nothing behind it. 0.3 W if left open.", "0.3 W",
            "W", Regulator, None),
        new("plate.own-draw", "Watts of its own", "What the plate draws itself. 0.3 W if left open.", "0.3 W", "W", Plate,
            None),
        new("plate.maximum-current", "Amperes", "The most that may go through the plate.", "12 A", "A", Plate, None),
        new("power.standby", "Watts on standby",
            "Switched on, not recording. As when it works if left open, which is on the cautious side.", "5 W", "W", Devices,
            None),
        new("voltage.minimum", "Least volts",
            "Below it, it stops. From the data sheet; leave it open if you don't know.", "7 V", "V", Devices, None),
        new("voltage.maximum", "Most volts",
            "Above it, it may be destroyed. From the data sheet; leave it open if you don't know.", "17 V", "V", Devices, None),
        new("plate.switch-off-voltage", "Volts at which it switches off",
            "Below it the plate switches everything off. Leave it open if it doesn't.", "11.8 V", "V", Plate, None),
        new("regulator.input-minimum", "Least volts in", "Below it the regulator stops. 11.2 V if left open.", "11 V", "V",
            Regulator, None),
        new("regulator.input-maximum", "Most volts in", "Above it, it may be destroyed. 16.8 V if left open.", "17 V", "V",
            Regulator, None),
        new("rated-load", "Rated load", "The load that its maker rates the head for. Without it nothing is said about the load.",
            "8 kg", "kg", Head, None),
        new("head.drag", "Tilt drag",
            "Its moment at 10 °/s, at the setting that you use; it slows and holds nothing. 2 N·m is assumed if left open.",
            "2.5 N·m", "N·m", Head, None),
        new("head.counterbalance-to", "Most counterbalance",
            "The most that its counterbalance gives. What holds the rated load with its centre 100 mm up is taken if left open.",
            "10 N·m", "N·m", Head, None),
        new("legs.height", "Height", "From the ground to where the head sits, as you set them. 1400 mm is taken if left open.",
            "1400 mm", "mm", Legs, None),
        new("legs.foot-radius", "Middle to a foot",
            "From the middle between the feet to a foot. 600 mm is taken if left open.", "620 mm", "mm", Legs, None),
        new("mass", "Mass", "Put it on a kitchen scale. A usual one is taken if left open.", "310 g", "g", Everything, None),
        .. UsualSizes.All.Select(size => new LabelQuestion("size", "Size",
            "Front to back, left to right, bottom to top: the nearest of three, or as measured. It is not assumed: without it "
                + "nothing is known of where it ends.", "96 x 122 x 91 mm", "mm", [size.Question], None)
        {
            Choices = size.Choices,
        }),
    ];

    /// <summary>The figures that are asked of things that answer a question.</summary>
    public static IEnumerable<LabelQuestion> Of(string question) => All.Where(figure => figure.Of.Contains(question));
}
