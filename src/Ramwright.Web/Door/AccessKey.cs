using System.Security.Cryptography;
using System.Text;

namespace Ramwright.Web.Door;

/// <summary>What must be known to use the bench from another machine; new each time the bench is started.</summary>
internal sealed class AccessKey
{
    // no letters or digits that are taken for one another
    private const string Letters = "ABCDEFGHJKLMNPQRSTUVWXYZ23456789";
    private const int Length = 12, Group = 4;

    private readonly byte[] _hash;

    private AccessKey(string text) => (Text, _hash) = (text, Hash(text));

    /// <summary>As it is printed and typed: three groups of four.</summary>
    public string Text { get; }

    /// <summary>What a browser that has shown the key is known by.</summary>
    public string Pass { get; } = Convert.ToHexString(RandomNumberGenerator.GetBytes(32));

    /// <summary>Makes a new one, sixty bits of chance.</summary>
    public static AccessKey New()
    {
        string letters = RandomNumberGenerator.GetString(Letters, Length);
        return new AccessKey(string.Join('-', letters.Chunk(Group).Select(c => new string(c))));
    }

    /// <summary>Whether this is the key; large or small letters, with or without the strokes between.</summary>
    public bool Is(string? typed) => typed is { Length: <= 60 } && CryptographicOperations.FixedTimeEquals(Hash(typed), _hash);

    /// <summary>Whether a browser has shown the key.</summary>
    public bool Knows(string? pass) =>
        pass is { Length: 64 } && CryptographicOperations.FixedTimeEquals(Encoding.ASCII.GetBytes(pass), Encoding.ASCII.GetBytes(Pass));

    private static byte[] Hash(string text) =>
        SHA256.HashData(Encoding.UTF8.GetBytes(string.Concat(text.Where(char.IsLetterOrDigit)).ToUpperInvariant()));
}
