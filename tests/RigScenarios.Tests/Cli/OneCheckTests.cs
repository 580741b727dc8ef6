namespace RigScenarios.Tests.Cli;

/// <summary>One check, the same everywhere: what <c>check</c> accepts every command answers, and what one refuses
/// <c>check</c> refuses with the same words and the same line.</summary>
[Collection(nameof(ConsoleRun))]
public class OneCheckTests
{
    private static readonly string[] Commands = ["run", "day", "balance", "wiring", "travel"];

    private static readonly string Harbour = File.ReadAllText(Repository.Data("scenarios", "winter-harbour.yaml"))
        .Replace("[../parts]", $"[\"{Repository.Data("parts").Replace('\\', '/')}\"]", StringComparison.Ordinal);

    /// <summary>A file by what is odd about it: text that is replaced, and what stands there instead.</summary>
    public static TheoryData<string, string, string> Odd => new()
    {
        { "days that overlap", "starts: \"07:00\"", "starts: \"00:10\"" },
        { "a day that lasts into the next", "title: Packing up, length: 30 min", "title: Packing up, length: 20 h" },
        { "a day of no length", "blocks:\n      rigging:", "blocks: {}\n    unused:\n      rigging:" },
        { "two counterbalances", "slide-middle: 25 mm", "slide-middle: 25 mm, counterbalance-at: 3 N·m" },
        { "nothing on the rig", "carries: [cage, long-rods,", "carries: [long-rods," },
        { "no head", "head, legs]", "legs]" },
        { "no tripod", "head, legs]", "head]" },
        { "no battery plate", "plate: plate\n", "" },
        { "no essential device", "essential: yes", "essential: no" },
        { "an empty battery", "charge: 100 %", "charge: 0 %" },
        { "a battery of no capacity", "capacity-left: 88 %", "capacity-left: 0 %" },
        { "a worn battery", "resistance-growth: 1.3", "resistance-growth: 20" },
        { "things in a ring", "cage: {up: 50 mm}", "cage: {on: top-handle}" },
        { "no air", "ambient: -8 °C\n", "" },
        { "a wind of 0", "wind: 9 m/s", "wind: 0 m/s" },
        { "a slope on which it tips", "slope: 3 °", "slope: 45 °" },
        { "a device that nobody feeds", "monitor: {fed-by: plate}", "monitor: {fed-by: nothing}" },
        { "takes of no length", "length: 1 h, states: {camera: record, monitor: record, transmitter: record}",
            "length: 1 h, states: {camera: record}, takes: {take: 0 s, reset: 1 min}" },
        { "pad and hands at one place", "stance: shoulder", "stance: shoulder\n    on-shoulder: {pad: 1 mm, hands: 1 mm}" },
        { "all off", "essential: yes}", "essential: yes, power: {record: 0 W, standby: 0 W}}" },
    };

    [Theory]
    [MemberData(nameof(Odd))]
    public async Task A_file_is_refused_everywhere_or_nowhere(string what, string from, string to)
    {
        Assert.Contains(from, Harbour, StringComparison.Ordinal);
        using var folder = new TemporaryFolder();
        await IsOneCheck(what, folder.Write("rig.yaml", Harbour.Replace(from, to, StringComparison.Ordinal)));
    }

    [Fact]
    public async Task A_rig_of_which_nothing_has_a_mass_is_answered_and_its_balance_not_known()
    {
        using var folder = new TemporaryFolder();
        var text = SmallScenario.Text().Replace("mass: 1000 g", "note: not weighed", StringComparison.Ordinal);
        var file = folder.Write("rig.yaml", text);
        await IsOneCheck("no mass", file);
        var (code, output, _) = await ConsoleRun.RunAsync("balance", file);
        Assert.Equal(0, code);
        Assert.Contains("Nothing of the rig has a mass", output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Days_that_overlap_only_in_the_order_that_is_asked_for_are_told_by_name()
    {
        using var folder = new TemporaryFolder();
        var text = SmallScenario.Text(day: "starts: \"06:00\"") + "\n" + """
              night: {starts: "23:00", blocks: {all: {length: 10 h, others: record}}}
            """;
        var file = folder.Write("rig.yaml", text);
        await IsOneCheck("two days", file);
        foreach (var command in Commands.Where(command => command != "travel"))
        {
            var (code, _, error) = await ConsoleRun.RunAsync(command, file, "--days", "night", "day");
            Assert.Equal(2, code);
            Assert.StartsWith("error: days.day: The day begins before \"night\" is over", error.ReplaceLineEndings("\n")
                .Split('\n')[0], StringComparison.Ordinal);
            Assert.Contains("Accepted: ", error, StringComparison.Ordinal);
        }
    }

    private static async Task IsOneCheck(string what, string file)
    {
        var (checkedCode, found, _) = await ConsoleRun.RunAsync("check", file);
        var errors = found.Split(Environment.NewLine)
            .Where(line => line.Contains(": error: ", StringComparison.Ordinal)).ToList();
        Assert.Equal(checkedCode == 0 ? 0 : 2, checkedCode);
        Assert.Equal(checkedCode == 2, errors.Count > 0);
        foreach (var command in Commands)
        {
            string[] words = command == "run" ? [command, file, "--quick"] : [command, file];
            var (code, output, error) = await ConsoleRun.RunAsync(words);
            Assert.True(code == checkedCode, $"{what}: check ends with {checkedCode}, {command} with {code}: {error}");
            if (checkedCode == 0)
                continue;
            Assert.Empty(output);
            Assert.Equal(errors, error.Split(Environment.NewLine)
                .Where(line => line.Contains(": error: ", StringComparison.Ordinal)));
        }
    }
}
