using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Core.Money;
using TagPage.Records.Money;
using TagPage.Records.Shop;
using TagPage.Records.Strings;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;
using TagPage.Web.Pages.Shop.Shared;
using TagPage.Web.Papers;

namespace TagPage.Web.Pages.Shop.Money;

public sealed class PricesModel(PriceListStore prices, StringStore strings, ShopStore shops) : PageModel
{
    [BindProperty]
    public PricesInput Input { get; set; } = new();

    public ShopDetails Shop => shops.Get();

    public IReadOnlyDictionary<long, StringStore.Row> Catalogue { get; private set; } = new Dictionary<long, StringStore.Row>();

    /// <summary>Why bills will have no square, as the shop and its account stand.</summary>
    public string? NoSquares => SquareWords.Of(Payment.Payee(Shop, prices.Get()), Shop.Currency);

    public void OnGet()
    {
        Load();
        Input = PricesInput.Of(prices.Get(), Catalogue.Values, Shop);
    }

    private void Load() => Catalogue = strings.List().ToDictionary(s => s.Id);

    public IActionResult OnPost()
    {
        Load();
        var list = Read();
        return ModelState.IsValid
            ? this.After(prices.Save(User.AtShop(), list), _ => this.GoOn("/shop/settings", "The price list is saved. New jobs use it; existing jobs keep their price."), prices.Get().Version)
            : Page();
    }

    private PriceList Read()
    {
        var iban = Iban.Read(Input.Iban);
        if (iban is null && !string.IsNullOrWhiteSpace(Input.Iban))
            this.Refuse(new FieldFault(nameof(Input.Iban), "This is not a valid account number: its check digits do not fit. Compare each character."));
        return new PriceList
        {
            Version = Input.Version,
            LabourMinor = this.Minor(nameof(Input.Labour), Input.Labour, Shop),
            TennisMinor = this.Minor(nameof(Input.Tennis), Input.Tennis, Shop),
            BadmintonMinor = this.Minor(nameof(Input.Badminton), Input.Badminton, Shop),
            SquashMinor = this.Minor(nameof(Input.Squash), Input.Squash, Shop),
            TaxBp = Input.TaxPercent is > 0 and <= 100 and var percent ? (int)(percent * 100) : 0,
            TaxNumber = Input.TaxNumber ?? "",
            Iban = iban,
            AccountName = Input.AccountName ?? "",
            Strings = ReadStrings(),
            Extras = [.. Input.Extras.Select(Extra).OfType<ExtraPrice>()],
        };
    }

    private Dictionary<long, StringPrice> ReadStrings()
    {
        var read = new Dictionary<long, StringPrice>();
        foreach (var (typed, i) in Input.Strings.Select((s, i) => (s, i)))
        {
            var price = new StringPrice(this.Minor($"Strings[{i}].Set", typed.Set, Shop), this.Minor($"Strings[{i}].Metre", typed.Metre, Shop));
            if (price != new StringPrice(null, null))
                read[typed.Id] = price;
        }
        return read;
    }

    /// <summary>Null for one without an amount, which is not offered.</summary>
    private ExtraPrice? Extra(ExtraPriceInput typed, int i)
    {
        if (this.Minor($"Extras[{i}].Amount", typed.Amount, Shop) is not { } amount)
            return null;
        if (typed.Kind == ChargeKind.Extra && string.IsNullOrWhiteSpace(typed.Name))
            this.Refuse(new FieldFault($"Extras[{i}].Name", "Enter what this amount is for."));
        return new ExtraPrice { Id = typed.Id, Kind = typed.Kind, Name = typed.Kind == ChargeKind.Extra ? typed.Name ?? "" : "", AmountMinor = amount };
    }
}
