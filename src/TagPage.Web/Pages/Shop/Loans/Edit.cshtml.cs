using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Loans;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.Loans;

public sealed class EditModel(LoanRacketStore store) : RecordPage<LoanRacketRow>
{
    [BindProperty]
    public LoanRacketInput Input { get; set; } = new();

    protected override LoanRacketRow? Find(long id) => store.Get(User.AtShop(), id);

    public void OnGet() => Input = new LoanRacketInput { Version = Saved.Version, Name = Saved.Name, Note = Saved.Note, IsEnded = Saved.IsEnded };

    public IActionResult OnPost() => ModelState.IsValid
        ? this.After(store.Change(User.AtShop(), Id, Input.ToEntry()), _ => this.GoOn("/shop/loans", $"{Input.Name} is saved."), Saved.Version)
        : Page();
}
