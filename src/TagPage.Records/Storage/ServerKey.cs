using System.Security.Cryptography;

namespace TagPage.Records.Storage;

/// <summary>A secret of this server, made once and kept in the data folder.</summary>
public static class ServerKey
{
    public const int Bytes = 32;

    public static byte[] ReadOrMake(string file)
    {
        if (!File.Exists(file))
            KeyFiles.Write(file, RandomNumberGenerator.GetBytes(Bytes));
        var key = File.ReadAllBytes(file);
        return key.Length == Bytes ? key : throw new InvalidOperationException($"{file} is damaged; restore it from a copy.");
    }
}
