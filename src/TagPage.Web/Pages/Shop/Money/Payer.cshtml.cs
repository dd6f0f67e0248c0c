using TagPage.Records.Money;
using TagPage.Records.Prepaid;
using TagPage.Records.Shop;

namespace TagPage.Web.Pages.Shop.Money;

public sealed class PayerModel(OwedStore owed, PaymentStore payments, BillStore bills, PrepaidStore prepaid, ShopStore shops, ShopClock clock) : AccountPage(owed, payments, bills, prepaid, shops, clock)
{
    public override string OnFile => $"/shop/payers/edit/{Id}";

    protected override string Kind => "payer";

    protected override Party PartyOf(long id) => Party.Payer(id);
}
