using Microsoft.AspNetCore.Mvc;
using TagPage.Core.Jobs;
using TagPage.Records.Jobs;
using TagPage.Records.Loans;
using TagPage.Records.Money;
using TagPage.Records.Prepaid;
using TagPage.Records.Shop;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;
using TagPage.Web.Pages.Shop.Shared;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Shop.Jobs;

public sealed class HandOutModel(JobStore jobs, MoveStore moves, PaymentStore payments, LoanStore loans, PrepaidStore prepaid, ShopStore shops, ShopClock clock) : RecordPage<JobRow>
{
    [BindProperty]
    public HandOutInput Input { get; set; } = new();

    /// <summary>What the client has of the shop’s own rackets.</summary>
    public IEnumerable<LoanRow> Loans => loans.OfClient(User.AtShop(), Saved.ClientId).Where(loan => loan.BackOn is null);

    public DateOnly Today => clock.Today;

    /// <summary>What whoever pays has left of restrings paid in advance.</summary>
    public PrepaidStore.OfTicket? Prepaid => Saved.IsVisit ? null : prepaid.ForJob(User.AtShop(), Id);

    public ShopDetails Shop => shops.Get();

    /// <summary>What whoever pays has in credit.</summary>
    public long? Credit => payments.CreditFor(User.AtShop(), Id);

    protected override JobRow? Find(long id) => jobs.GetWithVisits(User.AtShop(), id);

    public void OnGet() => Input = new HandOutInput { CollectedOn = clock.Today };

    public IActionResult OnPost()
    {
        this.Minor(nameof(Input.Amount), Input.Amount, Shop);
        if (!ModelState.IsValid)
            return Page();
        return this.After(moves.Collect(User.AtShop(), Id, Input.ToEntry(Shop)), _ =>
        {
            this.CanBeUndone(UndoLink.Of(JobState.Collected, Id));
            return this.GoOn("/shop", $"Ticket {Saved.Ticket} is handed out{Paid(jobs.GetWithVisits(User.AtShop(), Id)!)}.");
        });
    }

    private string Paid(JobRow job) =>
        job.PaidOn is not null ? " and paid"
        : job.LaidMinor > 0 ? $"; {Formats.Money(job.OpenMinor!.Value, Shop)} is still to be paid"
        : "";
}
