using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Money;
using TagPage.Records.Shop;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.Money;

public sealed class BackModel(PaymentStore payments, ShopStore shops) : RecordPage<PaymentStore.Row>
{
    public ShopDetails Shop => shops.Get();

    protected override PaymentStore.Row? Find(long id) => payments.Get(User.AtShop(), id);

    public void OnGet()
    {
    }

    public IActionResult OnPost() => this.After(payments.TakeBack(User.AtShop(), Id),
        job => this.GoOn(job > 0 ? $"/shop/jobs/{job}" : "/shop", "The payment is taken back. Both entries stay on record."));
}
