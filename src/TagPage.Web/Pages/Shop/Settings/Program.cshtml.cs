using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Outbox;
using TagPage.Records.Reminders;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Web.Http;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;
using TagPage.Web.Mail;

namespace TagPage.Web.Pages.Shop.Settings;

/// <summary>What was set where the program was started: to be read here and changed there. A password is never shown.</summary>
public sealed class ProgramModel(DataFolder folder, MailSettings mail, SettingSource sources, ShopStore shops, TestMailStore store) : PageModel
{
    public sealed record Fields
    {
        public string? FormKey { get; init; }
    }

    [BindProperty]
    public Fields Input { get; set; } = new();

    public string? ShopMail => shops.Get().Mail;

    public bool HasServer => mail.HasServer;

    /// <summary>Each with its value and where that comes from.</summary>
    public IReadOnlyList<(string Name, string Value, string From)> Settings =>
    [
        Setting("Data folder", folder.Root, "DataFolder"),
        Setting("Mail server", mail.HasServer ? mail.Host! : "none: emails become files in the data folder, under mail/", "Smtp:Host"),
        .. !mail.HasServer ? [] : new[]
        {
            Setting("Mail server’s port", $"{mail.Port}", "Smtp:Port"),
            Setting("Encryption", $"{mail.Tls}", "Smtp:Tls"),
            Setting("Mailbox", mail.User ?? "none", "Smtp:User"),
            Setting("Password", string.IsNullOrEmpty(mail.Password) ? "none" : "set, and not shown", "Smtp:Password"),
        },
    ];

    public void OnGet() => Input = new Fields { FormKey = FormKey.New() };

    /// <summary>Sends an email to the shop itself.</summary>
    public IActionResult OnPost() => this.After(store.Send(User.AtShop(), Input.FormKey ?? "", "Test email from TagPage", TestMail), _ => this.GoOn("/shop/settings/program",
        HasServer ? $"A test email to {ShopMail} is on its way. If it does not arrive, look under Reminders to see whether it went out, and if not, why."
            : $"A test email to {ShopMail} is now a file in {folder.Mail}."));

    private static MailText TestMail => "This is the test email that you asked for under Settings. If you read this, email works.";

    private (string, string, string) Setting(string name, string value, string setting) => (name, value, sources.Of("TagPage:" + setting) ?? "not set");
}
