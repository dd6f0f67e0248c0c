using Microsoft.AspNetCore.Mvc;
using TagPage.Labels.Papers;
using TagPage.Records.Money;
using TagPage.Records.Prepaid;
using TagPage.Records.Shop;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;
using TagPage.Web.Papers;

namespace TagPage.Web.Pages.Shop.Prepaid;

/// <summary>What somebody gets who pays for restrings in advance.</summary>
public sealed class ReceiptModel(PrepaidStore store, PriceListStore prices, ShopStore shops) : RecordPage<PrepaidStore.Sale>
{
    public Sheet Sheet => ReceiptPaper.Of(Saved, shops.Get(), prices.Get());

    public string OnFile => Saved.PayerId is { } payer ? $"/shop/money/payer/{payer}" : $"/shop/clients/{Saved.ClientId}";

    public string Sales => Saved.PayerId is { } payer ? $"/shop/prepaid/sell/payer/{payer}" : $"/shop/prepaid/sell/client/{Saved.ClientId}";

    protected override PrepaidStore.Sale? Find(long id) => store.Get(User.AtShop(), id);

    public void OnGet()
    {
    }

    public IActionResult OnGetPdf()
    {
        var sheet = Sheet;
        return File(SheetPdf.Of(sheet), "application/pdf", $"{sheet.Title}.pdf");
    }
}
