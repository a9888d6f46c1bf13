using System.Security.Cryptography;

namespace FixPlanner.Files.Writing;

/// <summary>Tells states of a file apart.</summary>
internal static class Fingerprint
{
    /// <summary>Of a file that is not there.</summary>
    public const string OfNothing = "none";

    private const int Length = 16;

    public static string Of(byte[] content) => Convert.ToHexStringLower(SHA256.HashData(content).AsSpan(0, Length));
}
