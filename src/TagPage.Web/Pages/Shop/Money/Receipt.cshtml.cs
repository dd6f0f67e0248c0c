using Microsoft.AspNetCore.Mvc;
using TagPage.Labels.Papers;
using TagPage.Records.Jobs;
using TagPage.Records.Money;
using TagPage.Records.Shop;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;
using TagPage.Web.Papers;

namespace TagPage.Web.Pages.Shop.Money;

public sealed class ReceiptModel(JobStore jobs, ChargeStore charges, PaymentStore payments, PriceListStore prices, ShopStore shops) : RecordPage<JobRow>
{
    public Sheet Sheet => ReceiptPaper.Of([new(Saved, charges.Get(User.AtShop(), Id)!.Lines, payments.OfJob(User.AtShop(), Id))], shops.Get(), prices.Get());

    protected override JobRow? Find(long id) => jobs.GetWithVisits(User.AtShop(), id);

    public void OnGet()
    {
    }

    public IActionResult OnGetPdf()
    {
        var sheet = Sheet;
        return File(SheetPdf.Of(sheet), "application/pdf", $"{sheet.Title}.pdf");
    }
}
