using RigScenarios.Files;
using RigScenarios.Files.Formats;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Fits.Notes;

/// <summary>How field notes stand in a file.</summary>
internal static class FieldNotesFormat
{
    private static readonly DurationFormat Times = new(Duration.FromMinutes(1), Duration.FromHours(240), "4 h 10 min");

    private static readonly DurationFormat Lengths = new(Duration.FromMinutes(0.1), Duration.FromHours(48), "1 h 30 min");

    private static readonly DurationFormat Clocks = new(Duration.FromSeconds(1), Duration.FromHours(1), "3 min");

    private static readonly QuantityFormat<Ratio> Shown = new(Ratio.FromPercent(0), Ratio.FromPercent(100), "40 %");

    private static readonly MapFormat<DeviceUse> Devices = new(new DeviceUseFormat(), "device");

    private static readonly Format<WrittenStretch> Stretch = new RecordFormat<WrittenStretch>(
        () => new WrittenStretch(), "A stretch in which what ran stayed the same.",
        Fields<WrittenStretch>.Optional("length", Lengths, stretch => stretch.Length,
            (stretch, value) => stretch with { Length = value }, "How long; left out in the last one, which goes on to the end."),
        Fields<WrittenStretch>.WithDefault("devices", Devices, OrderedMap<DeviceUse>.Empty, stretch => stretch.Devices,
            (stretch, value) => stretch with { Devices = value }, "What each device did, by its name in the kit."),
        Fields<WrittenStretch>.OptionalGroup("others", new DeviceUseFormat(), stretch => stretch.Others,
            (stretch, value) => stretch with { Others = value }, "What the devices did that are not named; off if left out."));

    private static readonly RecordFormat<WrittenNote> Note = new(
        () => new WrittenNote(), "How long the battery lasted on one day.",
        [
            Fields<WrittenNote>.Optional("lasted", Times, note => note.Lasted, (note, value) => note with { Lasted = value },
                "How long it lasted until battery or device ended it."),
            Fields<WrittenNote>.Optional("still-running-after", Times, note => note.StillRunningAfter,
                (note, value) => note with { StillRunningAfter = value }, "When it was still running, from the start."),
            Fields<WrittenNote>.Optional("shown", Shown, note => note.Shown, (note, value) => note with { Shown = value },
                "The charge that battery or camera showed then."),
            .. UseFormat.Of<WrittenNote>(),
            new Field<WrittenNote, IReadOnlyList<WrittenStretch>>("stretches", new ListFormat<WrittenStretch>(Stretch, 200, 1),
                note => note.Stretches.Count > 0, note => note.Stretches,
                (note, value) => note with { Stretches = value }, false,
                "What ran one after the other, where it was not the same all the time; instead of \"devices\"."),
            Fields<WrittenNote>.OptionalGroup("as-planned", ScenarioFormat.KitName, note => note.AsPlanned,
                (note, value) => note with { AsPlanned = value },
                "A day of the scenario whose blocks were kept; instead of \"devices\"."),
            Fields<WrittenNote>.OptionalGroup("ended-by", ScenarioFormat.KitName, note => note.EndedBy,
                (note, value) => note with { EndedBy = value },
                "What ended it: battery, or a device by its name in the kit; whichever of battery and essential devices stops "
                + "first if left out."),
            Fields<WrittenNote>.WithDefault("steady", new YesNoFormat(), false, note => note.Steady,
                (note, value) => note with { Steady = value },
                "Whether the load was the same to a per cent all the time, as on a bench. No if left out."),
            Fields<WrittenNote>.Optional("clock-within", Clocks, note => note.ClockWithin,
                (note, value) => note with { ClockWithin = value },
                "How far the time may be off; 3 min if left out, for people round to ten minutes."),
        ]);

    private static readonly Format<CapacityTest> Capacity = new RecordFormat<CapacityTest>(
        () => new CapacityTest(), "A full battery emptied slowly, with what it gave measured.",
        Fields<CapacityTest>.Optional("charge", new QuantityFormat<ElectricCharge>(ElectricCharge.FromAmpereHours(0.01),
            ElectricCharge.FromAmpereHours(500), "11.6 Ah"), test => test.Charge,
            (test, value) => test with { Charge = value }, "The charge that it gave."),
        Fields<CapacityTest>.Optional("energy", BatteryFormat.LabelEnergy, test => test.Energy,
            (test, value) => test with { Energy = value }, "The energy that it gave, where the charge is not known."));

