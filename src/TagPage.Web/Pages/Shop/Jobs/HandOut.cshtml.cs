using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Jobs;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.Shop.Jobs;

public sealed class HandOutModel(JobStore jobs, MoveStore moves, ShopClock clock) : RecordPage<JobRow>
{
    [BindProperty]
    public HandOutInput Input { get; set; } = new();

    protected override JobRow? Find(long id) => jobs.Get(Who.Shop, id);

    public void OnGet() => Input = new HandOutInput { CollectedOn = clock.Today };

    public IActionResult OnPost()
    {
        if (!ModelState.IsValid)
            return Page();
        return this.After(moves.Collect(Who.Shop, Id, Input.ToEntry()),
            _ => this.GoOn("/shop", $"Ticket {Saved.Ticket} is handed out{(Input.Paid ? " and paid" : "")}.", "Undo", $"/shop/jobs/back/{Id}"));
    }
}
