using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.Filters;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Labels.Papers;
using TagPage.Records.Jobs;
using TagPage.Records.Money;
using TagPage.Records.Shop;
using TagPage.Web.Http.SignIn;
using TagPage.Web.Papers;

namespace TagPage.Web.Pages.Shop.Money;

/// <summary>One receipt for several tickets of whoever pays for them.</summary>
public sealed class ReceiptsModel(JobStore jobs, ChargeStore charges, PaymentStore payments, PriceListStore prices, ShopStore shops) : PageModel
{
    [BindProperty(SupportsGet = true, Name = "job")]
    public List<long> Asked { get; set; } = [];

    public IReadOnlyList<JobRow> Saved { get; private set; } = [];

    public Sheet Sheet => ReceiptPaper.Of([.. Saved.Select(job => new ReceiptPaper.Ticket(job, charges.Get(User.AtShop(), job.Id)!.Lines, payments.OfJob(User.AtShop(), job.Id)))], shops.Get(), prices.Get());

    public string Pdf => $"/shop/money/receipts?{string.Join('&', Saved.Select(job => $"job={job.Id}"))}&handler=pdf";

    [NonHandler]
    public override void OnPageHandlerExecuting(PageHandlerExecutingContext context)
    {
        Saved = [.. Asked.Distinct().Take(TogetherStore.Most).Select(id => jobs.GetWithVisits(User.AtShop(), id)).OfType<JobRow>()];
        if (Saved.Count == 0 || Saved.Count < Asked.Distinct().Count() || Saved.Select(job => job.Payer ?? job.Client).Distinct().Count() > 1)
            context.Result = NotFound();
    }

    public void OnGet()
    {
    }

    public IActionResult OnGetPdf()
    {
        var sheet = Sheet;
        return File(SheetPdf.Of(sheet), "application/pdf", $"{sheet.Title}.pdf");
    }
}