    private static readonly Format<PulseTestDone> Pulse = new RecordFormat<PulseTestDone>(
        () => new PulseTestDone(), "The resistance after ten seconds of a step of the load.",
        Fields<PulseTestDone>.Required("resistance-growth", new NumberFormat(0.2, 20), test => test.ResistanceGrowth,
            (test, value) => test with { ResistanceGrowth = value }, "How many times that of a new battery."),
        Fields<PulseTestDone>.Optional("temperature", ScenarioFormat.Air, test => test.Temperature,
            (test, value) => test with { Temperature = value }, "The battery's temperature then; 20 °C if left out."));

    /// <summary>A file of field notes, without its first line.</summary>
    public static readonly RecordFormat<FieldNotes> Whole = new(
        () => new FieldNotes(), "RigScenarios field notes: what somebody wrote down about one battery.",
        Fields<FieldNotes>.OptionalGroup("note", PartFormat.Remark, notes => notes.Note,
            (notes, value) => notes with { Note = value }, "A remark."),
        Fields<FieldNotes>.OptionalGroup("scenario", new TextFormat(500), notes => notes.Scenario,
            (notes, value) => notes with { Scenario = value },
            "The scenario file whose builds and devices the notes name, from the folder of this file."),
        Fields<FieldNotes>.OptionalGroup("build", ScenarioFormat.KitName, notes => notes.Build,
            (notes, value) => notes with { Build = value },
            "The build of notes and logs that name none; the scenario's first if left out."),
        Fields<FieldNotes>.Optional("air", ScenarioFormat.Air, notes => notes.Air, (notes, value) => notes with { Air = value },
            "The air of notes and logs that say nothing of it; that of the scenario if left out."),
        Fields<FieldNotes>.WithDefault("notes", new MapFormat<WrittenNote>(Note, "note", 500), OrderedMap<WrittenNote>.Empty,
            notes => notes.Notes, (notes, value) => notes with { Notes = value }, "Notes by short names."),
        Fields<FieldNotes>.WithDefault("logs", new MapFormat<WrittenLog>(LogFormat.Whole, "log", 20),
            OrderedMap<WrittenLog>.Empty, notes => notes.Logs, (notes, value) => notes with { Logs = value },
            "Logs of voltage and current by short names."),
        Fields<FieldNotes>.WithDefault("meters", new MapFormat<PowerDraw>(PartFormat.Draw, "device", 100),
            OrderedMap<PowerDraw>.Empty, notes => notes.Meters, (notes, value) => notes with { Meters = value },
            "What a power meter read at a device's inlet, by the device's name in the kit."),
        Fields<FieldNotes>.OptionalGroup("capacity-test", Capacity, notes => notes.Capacity,
            (notes, value) => notes with { Capacity = value }, "What a capacity test gave."),
        Fields<FieldNotes>.OptionalGroup("pulse-test", Pulse, notes => notes.Pulse,
            (notes, value) => notes with { Pulse = value }, "What a pulse test gave."),
        new Field<FieldNotes, LoadScales>("scale", new ChoiceFormat<LoadScales>(), notes => notes.Scales != LoadScales.Together,
            notes => notes.Scales, (notes, value) => notes with { Scales = value }, false,
            "Whether the notes scale all draws together, or each device by itself; together if left out."),
        new Field<FieldNotes, IReadOnlyList<string>>("known", new ListFormat<string>(ScenarioFormat.KitName, 100),
            notes => notes.Known.Count > 0, notes => notes.Known, (notes, value) => notes with { Known = value }, false,
            "Devices whose draw is known for certain and does not scale, by their names in the kit."),
        Fields<FieldNotes>.WithDefault("air-uncertain", new YesNoFormat(), false, notes => notes.AirIsUncertain,
            (notes, value) => notes with { AirIsUncertain = value },
            "Whether the thermometer may be off by one amount, the same in all notes and logs. No if left out."));

    /// <summary>The outline of a note: what the columns of a table are named.</summary>
    public static IEnumerable<string> NoteKeys => Note.Outline().Fields.Select(one => one.Key);
}
