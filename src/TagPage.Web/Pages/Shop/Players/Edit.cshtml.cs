using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Players;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.Players;

public sealed class EditModel(PlayerStore store) : RecordPage<PlayerStore.Row>
{
    [BindProperty]
    public PlayerInput Input { get; set; } = new();

    protected override PlayerStore.Row? Find(long id) => store.Get(id);

    public void OnGet() => Input = new PlayerInput
    {
        Version = Saved.Version,
        Name = Saved.Name,
        Junior = Saved.Junior,
        TimesAWeek = Saved.TimesAWeek,
        HoursATime = Saved.HoursATime,
        Hitting = Saved.Hitting,
        Rule = Saved.Rule,
        EveryWeeks = Saved.EveryWeeks,
        Note = Saved.Note,
    };

    public IActionResult OnPost() => ModelState.IsValid
        ? this.After(store.Change(User.AtShop(), Id, Input.ToEntry()),
            _ => this.GoOn($"/shop/clients/{Saved.ClientId}#player-{Id}", $"{Input.Name} is saved."), Saved.Version)
        : Page();
}
