using System.Diagnostics;
using System.Reflection;
using System.Text.RegularExpressions;

namespace RigScenarios.Notebooks.Engine;

/// <summary>Why a cell failed: the line where it is known, and a message without a stack trace.</summary>
internal sealed partial record CellError(int? Line, string Message)
{
    /// <summary>The name under which a cell is compiled, found again in the stack of an exception.</summary>
    public static string FileName(int cell) => $"cell {cell}";

    /// <summary>All errors of the compiler at once; the line is that of the first.</summary>
    public static CellError OfCompiler(IReadOnlyList<(int Line, string Text)> errors)
    {
        var others = errors.Skip(1).Select(error => $"{Environment.NewLine}  line {error.Line}: {error.Text}");
        return new CellError(errors[0].Line, errors[0].Text + string.Concat(others));
    }

    /// <summary>What an exception says, and the line of the cell that it came through.</summary>
    public static CellError OfException(Exception exception)
    {
        var cause = exception;
        while (cause is TargetInvocationException or AggregateException { InnerExceptions.Count: 1 }
            or TypeInitializationException && cause.InnerException is { } inner)
            cause = inner;
        var line = new StackTrace(cause, fNeedFileInfo: true).GetFrames()
            .Where(frame => CellFile().IsMatch(frame.GetFileName() ?? ""))
            .Select(frame => (int?)frame.GetFileLineNumber())
            .FirstOrDefault(number => number > 0);
        return new CellError(line, cause.Message);
    }

    [GeneratedRegex(@"(^|[\\/])cell \d+$", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex CellFile();
}
