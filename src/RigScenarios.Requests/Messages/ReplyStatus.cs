namespace RigScenarios.Requests.Messages;

/// <summary>How a request went, in the numbers that HTTP has for it (R. Fielding, M. Nottingham, J. Reschke, "HTTP Semantics",
/// RFC 9110, 2022, section 15).</summary>
internal static class ReplyStatus
{
    public const int Ok = 200;

    /// <summary>What was asked can't be used; whoever asks can put it right.</summary>
    public const int BadRequest = 400;

    /// <summary>There is no such thing.</summary>
    public const int NotFound = 404;

    /// <summary>Something else stands there by now.</summary>
    public const int Conflict = 409;

    /// <summary>It is more than is taken at once.</summary>
    public const int TooLarge = 413;

    /// <summary>A fault of the program's or of the machine's.</summary>
    public const int Fault = 500;

    /// <summary>The program can't do this here, or not now.</summary>
    public const int NotHere = 501;

    /// <summary>It passed a bound of time or memory.</summary>
    public const int Bounds = 503;
}
