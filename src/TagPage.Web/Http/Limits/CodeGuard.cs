using TagPage.Core.Tags;
using TagPage.Records.Audit;

namespace TagPage.Web.Http.Limits;

/// <summary>Stands before every page behind a tag's code. The shop itself always gets in and is never counted.</summary>
public sealed class CodeGuard(WrongCodes wrong, SecurityLog log, TimeProvider clock)
{
    /// <summary>One line a minute says as much as one for each refusal, and does not fill the disk.</summary>
    private readonly SlidingLimit _lines = new(clock, 1, TimeSpan.FromMinutes(1));

    /// <summary>Reads the code of a request's address and asks the limits, once a request: the cache and the page ask alike.</summary>
    /// <param name="visitor">Who asks.</param>
    /// <param name="typed">The code as the address has it, in any case and spelling.</param>
    public CodeAsked Ask(HttpContext visitor, string typed)
    {
        if (visitor.Items[typeof(CodeAsked)] is CodeAsked before && before.Typed == typed)
            return before;
        var reading = TagCode.Read(typed);
        var asked = new CodeAsked(typed, reading, reading.Code is { } code ? Wait(visitor, code) : TimeSpan.Zero);
        visitor.Items[typeof(CodeAsked)] = asked;
        return asked;
    }

    private TimeSpan Wait(HttpContext visitor, TagCode code)
    {
        if (IsShop(visitor) || wrong.Wait(Source.Of(visitor), code) is not { Ticks: > 0 } wait)
            return TimeSpan.Zero;
        if (_lines.TryTake(Source.Of(visitor)))
            log.Log(visitor, AuditEvent.TagCodesRefused);
        return wait;
    }

    public void Wrong(HttpContext visitor)
    {
        if (!IsShop(visitor))
            wrong.Count(Source.Of(visitor));
    }

    public void Right(HttpContext visitor, TagCode code)
    {
        if (!IsShop(visitor))
            wrong.Opened(Source.Of(visitor), code);
    }

    private static bool IsShop(HttpContext visitor) => visitor.User.Identity is { IsAuthenticated: true };
}

/// <param name="Typed">As it stood in the address.</param>
/// <param name="Reading">What was read from it.</param>
/// <param name="Wait">How long the visitor has to wait for it; zero where it may be looked up.</param>
public sealed record CodeAsked(string Typed, TagCodeReading Reading, TimeSpan Wait);
