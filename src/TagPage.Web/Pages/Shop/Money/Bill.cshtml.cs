using Microsoft.AspNetCore.Mvc;
using TagPage.Labels.Papers;
using TagPage.Records.Money;
using TagPage.Records.Shop;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;
using TagPage.Web.Papers;

namespace TagPage.Web.Pages.Shop.Money;

public sealed class BillModel(BillStore bills, BillMailStore mails, ShopStore shops) : RecordPage<BillRow>
{
    public Sheet Sheet => BillPaper.Of(Saved);

    public bool CanSend => Saved.Mail is not null && shops.Get().Mail is not null;

    protected override BillRow? Find(long id) => bills.Get(User.AtShop(), id);

    public void OnGet()
    {
    }

    public IActionResult OnGetPdf() => File(BillPaper.Pdf(Saved), "application/pdf", BillPaper.FileName(Saved));

    public IActionResult OnPostMail() => this.After(mails.Send(User.AtShop(), Id, BillPaper.Mail(Saved), shops.Get().Mail is not null),
        _ => this.GoOn($"/shop/money/bill/{Id}", $"The bill is on its way to {Saved.Mail}."));

    public IActionResult OnPostCancel() => this.After(bills.Cancel(User.AtShop(), Id),
        id => this.GoOn($"/shop/money/bill/{id}", $"Bill {Saved.Name} is cancelled by this one.{(Saved.IsSaleUndone ? "" : " What stood on it can be billed again.")}"));
}
