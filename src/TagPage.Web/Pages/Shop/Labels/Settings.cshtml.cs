using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Labels.Geometry;
using TagPage.Records.Labels;
using TagPage.Records.Storage;
using TagPage.Web.Http;
using TagPage.Web.Http.Forms;
using TagPage.Web.Labels;

namespace TagPage.Web.Pages.Shop.Labels;

public sealed class SettingsModel(LabelSettingsStore store, PublicAddress address) : PageModel
{
    [BindProperty]
    public SettingsInput Input { get; set; } = new();

    public PublicAddress Address => address;

    public LabelSettings Saved => store.Get();

    /// <summary>What the shop's own address costs; null where no square can hold it.</summary>
    public AddressPrice? Price => AddressPrice.Of(address.Base);

    /// <summary>How the square sits on the usual tape.</summary>
    public SquareFit? Fit => Price is { } price ? FitOf(price.Version) : null;

    /// <summary>How it would sit with the next smaller symbol.</summary>
    public SquareFit? BetterFit => Price is { FewerForSmaller: not null } price ? FitOf(price.Version - 1) : null;

    public void OnGet() => Input = SettingsInput.Of(store.Get());

    public IActionResult OnPost()
    {
        if (!ModelState.IsValid)
            return Page();
        if (store.Save(Input.ToSettings()) is Outcome.Refused refused)
            return this.Refuse(refused, store.Get().Version);
        this.Say("How labels are printed is saved.", "Print a test page", "/shop/labels/test.pdf?paper=tape");
        return Redirect("/shop/labels/settings");
    }

    private SquareFit FitOf(int version)
    {
        var stock = Saved.Stock();
        return SquareFit.On(17 + 4 * version, stock.Tape, stock.Printer, stock.Limits);
    }
}
