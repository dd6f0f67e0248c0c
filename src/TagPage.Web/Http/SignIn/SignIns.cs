using System.Security.Claims;
using Microsoft.AspNetCore.Authentication;
using Microsoft.AspNetCore.Identity;
using Microsoft.Extensions.Options;
using TagPage.Records.Accounts;
using TagPage.Records.Audit;
using TagPage.Records.Outbox;
using TagPage.Web.Http.Limits;
using TagPage.Web.Words;

namespace TagPage.Web.Http.SignIn;

/// <summary>Checks passwords within the limits, and begins and ends sessions.</summary>
public sealed class SignIns(
    UserManager<Account> users, SignInManager<Account> cookies, SessionStore sessions, SignInLimits limits, PasswordGate gate, KnownDevice devices,
    DecoyHash decoy, AccountMails mails, SecurityLog log)
{
    /// <param name="Account">Null where name or password was wrong; the answer must not tell which.</param>
    /// <param name="Wait">Above zero where nothing was checked, since too much was tried before.</param>
    public readonly record struct Check(Account? Account, TimeSpan Wait)
    {
        /// <summary>Nothing was checked and no try used up, since too many others wait.</summary>
        public bool IsBusy { get; init; }
    }

    public const string Busy = "Too many passwords are being checked right now, so yours was not. Wait a few seconds, then try again.";

    public async Task<Check> TryPassword(HttpContext context, string name, string password)
    {
        var (key, source) = (users.NormalizeName(name)!, Source.Of(context));
        var device = devices.Of(context, key);
        if (limits.Wait(key, source, device) is { Ticks: > 0 } early)
            return Refuse(context, early);
        using var turn = await gate.Enter(isKnown: device is not null, context.RequestAborted);
        if (turn is null)
        {
            log.Note(context, AuditEvent.SignInPutOff);
            return new Check { IsBusy = true };
        }
        // Others who waited at the same time may have used up the tries meanwhile.
        if (limits.Take(key, source, device) is { Ticks: > 0 } late)
            return Refuse(context, late);
        var account = await users.FindByNameAsync(name);
        if (account is null)
            decoy.Verify(password);
        if (account is null || !await users.CheckPasswordAsync(account, password))
        {
            log.Note(context, AuditEvent.SignInFailed, account?.Id ?? "none of this name");
            return default;
        }
        limits.Forgive(key, source, device);
        return new Check(account, TimeSpan.Zero);
    }

    private Check Refuse(HttpContext context, TimeSpan wait)
    {
        log.Note(context, AuditEvent.SignInRefused);
        return new Check(null, wait);
    }

    /// <summary>Begins a session of its own for this browser.</summary>
    public Task Begin(HttpContext context, Account account, SignInWay way) => Begin(context, account, way, isNews: !devices.IsTrusted(context, account));

    private async Task Begin(HttpContext context, Account account, SignInWay way, bool isNews)
    {
        var browser = context.Request.Headers.UserAgent.ToString();
        var news = isNews ? mails.NewDevice(account.Name, way, browser) : ((string, MailText)?)null;
        var claims = new Claim[]
        {
            new(WhoIsSignedIn.SessionClaim, sessions.Begin(account.Id, way, browser, news)),
            new(WhoIsSignedIn.StampClaim, account.SecurityStamp),
            new(ClaimTypes.Role, account.Role),
        };
        await cookies.SignInWithClaimsAsync(account, new AuthenticationProperties { IsPersistent = true }, claims);
        devices.Remember(context, account);
        log.Note(context, AuditEvent.SignedIn, account.Id, "by " + EnglishNames.Of(way));
    }

    /// <summary>After a change of what signs in: all other browsers are signed out, and this one stays.</summary>
    public async Task Renew(HttpContext context, Account account, SignInWay way)
    {
        sessions.EndAll(account.Id);
        await Begin(context, account, way, isNews: devices.Of(context, account.NormalizedName) is null);
    }

    public async Task End(HttpContext context)
    {
        sessions.End(context.User.SessionId());
        await cookies.SignOutAsync();
        log.Note(context, AuditEvent.SignedOut, context.User.AccountId());
    }
}

/// <summary>A dummy hash, so that an unknown name takes as long to refuse as a wrong password.</summary>
public sealed class DecoyHash(IOptions<PasswordHasherOptions> options)
{
    private readonly PasswordHasher<Account> _hasher = new(options);
    private readonly string _hash = new PasswordHasher<Account>(options).HashPassword(new Account(), Guid.NewGuid().ToString());

    public void Verify(string password) => _hasher.VerifyHashedPassword(new Account(), _hash, password);
}
