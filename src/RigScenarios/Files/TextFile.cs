using System.Text;
using RigScenarios.Files.Formats;
using RigScenarios.Scenarios;

namespace RigScenarios.Files;

/// <summary>Reads and writes whole text files with care: bounded, strictly UTF-8, never half written.</summary>
public static class TextFile
{
    /// <summary>The largest file that is read. A scenario of a long shoot has some tens of kilobytes.</summary>
    internal const int LargestBytes = 2 * 1024 * 1024;

    /// <summary>What is said of a name without a letter.</summary>
    internal const string NoName = "No file is named.";

    /// <summary>What some editors put before the first character of a file.</summary>
    internal const char ByteOrderMark = '\uFEFF';

    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>
    /// Writes a file so that a reader sees either the old one or the whole new one: to a temporary name beside it, then moved.
    /// A link is followed, and stays one. What killed runs left in that folder is removed.
    /// </summary>
    /// <exception cref="IOException">The file can't be written, or something stands there that is no plain file.</exception>
    /// <exception cref="UnauthorizedAccessException">Nothing can be written into that folder.</exception>
    public static void Write(string path, string text) => WholeFile.WriteAsync(path, stream =>
    {
        stream.Write(Strict.GetBytes(text));
        return Task.CompletedTask;
    }).GetAwaiter().GetResult();

    /// <summary>A file's whole text; null, with every problem, if it can't be had.</summary>
    /// <param name="path">The file, in UTF-8.</param>
    /// <param name="mostBytes">The most that is read; a larger file is refused.</param>
    public static (string? Text, IReadOnlyList<Scenarios.Diagnostic> Problems) TryRead(string path,
        int mostBytes = LargestBytes)
    {
        ArgumentNullException.ThrowIfNull(path);
        var log = new ReadLog(path);
        return (Read(path, log, mostBytes), log.Problems);
    }

    /// <summary>The file's text; null if it can't be had. Every problem goes to the log.</summary>
    internal static string? Read(string path, ReadLog log, int mostBytes = LargestBytes)
    {
        try
        {
            using var stream = Open(path, log);
            if (stream is null)
                return null;
            // As much as the file says it has, and a byte more to see whether it grew; some files of the system say nothing.
            var size = stream.Length > 0 ? Math.Min(stream.Length, mostBytes) : mostBytes;
            var bytes = new byte[size + 1];
            var length = stream.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false);
            if (length > mostBytes)
            {
                log.Error(TextPlace.None, "", $"The file is larger than {mostBytes / 1024 / 1024} MB, the most that is read.");
                return null;
            }
            return Decode(bytes.AsSpan(0, length), log);
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException or NotSupportedException)
        {
            log.Error(TextPlace.None, "", CantBeRead(exception));
            return null;
        }
    }

    /// <summary>Opens a plain file for reading; null if it can't be opened. Every problem goes to the log.</summary>
    internal static FileStream? Open(string path, ReadLog log)
    {
        if (string.IsNullOrWhiteSpace(path))
        {
            log.Error(TextPlace.None, "", NoName, "a file, such as \"my-rig.yaml\"");
            return null;
        }
        try
        {
            if (Directory.Exists(path))
            {
                log.Error(TextPlace.None, "", "This is a folder; the name of a file is needed.");
                return null;
            }
            if (Path.Exists(path) && !PlainFile.IsAt(path))
            {
                log.Error(TextPlace.None, "", PlainFile.NoPlainFile);
                return null;
            }
            return new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.Read);
        }
        catch (Exception exception) when (exception is FileNotFoundException or DirectoryNotFoundException)
        {
            var folder = Path.GetDirectoryName(Path.GetFullPath(path))!;
            var nearest = Directory.Exists(folder)
                ? Scenarios.NearestName.To(Path.GetFileName(path),
                    Directory.EnumerateFiles(folder).Take(1000).Select(name => Path.GetFileName(name)))
                : null;
            log.Error(TextPlace.None, "", "There is no such file.", null, nearest);
            return null;
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException or ArgumentException
            or NotSupportedException)
        {
            log.Error(TextPlace.None, "", CantBeRead(exception));
            return null;
        }
    }

    /// <summary>What is said of a file that the system does not give.</summary>
    internal static string CantBeRead(Exception exception) => $"The file can't be read: {exception.Message}";

    /// <summary>Text that came from elsewhere, held to the bounds of a file; null if it is beyond them. Every problem goes to the
    /// log.</summary>
    internal static string? Take(string text, ReadLog log)
    {
        if (text.Length > LargestBytes || Encoding.UTF8.GetByteCount(text) > LargestBytes)
        {
            log.Error(TextPlace.None, "", $"The text is larger than {LargestBytes / 1024 / 1024} MB, the most that is read.");
            return null;
        }
        if (text.IndexOf('\0', StringComparison.Ordinal) is var wrong and >= 0)
        {
            var before = text.AsSpan(0, wrong);
            log.Error(new TextPlace(before.Count('\n') + 1, wrong - before.LastIndexOf('\n')), "",
                "A character that no text has stands here (of the code 0).", "plain text");
            return null;
        }
        return text.StartsWith(ByteOrderMark) ? text[1..] : text;
    }

    private static string? Decode(ReadOnlySpan<byte> bytes, ReadLog log)
    {
        if (bytes.StartsWith((ReadOnlySpan<byte>)[0xEF, 0xBB, 0xBF]))
            bytes = bytes[3..];
        var wrong = bytes.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xFE]) || bytes.StartsWith((ReadOnlySpan<byte>)[0xFE, 0xFF])
            ? 0 : bytes.IndexOf((byte)0);
        if (wrong < 0)
        {
            try
            {
                return Strict.GetString(bytes);
            }
            catch (DecoderFallbackException exception)
            {
                wrong = exception.Index;
            }
        }
        var before = bytes[..Math.Max(wrong, 0)];
        var at = new TextPlace(before.Count((byte)'\n') + 1, wrong - before.LastIndexOf((byte)'\n'));
        log.Error(at, "", "The file is not text in UTF-8.", "UTF-8; in the editor choose \"save with encoding UTF-8\"");
        return null;
    }
}
