using Microsoft.AspNetCore.Mvc;
using TagPage.Core.Text;
using TagPage.Records.OwnPages;
using TagPage.Records.Shop;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.OwnPage;

/// <summary>A player who is now an adult, or plays on alone, becomes a client of their own and takes the rackets along.</summary>
public sealed class OwnModel(ClientOnFileStore clients, OwnPageCodeStore codes, OwnPageDetailsStore details, OwnClientStore store, ShopStore shops) : FreshModel(clients, codes)
{
    public sealed record Fields
    {
        public string? Mail { get; init; }
        public string? Phone { get; init; }
    }

    [BindProperty]
    public Fields Input { get; set; } = new();

    public string Player { get; private set; } = "";

    private long _player;

    protected override string Here => $"/my/own/{_player}";

    public IActionResult OnGet(long id) => !Load(id) ? NotFound() : AskForCode() ?? Page();

    public IActionResult OnPost(long id)
    {
        if (!Load(id))
            return NotFound();
        if (Input.Mail is null || !MailAddressAttribute.Fits(Input.Mail))
            ModelState.AddModelError("Input.Mail", Say.Details.MailUnread);
        var phone = Phones.Read(Input.Phone, shops.Get().Country);
        if (Input.Phone is not null && phone is null)
            ModelState.AddModelError("Input.Phone", Say.Details.PhoneUnread);
        if (!ModelState.IsValid)
            return Page();
        switch (store.Make(Me.Id, User.OwnPageSession(), id, Input.Mail!, phone))
        {
            case OwnClientStore.Answer.NotFresh:
                return SayCodeIsOver();
            case OwnClientStore.Answer.Absent:
                return NotFound();
        }
        this.Say(Say.Details.OwnDone.Fill(("player", Player)));
        return Redirect(Link("/my/details"));
    }

    private bool Load(long id)
    {
        if (details.Players(Me.Id).FirstOrDefault(p => p.Id == id && !p.IsClient) is not { } player)
            return false;
        (_player, Player) = (id, player.Name);
        return true;
    }
}
