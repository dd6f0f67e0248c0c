using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Visits;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.Visits;

public sealed class DeleteModel(VisitStore store) : RecordPage<VisitRow>
{
    protected override VisitRow? Find(long id) => store.Get(User.AtShop(), id);

    public IActionResult OnPost() => this.After(store.Delete(User.AtShop(), Id), racket => this.GoOn($"/shop/rackets/{racket}", $"Ticket {Saved.Ticket} is deleted."));
}
