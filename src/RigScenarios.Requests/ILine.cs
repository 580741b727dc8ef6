namespace RigScenarios.Requests;

/// <summary>A page's end of a line, on which it asks for runs.</summary>
public interface ILine
{
    /// <summary>Takes a message of the page: a run of a queue, or that its run stops. It returns at once; what is found comes
    /// over the line. What can't be read is told there, too.</summary>
    /// <param name="message">The message as JSON.</param>
    void Take(ReadOnlyMemory<byte> message);

    /// <summary>Ends the line: its runs are stopped, and nothing more is sent. May be called again.</summary>
    void Close();
}
