using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Accounts;
using TagPage.Records.Audit;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.Limits;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.People;

public sealed class EndModel(PeopleStore people, SecurityLog log) : KeyPage<PersonRow>("id")
{
    protected override PersonRow? Find(string key) => people.Get(User.AtShop(), key) is { EndedAt: null } person ? person : null;

    public IActionResult OnPost() => this.After(people.End(User.AtShop(), Saved.Id), _ =>
    {
        log.Note(HttpContext, AuditEvent.AccessEnded, User.AccountId(), Saved.Name);
        return this.GoOn("/shop/people", $"{Saved.Name} can no longer sign in.");
    });
}
