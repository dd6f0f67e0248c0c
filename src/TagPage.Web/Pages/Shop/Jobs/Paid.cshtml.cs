using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Jobs;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.Shop.Jobs;

public sealed class PaidModel(JobStore jobs, MoveStore moves, ShopClock clock) : RecordPage<JobRow>
{
    [BindProperty]
    public PaidInput Input { get; set; } = new();

    protected override JobRow? Find(long id) => jobs.Get(Who.Shop, id);

    public void OnGet() => Input = new PaidInput { PaidOn = Saved.PaidOn is null ? clock.Today : null };

    public IActionResult OnPost()
    {
        if (!ModelState.IsValid)
            return Page();
        return this.After(moves.Pay(Who.Shop, Id, Input.PaidOn),
            _ => this.GoOn($"/shop/jobs/{Id}", $"Ticket {Saved.Ticket} is marked as {(Input.PaidOn is null ? "not paid" : "paid")}."));
    }
}
