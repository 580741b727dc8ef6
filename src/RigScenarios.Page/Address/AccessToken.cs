using System.Security.Cryptography;
using System.Text;

namespace RigScenarios.Page.Address;

/// <summary>A secret that only who saw the server's address has. New for every server, never written anywhere.</summary>
internal sealed class AccessToken
{
    private readonly byte[] hash;

    private AccessToken(string text)
    {
        Text = text;
        hash = SHA256.HashData(Encoding.UTF8.GetBytes(text));
    }

    /// <summary>The secret, of characters that may stand in an address.</summary>
    public string Text { get; }

    public static AccessToken New() => new(Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(32)));

    /// <summary>
    /// Whether a text is the secret. Hashes are compared, in constant time, so that neither length nor content of a guess
    /// shows in how long the answer takes.
    /// </summary>
    public bool Is(string? guess) =>
        CryptographicOperations.FixedTimeEquals(SHA256.HashData(Encoding.UTF8.GetBytes(guess ?? "")), hash);
}
