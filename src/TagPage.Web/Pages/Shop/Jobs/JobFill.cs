using TagPage.Records.Jobs;
using TagPage.Records.Shop;

namespace TagPage.Web.Pages.Shop.Jobs;

/// <summary>Forms filled in from what is known, so that only what is different has to be typed.</summary>
internal static class JobFill
{
    private const int PromisedDays = 2;

    /// <summary>The same again, received today.</summary>
    /// <param name="last">The job to do again; null for none.</param>
    /// <param name="formKey">Of the form.</param>
    /// <param name="today">The shop's day.</param>
    /// <param name="shop">Its units and opening days.</param>
    /// <param name="listed">The price list knows what the job costs; else it costs what the last one did.</param>
    public static NewInput New(JobRow? last, string formKey, DateOnly today, ShopDetails shop, bool listed)
    {
        var input = last is null ? new NewInput { TensionUnit = shop.TensionUnit } : (NewInput)Order(new NewInput(), last, shop);
        return input with
        {
            FormKey = formKey,
            ReceivedOn = today,
            PromisedFor = shop.Opening.NextOpen(today.AddDays(PromisedDays)) ?? today.AddDays(PromisedDays),
            Price = listed ? null : input.Price,
            Note = null,
        };
    }

    public static EditInput Edit(JobRow job, ShopDetails shop) => (EditInput)Order(new EditInput(), job, shop) with
    {
        Version = job.Version,
        ReceivedOn = job.ReceivedOn,
        PromisedFor = job.PromisedFor,
        Note = job.Note,
        StrungOn = job.StrungOn,
        StrungBy = job.StrungBy,
        Machine = job.Machine,
        Reading = job.Reading,
        InstrumentId = job.InstrumentId,
        CollectedOn = job.CollectedOn,
        EndedOn = job.EndedOn,
        EndedHow = job.EndedHow,
    };

    /// <summary>Crosses that are like the mains are left empty: they follow when the mains are changed.</summary>
    internal static JobInput Order(JobInput input, JobRow job, ShopDetails shop) => input with
    {
        MainsId = job.MainsId,
        CrossesId = job.CrossesId == job.MainsId ? null : job.CrossesId,
        MainsSuppliedBy = job.MainsSuppliedBy,
        CrossesSuppliedBy = job.CrossesSuppliedBy == job.MainsSuppliedBy ? null : job.CrossesSuppliedBy,
        MainsTension = job.MainsTension,
        CrossesTension = job.CrossesTension == job.MainsTension ? null : job.CrossesTension,
        TensionUnit = job.TensionUnit,
        MainsPreStretch = job.MainsPreStretch == 0 ? null : job.MainsPreStretch,
        CrossesPreStretch = job.CrossesPreStretch == job.MainsPreStretch ? null : job.CrossesPreStretch,
        Pieces = job.Pieces,
        ReceivedWhere = job.ReceivedWhere,
        LeftAtId = job.LeftAtId,
        CollectAtId = job.CollectAtId == job.LeftAtId ? null : job.CollectAtId ?? 0,
        Price = job.PriceMinor is { } minor ? Currencies.ToAmount(minor, shop.Currency) : null,
    };
}
