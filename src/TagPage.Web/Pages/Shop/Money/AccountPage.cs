using Microsoft.AspNetCore.Mvc;
using TagPage.Core.Money;
using TagPage.Records.Money;
using TagPage.Records.Prepaid;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;
using TagPage.Web.Pages.Shop.Shared;
using TagPage.Web.Papers;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Shop.Money;

/// <summary>What one who pays owes, has paid and was billed; a client's and a payer's are alike.</summary>
public abstract class AccountPage(OwedStore owed, PaymentStore payments, BillStore bills, PrepaidStore prepaid, ShopStore shops, ShopClock clock) : RecordPage<OwedStore.Account>
{
    /// <summary>Of the form for a payment alone; the other buttons send nothing of it.</summary>
    public AccountInput Input { get; private set; } = new();

    public ShopDetails Shop => shops.Get();

    public IReadOnlyList<PaymentStore.Row> Payments => payments.OfParty(User.AtShop(), PartyOf(Id));

    public IReadOnlyList<BillStore.Month> Months => bills.Months(User.AtShop(), PartyOf(Id));

    public IReadOnlyList<BillRow> Bills => bills.Of(User.AtShop(), PartyOf(Id));

    /// <summary>What they paid in advance; those taken back are left out.</summary>
    public IReadOnlyList<PrepaidStore.Row> Prepaid => [.. prepaid.Of(User.AtShop(), PartyOf(Id)).Where(row => !row.IsUndone)];

    /// <summary>What the next bill is written in.</summary>
    public Language BillLanguage => PaperWords.In(Saved.Language ?? Shop.Language).Language;

    public string SellPrepaid => $"/shop/prepaid/sell/{Kind}/{Id}";

    /// <summary>Where the page itself is.</summary>
    public string Address => $"/shop/money/{Kind}/{Id}";

    /// <summary>Where all that is at the shop of theirs is.</summary>
    public string AtShop => $"/shop/jobs/together/{Kind}/{Id}";

    /// <summary>Where they are on file.</summary>
    public abstract string OnFile { get; }

    protected abstract string Kind { get; }

    protected abstract Party PartyOf(long id);

    protected override OwedStore.Account? Find(long id) => owed.Get(User.AtShop(), PartyOf(id));

    public void OnGet() => Input = new AccountInput { FormKey = FormKey.New(), PaidOn = clock.Today };

    public IActionResult OnPost([Bind(Prefix = nameof(Input))] AccountInput typed)
    {
        Input = typed;
        var minor = this.Minor(nameof(Input.Amount), Input.Amount, Shop);
        if (!ModelState.IsValid)
            return Page();
        return this.After(payments.PayAccount(User.AtShop(), PartyOf(Id), new PaymentEntry
        {
            FormKey = Input.FormKey,
            PaidOn = Input.PaidOn!.Value,
            Method = Input.How ?? PaymentMethod.Cash,
            AmountMinor = minor,
            Note = Input.Note,
        }), _ => this.GoOn(Address, "The payment is noted and goes towards what is owed, oldest first."));
    }

    public IActionResult OnPostCredit(string? formKey) => this.After(
        payments.PayAccount(User.AtShop(), PartyOf(Id), new PaymentEntry { FormKey = formKey ?? "", PaidOn = clock.Today }),
        _ => this.GoOn(Address, "The credit goes towards what is owed, oldest first."));

    /// <param name="sale">Of restrings in advance.</param>
    public IActionResult OnPostSale(long sale) => this.After(bills.MakePrepaid(User.AtShop(), PartyOf(Id), sale), id => this.GoOn($"/shop/money/bill/{id}", "The bill is written."));

    /// <param name="month">Any day of it.</param>
    public IActionResult OnPostBill(DateOnly month) => this.After(bills.Make(User.AtShop(), PartyOf(Id), month), id => this.GoOn($"/shop/money/bill/{id}", "The bill is written."));
}
