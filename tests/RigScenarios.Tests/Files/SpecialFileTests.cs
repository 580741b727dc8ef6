using System.Net.Sockets;
using RigScenarios.Files;

namespace RigScenarios.Tests.Files;

/// <summary>Pipes, devices, sockets and links in the place of files: reading one might never end, and replacing one takes it from
/// whoever uses it. Opening a pipe would hang, so each of these tests ends only if nobody does.</summary>
public class SpecialFileTests
{
    [Fact(Timeout = 60_000)]
    public async Task A_pipe_is_neither_read_nor_replaced()
    {
        using var folder = new TemporaryFolder();
        var pipe = SpecialFiles.Pipe(Path.Combine(folder.Path, "pipe.yaml"));
        await Task.Run(() => IsLeftAlone(pipe), TestContext.Current.CancellationToken);
    }

    [Fact(Timeout = 60_000)]
    public async Task A_pipe_behind_links_is_no_file_either()
    {
        using var folder = new TemporaryFolder();
        SpecialFiles.Pipe(Path.Combine(folder.Path, "pipe"));
        File.CreateSymbolicLink(Path.Combine(folder.Path, "one"), Path.Combine(folder.Path, "pipe"));
        File.CreateSymbolicLink(Path.Combine(folder.Path, "two.yaml"), "one");
        await Task.Run(() => IsLeftAlone(Path.Combine(folder.Path, "two.yaml")), TestContext.Current.CancellationToken);
    }

    [Fact(Timeout = 60_000)]
    public async Task A_device_is_neither_read_nor_replaced() =>
        await Task.Run(() => IsLeftAlone(SpecialFiles.Endless()), TestContext.Current.CancellationToken);

    [Fact]
    public void A_socket_is_neither_read_nor_replaced()
    {
        Assert.SkipUnless(Socket.OSSupportsUnixDomainSockets && !OperatingSystem.IsWindows(), "no sockets among files here");
        using var folder = new TemporaryFolder();
        var path = Path.Combine(folder.Path, "s.yaml");
        using var socket = new Socket(AddressFamily.Unix, SocketType.Stream, ProtocolType.Unspecified);
        socket.Bind(new UnixDomainSocketEndPoint(path));
        IsLeftAlone(path);
    }

    [Fact(Timeout = 60_000)]
    public async Task A_pipe_among_the_parts_is_an_error_of_that_file()
    {
        using var folder = new TemporaryFolder();
        SpecialFiles.Pipe(Path.Combine(folder.Path, "parts.yaml"));
        var file = folder.Write("scenario.yaml", SmallScenario.Text().Replace("title: By hand",
            "title: By hand\nparts-from: [parts.yaml]", StringComparison.Ordinal));
        var (scenario, problems) =
            await Task.Run(() => ScenarioFile.TryRead(file), TestContext.Current.CancellationToken);
        Assert.Null(scenario);
        Assert.Contains(problems, problem => problem.Problem == PlainFile.NoPlainFile
            && problem.File.EndsWith("parts.yaml", StringComparison.Ordinal));
    }

    [Fact]
    public void An_empty_file_is_a_plain_one_and_a_folder_is_none()
    {
        using var folder = new TemporaryFolder();
        Assert.True(PlainFile.IsAt(folder.Write("empty", "")));
        Assert.True(PlainFile.IsAt(folder.Write("full", "x")));
        Assert.False(PlainFile.IsAt(folder.Path));
        Assert.False(PlainFile.IsAt(Path.Combine(folder.Path, "nothing")));
    }

    [Fact]
    public void Links_in_a_circle_are_told()
    {
        using var folder = new TemporaryFolder();
        File.CreateSymbolicLink(Path.Combine(folder.Path, "a.yaml"), "b.yaml");
        File.CreateSymbolicLink(Path.Combine(folder.Path, "b.yaml"), "a.yaml");
        var (text, problems) = TextFile.TryRead(Path.Combine(folder.Path, "a.yaml"));
        Assert.Null(text);
        Assert.Single(problems);
        Assert.NotNull(TargetFile.Problem(Path.Combine(folder.Path, "a.yaml")));
    }

