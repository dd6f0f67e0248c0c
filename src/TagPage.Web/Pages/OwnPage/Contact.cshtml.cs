using Microsoft.AspNetCore.Mvc;
using TagPage.Records.OwnPages;
using TagPage.Records.Shop;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.OwnPage;

/// <summary>Changes how the client is reached; a code comes first.</summary>
public sealed class ContactModel(ClientOnFileStore clients, OwnPageCodeStore codes, OwnPageDetailsStore store, ShopStore shops) : OwnPageModel(clients)
{
    private const int LongestName = 80;

    public sealed record Fields
    {
        public int Version { get; init; }
        public string? Name { get; init; }
        public string? Phone { get; init; }
        public string? Mail { get; init; }
        public string? SecondName { get; init; }
        public string? SecondPhone { get; init; }
        public string? SecondMail { get; init; }
    }

    [BindProperty]
    public Fields Input { get; set; } = new();

    public IActionResult OnGet()
    {
        if (AskForCode(codes) is { } code)
            return code;
        var row = store.Get(Me.Id);
        Input = new Fields { Version = row.Version, Name = row.Name, Phone = Shown(row.Phone), Mail = row.Mail, SecondName = row.SecondName, SecondPhone = Shown(row.SecondPhone), SecondMail = row.SecondMail };
        return Page();
    }

    public IActionResult OnPost()
    {
        if (Input.Name is null)
            ModelState.AddModelError("Input.Name", Say.Details.NameMissing);
        Limit("Input.Name", Input.Name, LongestName);
        Limit("Input.SecondName", Input.SecondName, LongestName);
        var (phone, secondPhone) = (Phone("Input.Phone", Input.Phone), Phone("Input.SecondPhone", Input.SecondPhone));
        Mail("Input.Mail", Input.Mail);
        Mail("Input.SecondMail", Input.SecondMail);
        if (!ModelState.IsValid)
            return Page();
        var to = new ContactEntry { Version = Input.Version, Name = Input.Name!, Phone = phone, Mail = Input.Mail, SecondName = Input.SecondName ?? "", SecondPhone = secondPhone, SecondMail = Input.SecondMail };
        return After(store.ChangeContact(Myself, to), _ => GoOn("/my/details", Say.Details.Saved), store.Get(Me.Id).Version);
    }

    private static string? Shown(string? phone) => phone is null ? null : Phones.Shown(phone);

    private string? Phone(string field, string? typed)
    {
        var read = Phones.Read(typed, shops.Get().Country);
        if (typed is not null && read is null)
            ModelState.AddModelError(field, Say.Details.PhoneUnread);
        return read;
    }

    private void Mail(string field, string? typed)
    {
        if (typed is not null && !MailAddressAttribute.Fits(typed))
            ModelState.AddModelError(field, Say.Details.MailUnread);
    }
}
