using System.Text;

namespace RigScenarios.Notebooks.Engine;

/// <summary>
/// While at least one capture is open, what a cell prints goes to its output; what anyone else prints goes to the console as
/// before.
/// </summary>
internal sealed class ConsoleCapture : IDisposable
{
    // The console belongs to the process, and so does what stands in for it.
    private static readonly Lock Door = new();
    private static int open;
    private static TextWriter? output;
    private static TextWriter? errors;

    private bool isDisposed;

    private ConsoleCapture()
    {
    }

    public static ConsoleCapture Begin()
    {
        lock (Door)
        {
            if (open++ == 0)
            {
                (output, errors) = (Console.Out, Console.Error);
                Console.SetOut(new CellWriter(output));
                Console.SetError(new CellWriter(errors));
            }
        }

        return new ConsoleCapture();
    }

    public void Dispose()
    {
        lock (Door)
        {
            if (isDisposed)
                return;
            isDisposed = true;
            if (--open > 0)
                return;
            Console.SetOut(output!);
            Console.SetError(errors!);
        }
    }

    private sealed class CellWriter(TextWriter console) : TextWriter
    {
        public override Encoding Encoding => console.Encoding;

        public override void Write(char value) => Write(value.ToString());

        public override void Write(char[] buffer, int index, int count) => Write(new string(buffer, index, count));

        public override void Write(string? value)
        {
            if (CellContext.Current is { } cell)
                cell.Print((value ?? "").ReplaceLineEndings("\n"));
            else
                console.Write(value);
        }

        public override void WriteLine() => Write(NewLine);

        public override void WriteLine(string? value) => Write(value + NewLine);

        public override void Flush() => console.Flush();
    }
}
