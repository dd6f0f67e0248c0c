using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Strings;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.Strings;

public sealed class EditModel(StringStore store) : RecordPage<StringStore.Row>
{
    [BindProperty]
    public StringInput Input { get; set; } = new();

    protected override StringStore.Row? Find(long id) => store.Get(id);

    public void OnGet() => Input = new StringInput
    {
        Version = Saved.Version,
        Name = Saved.Name,
        Material = Saved.Material,
        GaugeMm = Saved.GaugeMm,
        Offered = Saved.Offered,
        Note = Saved.Note,
    };

    public IActionResult OnPost()
    {
        if (!ModelState.IsValid)
            return Page();
        return this.After(store.Change(User.AtShop(), Id, Input.ToEntry()), _ => this.GoOn("/shop/strings", $"{Input.Name} is saved."), Saved.Version);
    }
}
