using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Accounts;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;
using TagPage.Web.Http.SignIn.Passwords;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Account;

public sealed class SetUpModel(SetUpStore store, Owners owners, SignIns signIns) : PageModel
{
    [BindProperty]
    public SetUpInput Input { get; set; } = new();

    /// <summary>False where the link is used, too old or wrong; the page does not tell which.</summary>
    public bool IsOpen { get; private set; }

    public void OnGet(string token)
    {
        IsOpen = store.IsOpen(token);
        Input = new SetUpInput
        {
            Country = Countries.OfThisMachine,
            TimeZone = TimeZones.OfThisMachine,
            Currency = Currencies.OfCountry(Countries.OfThisMachine),
        };
    }

    public async Task<IActionResult> OnPostAsync(string token)
    {
        IsOpen = store.IsOpen(token);
        if (!IsOpen || !ModelState.IsValid || !await PasswordWillDo())
            return Page();
        var owner = owners.Make(Input.Name!, Input.Password!);
        if (store.SetUp(token, Input.ToEntry(), owner) is Outcome.Absent)
        {
            IsOpen = false;
            return Page();
        }
        await signIns.Begin(HttpContext, owner, SignInWay.Link);
        this.Say($"{Input.ShopName} is set up. First add a string that you keep on the reel, then your first client.");
        return Redirect("/shop");
    }

    private async Task<bool> PasswordWillDo()
    {
        var wrong = await owners.WrongWith(Input.Name!, Input.Password!);
        if (wrong.Count == 0 && Guessable.IsEasy(Input.Password!, Input.ShopName!))
            wrong = [Guessable.Sentence];
        foreach (var sentence in wrong)
            ModelState.AddModelError("Input.Password", sentence);
        return wrong.Count == 0;
    }
}
