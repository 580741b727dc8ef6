using System.Net;
using RigScenarios.Page.Tests.Servers;

namespace RigScenarios.Page.Tests.Attacks;

/// <summary>No file is ever half written: not on a full disk, and not where the program is killed while it writes.</summary>
public sealed class HalfWrittenTests : IDisposable
{
    private const string First = "rigscenarios: scenario 1\ntitle: First\n";

    private readonly string rigs = Directory.CreateTempSubdirectory("rigscenarios-disk-").FullName;

    public void Dispose() => Directory.Delete(rigs, recursive: true);

    // A bound of 8 kB on every file that the program writes: as on a disk with no more room, writing begins and then fails.
    [Fact]
    public async Task On_a_full_disk_the_file_stays_as_it_was_and_that_is_told()
    {
        var file = Path.Combine(rigs, "mine.yaml");
        await File.WriteAllTextAsync(file, First, TestContext.Current.CancellationToken);
        using var program = await OwnProgram.OpenAsync(rigs, "trap '' XFSZ; ulimit -f 8");
        foreach (var name in (string[])["mine.yaml", "new.yaml"])
        {
            using var refused = await program.SaveAsync(name, First + $"# {new string('x', 100_000)}\n",
                TestContext.Current.CancellationToken);
            var told = await refused.TextAsync();
            Assert.Equal(HttpStatusCode.InternalServerError, refused.StatusCode);
            Assert.Contains("Is the disk full", told, StringComparison.Ordinal);
            HeaderTests.NothingOfTheInside(told);
        }
        Assert.Equal(First, await File.ReadAllTextAsync(file, TestContext.Current.CancellationToken));
        Assert.Equal(["mine.yaml"], Directory.EnumerateFileSystemEntries(rigs).Select(Path.GetFileName));
        // What is small enough is saved as before.
        using var saved = await program.SaveAsync("mine.yaml", First + "# more\n", TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.OK, saved.StatusCode);
        Assert.Equal(First + "# more\n", await File.ReadAllTextAsync(file, TestContext.Current.CancellationToken));
    }

    [Fact]
    public async Task A_program_that_is_killed_while_it_saves_leaves_the_old_text_or_the_new_one()
    {
        var file = Path.Combine(rigs, "mine.yaml");
        await File.WriteAllTextAsync(file, First, TestContext.Current.CancellationToken);
        HashSet<string> whole = [First];
        var (inTheMiddle, read) = (new LookedAt(), new LookedAt());
        for (var round = 0; round < 3; round++)
        {
            using var program = await OwnProgram.OpenAsync(rigs);
            using var stop = CancellationTokenSource.CreateLinkedTokenSource(TestContext.Current.CancellationToken);
            // Again and again, long enough that the file is being written most of the time.
            string[] texts = [.. Enumerable.Range(0, 2)
                .Select(i => $"{First}# {new string((char)('a' + i + (2 * round)), 300_000)}\n")];
            whole.UnionWith(texts);
            var answered = 0;
            var saving = Task.Run(async () =>
            {
                try
                {
                    for (var i = 0; !stop.IsCancellationRequested; i++)
                    {
                        (await program.SaveAsync("mine.yaml", texts[i % 2], stop.Token)).Dispose();
                        answered++;
                    }
                }
                catch (Exception error) when (error is HttpRequestException or OperationCanceledException)
                {
                    inTheMiddle.One();
                }
            }, CancellationToken.None);
            // Whoever reads meanwhile never sees a part either: the kill may come at any of these moments.
            while (answered < 8 + round && !saving.IsCompleted)
            {
                AssertWhole(await ReadAsync(file));
                read.One();
                await Task.Yield();
            }
            await program.KillAsync();
            await stop.CancelAsync();
            await saving;
            Assert.True(answered >= 8, $"Only {answered} texts were saved before the end.");
            AssertWhole(await ReadAsync(file));
        }
        inTheMiddle.AtLeast(2);
        read.AtLeast(50);

        void AssertWhole(string text) => Assert.True(whole.Contains(text),
            $"{text.Length} characters, begins with {text[..Math.Min(60, text.Length)]}");
    }

    // As a program that takes no heed of others.
    private static async Task<string> ReadAsync(string file)
    {
        await using var stream = new FileStream(file, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
        using var reader = new StreamReader(stream);
        return await reader.ReadToEndAsync(TestContext.Current.CancellationToken);
    }
}
