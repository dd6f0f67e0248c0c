using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Jobs;
using TagPage.Records.Money;
using TagPage.Records.Prepaid;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.Prepaid;

/// <summary>Uses a restring that was paid in advance for a ticket, or gives it back.</summary>
public sealed class UseModel(PrepaidStore store, JobStore jobs, ChargeStore charges, ShopStore shops) : RecordPage<JobRow>
{
    public ShopDetails Shop => shops.Get();

    public PrepaidStore.OfTicket? Prepaid => store.ForJob(User.AtShop(), Id);

    protected override JobRow? Find(long id) => jobs.Get(User.AtShop(), id);

    public void OnGet()
    {
    }

    public IActionResult OnPost() => After(store.Use(User.AtShop(), Id), $"A prepaid restring is used for ticket {Saved.Ticket}");

    public IActionResult OnPostBack() => After(store.GiveBack(User.AtShop(), Id), $"The prepaid restring of ticket {Saved.Ticket} is given back");

    private IActionResult After(Outcome outcome, string what) => this.After(outcome, _ =>
        this.GoOn(Find(Id)!.State == TagPage.Core.Jobs.JobState.Strung ? $"/shop/jobs/collect/{Id}" : $"/shop/jobs/{Id}", $"{what}; {Prepaid!.Left} left.{Billed}"));

    private string Billed => charges.Get(User.AtShop(), Id)?.Bill is { } bill ? $" Bill {bill} keeps its amounts: cancel it and write it again." : "";
}
