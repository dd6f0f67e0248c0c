using System.Globalization;
using Microsoft.AspNetCore.Identity;
using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Accounts;
using TagPage.Records.Audit;
using TagPage.Records.Shop;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.Limits;
using TagPage.Web.Http.SignIn;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Account;

/// <summary>By what the owner signs in, and which browsers are signed in.</summary>
public sealed class SecurityModel(UserManager<Records.Accounts.Account> users, SecondFactor second, PasskeyStore passkeys, PinStore pins, SessionStore sessions, SecurityLog log, ShopClock clock) : AccountPage(users)
{
    private const string Here = "/account/security";

    public IReadOnlyList<SessionRow> Sessions { get; private set; } = [];

    public bool HasSecondStep { get; private set; }

    public int CodesLeft { get; private set; }

    public int Passkeys { get; private set; }

    public bool HasPin => pins.Has(Mine.Id);

    public async Task OnGetAsync()
    {
        (HasSecondStep, CodesLeft) = (Mine.TwoFactor, await second.CodesLeft(Mine));
        (Sessions, Passkeys) = (sessions.Of(Mine.Id), passkeys.Of(Mine.Id).Count);
    }

    public IActionResult OnPostEnd(string? session)
    {
        if (!sessions.End(Mine.Id, session ?? ""))
            return NotFound();
        log.Note(HttpContext, AuditEvent.BrowserSignedOut, Mine.Id);
        return this.GoOn(Here, "That browser is signed out.");
    }

    public IActionResult OnPostOthers()
    {
        var ended = sessions.EndOthers(Mine.Id, User.SessionId());
        log.Note(HttpContext, AuditEvent.OthersSignedOut, Mine.Id);
        return this.GoOn(Here, ended switch
        {
            0 => "No other browser was signed in.",
            1 => "The other browser is signed out.",
            _ => $"{ended} other browsers are signed out.",
        });
    }

    public string At(DateTimeOffset instant)
    {
        var there = clock.OnTheWall(instant);
        return $"{Formats.Day(DateOnly.FromDateTime(there.DateTime))}, {there.ToString("HH:mm", CultureInfo.InvariantCulture)}";
    }
}
