using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Players;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.Players;

/// <summary>A player of the client that is named in the query.</summary>
public sealed class NewModel(PlayerStore store) : RecordPage<string>
{
    [BindProperty(SupportsGet = true)]
    public long Client { get; set; }

    [BindProperty]
    public PlayerInput Input { get; set; } = new();

    protected override long Asked => Client;

    protected override string? Find(long id) => store.ClientName(id);

    public void OnGet() => Input = new PlayerInput { FormKey = FormKey.New() };

    public IActionResult OnPost() => ModelState.IsValid
        ? this.After(store.Add(User.AtShop(), Client, Input.ToEntry()), id => this.GoOn(
            $"/shop/clients/{Client}#player-{id}", $"{Input.Name} is on file.", "Add a racket", $"/shop/rackets/new?player={id}"))
        : Page();
}
