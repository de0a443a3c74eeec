using System.Security.Cryptography;
using System.Text;

namespace StrutLessons.Kernel.Jupyter;

/// <summary>
/// Signs messages with HMAC-SHA256 over header, parent header, metadata and content, and tells whether an arriving message was
/// signed with the same key and is no repetition of an earlier one. Not safe for use from several threads.
/// </summary>
internal sealed class MessageSigner(string key)
{
    /// <summary>Signatures remembered; a session sends fewer in a day.</summary>
    private const int Remembered = 1 << 16;

    private readonly byte[] _key = Encoding.UTF8.GetBytes(key);
    private readonly HashSet<string> _seen = [];
    private readonly Queue<string> _order = new();

    /// <summary>The signature as the protocol writes it: lower-case hexadecimal.</summary>
    internal string Sign(ReadOnlySpan<byte[]> parts)
    {
        using var hash = IncrementalHash.CreateHMAC(HashAlgorithmName.SHA256, _key);
        foreach (var part in parts)
        {
            hash.AppendData(part);
        }
        return Convert.ToHexStringLower(hash.GetHashAndReset());
    }

    /// <summary>True if the signature is right and has not come before.</summary>
    internal bool Accepts(byte[] signature, ReadOnlySpan<byte[]> parts)
    {
        var right = Sign(parts);
        if (!CryptographicOperations.FixedTimeEquals(Encoding.ASCII.GetBytes(right), signature) || !_seen.Add(right))
        {
            return false;
        }
        _order.Enqueue(right);
        if (_order.Count > Remembered)
        {
            _seen.Remove(_order.Dequeue());
        }
        return true;
    }
}
