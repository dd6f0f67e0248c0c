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
    DecoyHash decoy, AccountMails mails, SharedTablet tablets, PinStore pins, SecurityLog log)
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
        // On a shared tablet: whoever had changed over there has gone, and a full sign-in makes a locked PIN work again.
        if (context.User.IsByPin())
            sessions.End(context.User.SessionId());
        if (tablets.Of(context) is { } tablet)
            pins.Forgive(tablet.Id, account.Id);
        var browser = context.Request.Headers.UserAgent.ToString();
        var news = isNews ? mails.NewDevice(account.Name, way, browser) : ((string, MailText)?)null;
        await Keep(account, sessions.Begin(account.Id, way, browser, news), isPersistent: true);
        devices.Remember(context, account);
        log.Note(context, AuditEvent.SignedIn, account.Id, "by " + EnglishNames.Of(way));
    }

    /// <summary>Whoever was signed in on the tablet is signed out, and the one whose PIN it was is signed in to the bench. No browser becomes known by a PIN.</summary>
    public async Task ChangeOver(HttpContext context, Account account, TabletRow tablet)
    {
        if (context.User.SessionId() is { Length: > 0 } before)
            sessions.End(before);
        await Keep(account, sessions.BeginByPin(account.Id, tablet.Id, context.Request.Headers.UserAgent.ToString()), isPersistent: false);
        log.Note(context, AuditEvent.SignedIn, account.Id, "by " + EnglishNames.Of(SignInWay.Pin));
    }

    private Task Keep(Account account, string session, bool isPersistent) => cookies.SignInWithClaimsAsync(
        account, new AuthenticationProperties { IsPersistent = isPersistent },
        [new(WhoIsSignedIn.SessionClaim, session), new(WhoIsSignedIn.StampClaim, account.SecurityStamp), new(ClaimTypes.Role, account.Role)]);

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
