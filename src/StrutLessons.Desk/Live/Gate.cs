using System.Buffers.Text;
using System.Security.Cryptography;
using System.Text;

namespace StrutLessons.Desk.Live;

/// <summary>
/// Who may come in. A key is good for one visit and opens a session; a browser shows its session with every request. Only
/// fingerprints are kept.
/// </summary>
internal sealed class Gate
{
    private const int Bytes = 32;
    private const int KeysKept = 8;

    private readonly Lock _one = new();
    private readonly List<byte[]> _keys = [];
    private readonly List<byte[]> _sessions = [];

    /// <summary>A key that nobody has used. Of those not used the oldest are forgotten.</summary>
    internal string NewKey()
    {
        var key = Random();
        lock (_one)
        {
            _keys.Add(Print(key));
            if (_keys.Count > KeysKept)
            {
                _keys.RemoveAt(0);
            }
        }
        return key;
    }

    /// <summary>Uses up a key. The session it opens; null if the key is unknown or has been used.</summary>
    internal string? Open(string key)
    {
        lock (_one)
        {
            var at = Find(_keys, key);
            if (at < 0)
            {
                return null;
            }
            _keys.RemoveAt(at);
            var session = Random();
            _sessions.Add(Print(session));
            return session;
        }
    }

    /// <summary>True if a key has opened this session.</summary>
    internal bool Knows(string? session)
    {
        lock (_one)
        {
            return session is not null && Find(_sessions, session) >= 0;
        }
    }

    /// <summary>Compares every entry in full, so that the time taken tells nothing.</summary>
    private static int Find(List<byte[]> prints, string word)
    {
        var print = Print(word);
        var found = -1;
        for (var i = 0; i < prints.Count; i++)
        {
            found = CryptographicOperations.FixedTimeEquals(prints[i], print) ? i : found;
        }
        return found;
    }

    private static string Random() => Base64Url.EncodeToString(RandomNumberGenerator.GetBytes(Bytes));

    private static byte[] Print(string word) => SHA256.HashData(Encoding.UTF8.GetBytes(word));
}
