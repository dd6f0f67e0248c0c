using Microsoft.AspNetCore.Mvc;
using TagPage.Core.Text;
using TagPage.Records.OwnPages;
using TagPage.Records.Shop;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.OwnPage;

/// <summary>A player who has come of age, or plays on alone, becomes a client of their own and takes the rackets along.</summary>
public sealed class OwnModel(ClientOnFileStore clients, OwnPageCodeStore codes, OwnPageDetailsStore details, OwnClientStore store, ShopStore shops)
    : OwnRecordPage<OwnPageDetailsStore.Player>(clients)
{
    public sealed record Fields
    {
        public string? Mail { get; init; }
        public string? Phone { get; init; }
    }

    [BindProperty]
    public Fields Input { get; set; } = new();

    protected override OwnPageDetailsStore.Player? Find(long id) => details.Players(Me.Id).FirstOrDefault(p => p.Id == id && !p.IsClient);

    public IActionResult OnGet() => AskForCode(codes) ?? Page();

    public IActionResult OnPost()
    {
        if (Input.Mail is null || !MailAddressAttribute.Fits(Input.Mail))
            ModelState.AddModelError("Input.Mail", Say.Details.MailUnread);
        var phone = Phones.Read(Input.Phone, shops.Get().Country);
        if (Input.Phone is not null && phone is null)
            ModelState.AddModelError("Input.Phone", Say.Details.PhoneUnread);
        return ModelState.IsValid
            ? After(store.Make(Myself, Id, Input.Mail!, phone), _ => GoOn("/my/details", Say.Details.OwnDone.Fill(("player", Saved.Name))))
            : Page();
    }
}
