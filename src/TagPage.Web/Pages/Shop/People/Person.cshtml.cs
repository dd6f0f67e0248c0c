using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Accounts;
using TagPage.Records.Audit;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.Limits;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.People;

public sealed class PersonModel(PeopleStore people, Helpers helpers, SecurityLog log) : KeyPage<PersonRow>("id")
{
    [BindProperty]
    public HelperInput Input { get; set; } = new();

    /// <summary>In the answer that makes it, and never again.</summary>
    public InvitationLink? Link { get; private set; }

    protected override PersonRow? Find(string key) => people.Get(User.AtShop(), key) is { EndedAt: null } person ? person : null;

    public void OnGet() => Input = new HelperInput { Name = Saved.Name, Mail = Saved.Mail };

    public IActionResult OnPost() => ModelState.IsValid
        ? this.After(people.Change(User.AtShop(), Saved.Id, Input.ToEntry(helpers.Normal(Input.Name!))), _ => this.GoOn("/shop/people", $"{Input.Name} is saved."))
        : Page();

    public IActionResult OnPostSignOut() => this.After(people.SignOut(User.AtShop(), Saved.Id), _ =>
    {
        log.Note(HttpContext, AuditEvent.HelperSignedOut, User.AccountId(), Saved.Name);
        return this.GoOn($"/shop/people/{Saved.Id}", $"{Saved.Name} is signed out everywhere.");
    });

    public IActionResult OnPostLink()
    {
        ModelState.Clear();
        return this.After(helpers.Renew(User.AtShop(), Saved), invitation =>
        {
            log.Note(HttpContext, AuditEvent.HelperInvited, User.AccountId(), Saved.Name);
            Link = helpers.Link(User.AtShop(), invitation, Saved.Name, Saved.Mail);
            return Page();
        });
    }
}
