using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Jobs;
using TagPage.Records.Money;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;
using TagPage.Web.Pages.Shop.Shared;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Shop.Jobs;

public sealed class PaidModel(JobStore jobs, PaymentStore payments, ShopStore shops, ShopClock clock) : RecordPage<JobRow>
{
    [BindProperty]
    public PaidInput Input { get; set; } = new();

    public ShopDetails Shop => shops.Get();

    public long? Credit => payments.CreditFor(User.AtShop(), Id);

    public IReadOnlyList<PaymentStore.Row> Payments => payments.OfJob(User.AtShop(), Id);

    protected override JobRow? Find(long id) => jobs.GetWithVisits(User.AtShop(), id);

    public void OnGet() => Input = new PaidInput { FormKey = FormKey.New(), PaidOn = clock.Today };

    public IActionResult OnPost()
    {
        this.Minor(nameof(Input.Amount), Input.Amount, Shop);
        if (!ModelState.IsValid)
            return Page();
        return this.After(payments.PayJob(User.AtShop(), Id, Input.ToEntry(Shop)), _ => this.GoOn($"/shop/jobs/{Id}", Done(jobs.GetWithVisits(User.AtShop(), Id)!)));
    }

    private string Done(JobRow job) => job.PaidOn is not null
        ? $"Ticket {job.Ticket} is paid."
        : $"The payment is noted. {Formats.Money(job.OpenMinor!.Value, Shop)} of ticket {job.Ticket} is still to be paid.";
}
