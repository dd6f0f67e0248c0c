using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Audit;
using TagPage.Records.Backups;
using TagPage.Records.Privacy;
using TagPage.Records.Shop;
using TagPage.Web.Http;
using TagPage.Web.Http.SignIn;
using TagPage.Web.Mail;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Shop.Privacy;

/// <summary>
/// The shop’s record of processing, to be printed. What it has to name is from the General Data Protection Regulation, (EU) 2016/679,
/// Article 30 (1): who is responsible, purposes, whose data and which, who gets it, how long, how it is protected.
/// </summary>
public sealed class IndexModel(
    PrivacyStore store, DataFacts facts, ShopStore shops, BackupSettingStore backups, BackupSeal seal, MailSettings mail, PublicAddress address, ShopClock clock) : PageModel
{
    public DateOnly Today => clock.Today;

    public ShopDetails Shop => field ??= shops.Get();

    public PrivacyStore.People People => field ??= store.Get(User.AtShop())!;

    public IReadOnlyList<Purpose> Purposes => facts.Purposes;

    public IReadOnlyList<PrivacyStore.Leaving> Leaving => field ??= store.AllLeaving(User.AtShop());

    public IReadOnlyList<PrivacyStore.Done> Done => field ??= store.AllDone(User.AtShop());

    /// <summary>Beside those that each purpose names.</summary>
    public IReadOnlyList<string> Others =>
    [
        mail.HasServer ? $"Whoever runs the mail server {mail.Host}: every email passes it." : "No mail server is set: emails become files on this machine.",
        address.IsOnlyHere ? "The pages can be reached from this machine or its network only." : $"Whoever runs the line, the name and the proxy that lead to {address.Base}.",
        Backups.Folder.Length > 0 ? $"Whoever can read {Backups.Folder}, where each night’s backup goes, {(seal.IsSet ? "sealed with a passphrase" : "unsealed")}." : "Backups stay in the data folder.",
        "Whoever you give a downloaded backup, a CSV file or a printed list.",
    ];

    public IReadOnlyList<string> Protection =>
    [
        address.IsHttps ? "The address begins with https: nobody on the way can read along." : "The address does not begin with https: pages can be read on the way. The shop’s own are open from this machine only.",
        People.AllSignInWithCodes ? "Signing in takes a password and a code of an authenticator app, or a passkey." : "Signing in takes a password or a passkey; codes of an authenticator app are not switched on.",
        "Passwords are kept as salted hashes; wrong ones are limited; every browser that is signed in can be signed out.",
        $"Backups keep the last one of each of {Backups.Days} days, {Backups.Weeks} weeks and {Backups.Months} months. Whoever is deleted is deleted from them the night after.",
        "A client’s own page opens by a private link; what could hurt takes a code that is sent by email.",
        "Who signed in, was refused, downloaded or deleted is kept for a year, under “What happened”.",
        "Whether the machine’s disk is encrypted, and who can get at the machine, is for you to know.",
    ];

    private BackupSetting Backups => field ??= backups.Get();

    public string Day(DateTimeOffset at) => Formats.Day(clock.DayOf(at));

    public static string Words(AuditEvent what) => what == AuditEvent.ClientErased ? "deleted" : "downloaded by the client";
}
