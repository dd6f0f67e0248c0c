using System.Text;
using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Events;
using TagPage.Records.Shop;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.Events;

/// <summary>What a day at the desk came to: rackets, strings, minutes, lateness, money.</summary>
public sealed class DayModel(EventStore events, DayStore days, EventBillStore bills, ShopStore shops) : RecordPage<EventRow>
{
    /// <summary>As a date field writes it; all days without one.</summary>
    [BindProperty(SupportsGet = true, Name = "on")]
    public string? Chosen { get; set; }

    public DateOnly? On => Saved.FromOn == Saved.ToOn ? Saved.FromOn : DayField.Read(Chosen);

    public DaySheet Sheet => new(days.Get(User.AtShop(), Id, On) ?? [], shops.Get(), bills.Of(User.AtShop(), Id));

    protected override EventRow? Find(long id) => events.Get(User.AtShop(), id);

    public void OnGet()
    {
    }

    /// <summary>With the mark that spreadsheets need to read UTF-8.</summary>
    public IActionResult OnGetCsv() =>
        File([.. Encoding.UTF8.Preamble, .. Encoding.UTF8.GetBytes(Sheet.Csv())], "text/csv; charset=utf-8", $"event-{Id}{(On is { } day ? "-" + DayField.Of(day) : "")}.csv");
}
