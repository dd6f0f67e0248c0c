using System.Security.Cryptography;
using System.Text;
using TagPage.Web.Data;

namespace TagPage.Web.Limits;

/// <summary>
/// Stands for a finder's network in the records: the same mark for the same source, so that presses can be counted
/// across restarts, and no way back to the address without this server's key.
/// </summary>
public sealed class FinderMark(DataFolder folder)
{
    private readonly byte[] _key = ServerKey.ReadOrMake(Path.Combine(folder.Keys, "finders.key"));

    public string Of(HttpContext context) =>
        Convert.ToHexStringLower(HMACSHA256.HashData(_key, Encoding.UTF8.GetBytes(Source.Of(context))).AsSpan(0, 16));
}
