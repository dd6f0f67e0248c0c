using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Labels.Geometry;
using TagPage.Labels.Printing;
using TagPage.Labels.Render.Pdf;
using TagPage.Records.Labels;
using TagPage.Web.Http;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;
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
        if (LabelLetters.Fault(Input.ReturnWords) is { } letters)
            this.Note([new FieldFault(nameof(Input.ReturnWords), letters)]);
        if (!ModelState.IsValid)
            return Page();
        return this.After(store.Save(User.AtShop(), Input.ToSettings()), _ => this.GoOn("/shop/labels/settings",
            "How labels are printed is saved.", "Print a test page", "/shop/labels/settings?handler=test&paper=tape"), store.Get().Version);
    }

    /// <summary>A page to hold a ruler against.</summary>
    public IActionResult OnGetTest(string paper = "tape") => File(LabelPdf.Of(
    [
        paper == Paper.A4.Name ? TestPages.On(Paper.A4)
        : paper == Paper.Letter.Name ? TestPages.On(Paper.Letter)
        : TestPages.On(Saved.Stock()),
    ]), "application/pdf");

    private SquareFit FitOf(int version)
    {
        var stock = Saved.Stock();
        return SquareFit.On(17 + 4 * version, stock.Tape, stock.Printer, stock.Limits);
    }
}
