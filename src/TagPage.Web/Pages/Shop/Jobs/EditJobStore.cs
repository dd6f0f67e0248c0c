using Dapper;
using TagPage.Core.Jobs;
using TagPage.Web.Data;

namespace TagPage.Web.Pages.Shop.Jobs;

/// <summary>Changes everything about a job, past days too.</summary>
public sealed class EditJobStore(Database database, ShopStore shops)
{
    public Outcome Change(long id, EditInput input) => database.Write<Outcome>(c =>
    {
        if (JobStore.Get(c, id) is not { } job)
            return new Outcome.Absent();
        if (job.Version != input.Version)
            return Outcome.Stale;
        if (job.State == JobState.Cancelled && input.StrungOn is not null)
            return new Outcome.Refused(nameof(input.StrungOn), "This ticket is cancelled. Take it back to waiting first.");
        var (strings, refused) = StringPickStore.Pick(c, input);
        if (strings is null)
            return refused!;
        c.Execute(ChangeSql, new ChangedJobValues(id, input, strings, shops.Get(), job.State));
        ReadingStore.SetFirst(c, id, input.StrungOn ?? input.ReceivedOn!.Value, input.Reading, input.InstrumentId);
        BedStore.EndFollowed(c, job.RacketId, BedEnd.Unknown);
        return new Outcome.Done(id);
    });

    private const string ChangeSql = """
        UPDATE job
        SET state = @State, mains_id = @MainsId, crosses_id = @CrossesId, mains_supplied_by = @MainsSuppliedBy,
            crosses_supplied_by = @CrossesSuppliedBy, mains_tension = @MainsTension, crosses_tension = @CrossesTension,
            tension_unit = @TensionUnit, pre_stretch_percent = @PreStretchPercent, pieces = @Pieces,
            received_on = @ReceivedOn, received_where = @ReceivedWhere, promised_for = @PromisedFor,
            strung_on = @StrungOn, strung_by = @StrungBy, machine = @Machine, collected_on = @CollectedOn,
            price_minor = @PriceMinor, paid_on = @PaidOn, note = @Note, ended_on = @EndedOn, ended_how = @EndedHow,
            expected = CASE WHEN @State = 'Waiting' THEN expected ELSE 0 END, version = version + 1
        WHERE id = @Id AND version = @Version
        """;
}
