using System.Security.Claims;
using TagPage.Records.Audit;
using TagPage.Web.Words;

namespace TagPage.Web.Http.Limits;

/// <summary>Whatever touches the shop's safety, in one form: an event with its number in the program's log, and a line for the owner.</summary>
public sealed class SecurityLog(AuditStore audit, SourceMark marks, ILogger<SecurityLog> log)
{
    /// <param name="context">Whose browser; the log gets its mark, the owner's line nothing of it.</param>
    /// <param name="what">What happened.</param>
    /// <param name="account">The account's number.</param>
    /// <param name="detail">For both.</param>
    public void Note(HttpContext context, AuditEvent what, string account = "", string detail = "")
    {
        var by = new[] { account, context.User.FindFirstValue(ClaimTypes.NameIdentifier) ?? "" }.FirstOrDefault(IsNumber) ?? "";
        Log(context, what, account.Length > 0 ? account : by, detail);
        audit.Add(what, detail, by);
    }

    /// <summary>In the program's log alone: what stands in the owner's list already, or comes of looking at a page.</summary>
    public void Log(HttpContext context, AuditEvent what, string account = "", string detail = "") => log.Log(
        IsRefusal(what) ? LogLevel.Warning : LogLevel.Information, new EventId((int)what, what.ToString()),
        "{Event}. Account {Account}. {Detail}. Source {Source}.", AuditWords.Of(what), account, detail, marks.Of(context));

    private static bool IsNumber(string account) => Guid.TryParseExact(account, "N", out _);

    private static bool IsRefusal(AuditEvent what) => what is AuditEvent.SignInFailed or AuditEvent.SignInRefused or AuditEvent.SignInPutOff
        or AuditEvent.CodeWrong or AuditEvent.CodeRefused or AuditEvent.PasskeyRefused or AuditEvent.PinWrong or AuditEvent.FindersRefused or AuditEvent.TagCodesRefused;
}
