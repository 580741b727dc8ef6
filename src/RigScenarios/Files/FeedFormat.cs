using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using RigScenarios.Builds;
using RigScenarios.Files.Formats;

namespace RigScenarios.Files;

/// <summary>How a scenario says what feeds what, and through which outlet and cable.</summary>
internal static class FeedFormat
{
    private static readonly TextFormat KitName = new(60);

    /// <summary>What feeds a thing: one name.</summary>
    public static readonly Format<string> Feed = new FeedNameFormat();

    public static readonly Format<SplitterInUse> SplitterInUse = new RecordFormat<SplitterInUse>(
        () => new SplitterInUse(), "A splitter of the build.",
        Fields<SplitterInUse>.OptionalGroup("fed-by", Feed, splitter => splitter.FedBy,
            (splitter, value) => splitter with { FedBy = value },
            "What feeds it: battery, the plate, a regulator or another splitter."),
        Fields<SplitterInUse>.OptionalGroup("outlet", KitName, splitter => splitter.Outlet,
            (splitter, value) => splitter with { Outlet = value }, "The outlet of that, by its name on the part."),
        Fields<SplitterInUse>.OptionalGroup("cable", KitName, splitter => splitter.Cable,
            (splitter, value) => splitter with { Cable = value }, "The power cable in front of it, by its name in the kit."));

    public static readonly Format<RegulatorInUse> RegulatorInUse = new RecordFormat<RegulatorInUse>(
        () => new RegulatorInUse(), "A regulator of the build.",
        Fields<RegulatorInUse>.OptionalGroup("fed-by", Feed, regulator => regulator.FedBy,
            (regulator, value) => regulator with { FedBy = value },
            "What feeds it: battery, the plate, a splitter or another regulator."),
        Fields<RegulatorInUse>.OptionalGroup("outlet", KitName, regulator => regulator.Outlet,
            (regulator, value) => regulator with { Outlet = value }, "The outlet of that, by its name on the part."),
        Fields<RegulatorInUse>.OptionalGroup("cable", KitName, regulator => regulator.Cable,
            (regulator, value) => regulator with { Cable = value }, "The power cable in front of it, by its name in the kit."));

    /// <summary>One name; several would join sources, which is told for what it is.</summary>
    private sealed class FeedNameFormat : Format<string>, IAcceptedText
    {
        public string Accepted => KitName.Accepted;

        public override bool TryRead(FileNode node, string path, ReadLog log, [MaybeNullWhen(false)] out string value)
        {
            if (node is not ListNode)
                return KitName.TryRead(node, path, log, out value);
            value = null;
            log.Error(node.At, path,
                "SHORT CIRCUIT: two feeds for one thing join their outlets, and where their voltages differ the current "
                    + "between them has no limit but a fuse.", "one name; what is fed from two sides needs a part made for it");
            return false;
        }

        public override FileNode Write(string value) => KitName.Write(value);

        public override JsonObject Schema() => KitName.Schema();
    }
}
