using RigScenarios.Files;
using RigScenarios.Files.Formats;
using RigScenarios.Parts;

namespace RigScenarios.Fits.Notes;

/// <summary>The fields that notes and logs have in common.</summary>
internal static class UseFormat
{
    private static readonly MapFormat<DeviceUse> Devices = new(new DeviceUseFormat(), "device");

    /// <summary>The fields, for a note or a log.</summary>
    public static Field<T>[] Of<T>()
        where T : WrittenUse =>
    [
        Fields<T>.OptionalGroup("build", ScenarioFormat.KitName, use => use.Build, (use, value) => use with { Build = value },
            "The build that was used; the one of the file if left out."),
        Fields<T>.Optional("date", new DateFormat(), use => use.Date, (use, value) => use with { Date = value }, "The day."),
        Fields<T>.Optional("air", ScenarioFormat.Air, use => use.Air, (use, value) => use with { Air = value },
            "The air around the rig; that of the file if left out."),
        Fields<T>.Optional("start-temperature", ScenarioFormat.Air, use => use.StartTemperature,
            (use, value) => use with { StartTemperature = value },
            "The battery's own temperature at the start; that of the air if left out."),
        Fields<T>.Optional("charge", PartFormat.Shares, use => use.Charge, (use, value) => use with { Charge = value },
            "Charge at the start; full if left out."),
        Fields<T>.WithDefault("devices", Devices, OrderedMap<DeviceUse>.Empty, use => use.Devices,
            (use, value) => use with { Devices = value }, "What each device did all the time, by its name in the kit."),
        Fields<T>.OptionalGroup("others", new DeviceUseFormat(), use => use.Others,
            (use, value) => use with { Others = value }, "What the devices did that are not named; off if left out."),
        Fields<T>.OptionalGroup("remark", PartFormat.Remark, use => use.Remark, (use, value) => use with { Remark = value },
            "A remark, such as the weather."),
    ];
}
