using TagPage.Core.Tags;

namespace TagPage.Web.Http.Limits;

/// <summary>Stands before every page behind a tag's code. The shop itself always gets in and is never counted.</summary>
public sealed class CodeGuard(WrongCodes wrong, SourceMark marks, TimeProvider clock, ILogger<CodeGuard> log)
{
    /// <summary>One line a minute says as much as one for each refusal, and does not fill the disk.</summary>
    private readonly SlidingLimit _lines = new(clock, 1, TimeSpan.FromMinutes(1));

    /// <summary>How long the visitor has to wait for this code; zero where it may be looked up.</summary>
    public TimeSpan Wait(HttpContext visitor, TagCode code)
    {
        if (IsShop(visitor) || wrong.Wait(Source.Of(visitor), code) is not { Ticks: > 0 } wait)
            return TimeSpan.Zero;
        if (_lines.TryTake(Source.Of(visitor)))
            log.LogWarning("Refused: too many wrong tag codes. Source {Source}.", marks.Of(visitor));
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