    [Fact]
    public void A_link_is_followed_and_stays_a_link()
    {
        using var folder = new TemporaryFolder();
        Directory.CreateDirectory(Path.Combine(folder.Path, "elsewhere"));
        var real = folder.Write(Path.Combine("elsewhere", "real.yaml"), "old");
        var link = Path.Combine(folder.Path, "link.yaml");
        File.CreateSymbolicLink(link, real);
        TextFile.Write(link, "new");
        Assert.Equal("new", File.ReadAllText(real));
        Assert.Equal(real, new FileInfo(link).LinkTarget);
        // One that leads to nothing yet makes the file at its end.
        var loose = Path.Combine(folder.Path, "loose.yaml");
        File.CreateSymbolicLink(loose, Path.Combine(folder.Path, "elsewhere", "later.yaml"));
        TextFile.Write(loose, "there");
        Assert.Equal("there", File.ReadAllText(Path.Combine(folder.Path, "elsewhere", "later.yaml")));
        Assert.NotNull(new FileInfo(loose).LinkTarget);
    }

    [Fact]
    public void A_file_of_the_inputs_is_no_target_by_whatever_way_it_is_named()
    {
        using var folder = new TemporaryFolder();
        var input = folder.Write("rig.yaml", "x");
        var through = Path.Combine(folder.Path, "through");
        Directory.CreateSymbolicLink(through, folder.Path);
        File.CreateSymbolicLink(Path.Combine(folder.Path, "cold.csv"), input);
        foreach (var name in (string[])[input, Path.Combine(folder.Path, ".", "rig.yaml"),
            Path.Combine(through, "rig.yaml"), Path.Combine(through, "through", "rig.yaml"),
            Path.Combine(folder.Path, "cold.csv"), Path.Combine(folder.Path, "none", "..", "rig.yaml")])
            Assert.Contains("would be lost", TargetFile.Problem(name, input), StringComparison.Ordinal);
        Assert.Null(TargetFile.Problem(Path.Combine(folder.Path, "new.csv"), input));
        Assert.Null(TargetFile.Problem(Path.Combine(folder.Path, "new", "folder", "new.csv"), input));
        Assert.Contains("no folder", TargetFile.Problem(Path.Combine(input, "new.csv")), StringComparison.Ordinal);
        Assert.Contains("folder", TargetFile.Problem(folder.Path), StringComparison.Ordinal);
        Assert.NotNull(TargetFile.Problem(Path.Combine(folder.Path, "a\0b")));
    }

    [Fact]
    public void A_file_that_only_its_owner_may_read_stays_so()
    {
        if (OperatingSystem.IsWindows())
        {
            Assert.Skip("files of this system have no modes");
            return;
        }
        using var folder = new TemporaryFolder();
        var path = folder.Write("rig.yaml", "old");
        File.SetUnixFileMode(path, UnixFileMode.UserRead | UnixFileMode.UserWrite);
        TextFile.Write(path, "new");
        Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(path));
    }

    [Fact]
    public void What_killed_runs_left_behind_goes_at_the_next_writing_and_nothing_else_does()
    {
        using var folder = new TemporaryFolder();
        var old = DateTime.UtcNow - TimeSpan.FromHours(2);
        string Left(string name, DateTime written)
        {
            var path = folder.Write(name, "half");
            File.SetLastWriteTimeUtc(path, written);
            return path;
        }

        var ours = Left(".rigscenarios-abcd1234.xyz.part", old);
        string[] kept =
        [
            Left(".rigscenarios-abcd1234.new.part", DateTime.UtcNow), Left("film.part", old),
            Left("rig.yaml.abcd1234.xyz.part", old),
            Left(".rigscenarios-notes.part", old), Left(".rigscenarios-abcd1234.xyz.part.bak", old),
            Left("x.rigscenarios-abcd1234.xyz.part", old),
        ];
        File.CreateSymbolicLink(Path.Combine(folder.Path, ".rigscenarios-link1234.xyz.part"), kept[1]);
        TextFile.Write(Path.Combine(folder.Path, "rig.yaml"), "whole");
        Assert.False(File.Exists(ours));
        Each.Of(kept, path => Assert.True(File.Exists(path), path));
        Assert.NotNull(new FileInfo(Path.Combine(folder.Path, ".rigscenarios-link1234.xyz.part")).LinkTarget);
        Assert.Equal("whole", File.ReadAllText(Path.Combine(folder.Path, "rig.yaml")));
    }

    private static void IsLeftAlone(string path)
    {
        var (scenario, problems) = ScenarioFile.TryRead(path);
        Assert.Null(scenario);
        Assert.Equal(PlainFile.NoPlainFile, Assert.Single(problems).Problem);
        Assert.False(ScenarioFile.IsPartsFile(path));
        Assert.False(PlainFile.IsAt(path));
        Assert.Equal(PlainFile.NoPlainFile, TargetFile.Problem(path));
        var before = File.GetAttributes(path);
        Assert.Throws<IOException>(() => TextFile.Write(path, "text"));
        Assert.Equal(before, File.GetAttributes(path));
        Assert.False(PlainFile.IsAt(path));
    }
}
