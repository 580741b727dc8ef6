namespace RigScenarios.Requests;

/// <summary>What a request is answered. One that was refused has a status of 400 or more, and its body is JSON with the
/// <c>problems</c> in words.</summary>
/// <param name="Status">How it went, in the numbers of HTTP (RFC 9110): 200 where it was done.</param>
/// <param name="ContentType">What the body is, such as <c>application/json; charset=utf-8</c>.</param>
/// <param name="Body">The answer as bytes.</param>
/// <param name="FileName">What it is called where it is a file to keep; null where it is none.</param>
public sealed record RequestReply(int Status, string ContentType, ReadOnlyMemory<byte> Body, string? FileName);
