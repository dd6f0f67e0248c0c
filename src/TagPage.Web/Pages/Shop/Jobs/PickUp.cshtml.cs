using Microsoft.AspNetCore.Mvc;
using TagPage.Core.Jobs;
using TagPage.Records.Jobs;
using TagPage.Records.Loans;
using TagPage.Records.Prepaid;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;
using TagPage.Web.Pages.Shop.Shared;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Shop.Jobs;

/// <summary>Hands out all that is ready of a household or of a payer's clients, with one payment.</summary>
public sealed class PickUpModel(PickUpStore store, TogetherStore together, JobStore jobs, LoanStore loans, PrepaidStore prepaid, ShopStore shops, ShopClock clock) : TogetherPage(together)
{
    [BindProperty]
    public PickUpInput Input { get; set; } = new();

    /// <summary>What they have of the shop’s own rackets.</summary>
    public IEnumerable<LoanRow> Loans => Shown.Select(job => job.ClientId).Distinct().SelectMany(client => loans.OfClient(User.AtShop(), client)).Where(loan => loan.BackOn is null);

    public DateOnly Today => clock.Today;

    public PrepaidStore.OfTicket? Prepaid(long job) => prepaid.ForJob(User.AtShop(), job);

    public ShopDetails Shop => shops.Get();

    public long? Credit => store.Credit(User.AtShop(), Party);

    /// <summary>What is ready, and what was ticked and is so no more.</summary>
    public IReadOnlyList<JobRow> Shown =>
        [.. Saved.Ready, .. Input.Jobs.Except(Saved.Ready.Select(job => job.Id)).Select(id => jobs.GetWithVisits(User.AtShop(), id)).OfType<JobRow>().Where(job => IsRefused(job.Id))];

    public bool IsRefused(long job) => ModelState.ContainsKey($"{nameof(Input)}.{PickUpEntry.Place(job)}");

    public long OpenMinor => Saved.Ready.Where(job => job.PaidOn is null).Sum(job => job.OpenMinor ?? 0);

    public void OnGet() => Input = new PickUpInput { FormKey = FormKey.New(), CollectedOn = clock.Today, Jobs = [.. Saved.Ready.Select(job => job.Id)] };

    public IActionResult OnPost()
    {
        this.Minor(nameof(Input.Amount), Input.Amount, Shop);
        if (!ModelState.IsValid)
            return Page();
        return this.After(store.Collect(User.AtShop(), Party, Input.ToEntry(Shop)), _ =>
        {
            this.CanBeUndone(UndoLink.Of(JobState.Collected, Input.Jobs.Distinct()));
            return this.GoOn(Home, Said([.. Input.Jobs.Distinct().Select(id => jobs.GetWithVisits(User.AtShop(), id)!)]), "Receipt", $"/shop/money/receipts?{string.Join('&', Input.Jobs.Distinct().Select(id => $"job={id}"))}");
        });
    }

    private string Said(IReadOnlyList<JobRow> handed)
    {
        var what = handed.Count == 1 ? $"Ticket {handed[0].Ticket} is handed out" : $"{handed.Count} rackets are handed out";
        var open = handed.Where(job => job.PaidOn is null).ToList();
        return open.Count == 0 ? $"{what} and paid."
            : open.Sum(job => job.OpenMinor ?? 0) is > 0 and var minor ? $"{what}; {Formats.Money(minor, Shop)} is still to be paid."
            : $"{what}.";
    }
}
