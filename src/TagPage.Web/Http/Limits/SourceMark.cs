using System.Security.Cryptography;

namespace TagPage.Web.Http.Limits;

/// <summary>
/// Names a source in the log without telling its address: the same mark for the same source until the program ends, then
/// nobody can work it out again.
/// </summary>
public sealed class SourceMark
{
    private readonly byte[] _key = RandomNumberGenerator.GetBytes(32);

    public string Of(HttpContext context) => Source.Mark(context, _key, bytes: 4);
}
