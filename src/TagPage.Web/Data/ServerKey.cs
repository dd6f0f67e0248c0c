using System.Security.Cryptography;

namespace TagPage.Web.Data;

/// <summary>A secret of this server, made once and kept in the data folder.</summary>
public static class ServerKey
{
    private const int Bytes = 32;

    public static byte[] ReadOrMake(string file)
    {
        if (!File.Exists(file))
        {
            // Written beside and moved, so that a cut in power leaves a whole key or none.
            var fresh = file + ".new";
            File.WriteAllBytes(fresh, RandomNumberGenerator.GetBytes(Bytes));
            File.Move(fresh, file);
        }
        var key = File.ReadAllBytes(file);
        return key.Length == Bytes ? key : throw new InvalidOperationException($"{file} is damaged; restore it from a copy.");
    }
}
