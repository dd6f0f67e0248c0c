using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Jobs;
using TagPage.Records.Money;
using TagPage.Records.Prepaid;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;
using TagPage.Web.Pages.Shop.Shared;

namespace TagPage.Web.Pages.Shop.Prepaid;

/// <summary>Sells restrings in advance to a client or a payer.</summary>
public sealed class SellModel(PrepaidStore store, TogetherStore together, ShopStore shops, ShopClock clock) : RecordPage<TogetherStore.Row>
{
    [BindProperty]
    public SellInput Input { get; set; } = new();

    public ShopDetails Shop => shops.Get();

    public IReadOnlyList<PrepaidStore.Row> Bought => store.Of(User.AtShop(), Party);

    private bool IsPayer => RouteData.Values["whose"] is string whose && whose.Equals("payer", StringComparison.OrdinalIgnoreCase);

    private bool IsKnown => IsPayer || (RouteData.Values["whose"] is string whose && whose.Equals("client", StringComparison.OrdinalIgnoreCase));

    private Party Party => IsPayer ? Party.Payer(Id) : Party.Client(Id);

    public string OnFile => IsPayer ? $"/shop/money/payer/{Id}" : $"/shop/clients/{Id}";

    protected override TogetherStore.Row? Find(long id) => IsKnown ? together.Get(User.AtShop(), IsPayer ? Party.Payer(id) : Party.Client(id)) : null;

    public void OnGet() => Input = new SellInput { FormKey = FormKey.New(), BoughtOn = clock.Today };

    public IActionResult OnPost()
    {
        var minor = this.Minor(nameof(Input.Amount), Input.Amount, Shop);
        if (!ModelState.IsValid)
            return Page();
        return this.After(store.Sell(User.AtShop(), Party, new PrepaidEntry
        {
            FormKey = Input.FormKey,
            Restrings = Input.Restrings!.Value,
            AmountMinor = minor!.Value,
            Covers = Input.Covers,
            BoughtOn = Input.BoughtOn!.Value,
            Method = Input.How,
            Note = Input.Note,
        }), id => this.GoOn(OnFile, $"{Input.Restrings} prepaid restrings are sold to {Saved.Name}.", "Receipt", $"/shop/prepaid/receipt/{id}"));
    }
}
