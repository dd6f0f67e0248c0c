using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Core.Jobs;
using TagPage.Records.Deeds;
using TagPage.Records.Money;
using TagPage.Records.Readings;
using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Records.Jobs;

/// <summary>Changes everything about a job, past days too. Only the shop may.</summary>
public sealed class EditJobStore(Database database, ShopStore shops, ShopClock clock)
{
    public Outcome Change(Who who, long id, ChangedJobEntry input)
    {
        var (now, today) = (clock.Now, clock.Today);
        return database.Write<Outcome>(c =>
        {
            if (JobStore.Get(c, who, id) is not { } job)
                return new Outcome.Absent();
            if (job.Version != input.Version)
                return Outcome.Stale;
            if (WhyNot(c, job, input, today) is { } why)
                return new Outcome.Refused(why);
            var (strings, refused) = StringPickStore.Pick(c, input);
            if (strings is null)
                return refused!;
            var values = new ChangedJobValues(id, input, strings, shops.Get(), job.State);
            c.Execute(ChangeSql, values);
            if (values.PriceMinor != job.PriceMinor)
                ChargeLineStore.Replace(c, id, PriceListStore.Get(c).Agreed(ChargeLineStore.Of(c, id), values.PriceMinor), who, now);
            ReadingStore.SetFirst(c, id, input.StrungOn ?? input.ReceivedOn, input.Reading, input.InstrumentId);
            BedStore.EndFollowed(c, job.RacketId, BedEnd.Unknown);
            if (input.Confirmed)
                RangeConfirmStore.Note(c, id, now);
            JobDeedStore.Note(c, who, id, JobDeed.Changed, now);
            return new Outcome.Done(id);
        });
    }

    /// <summary>What is odd about a day on which the job is said to have been strung.</summary>
    public IEnumerable<Oddity> Oddities(JobRow job, DateOnly? strungOn) =>
        strungOn is { } on && database.Read(c => BedStore.SameDay(c, job.RacketId, job.Id, on)) is { } odd ? [odd] : [];

    private Refusal? WhyNot(SqliteConnection connection, JobRow job, ChangedJobEntry input, DateOnly today) =>
        job.State == JobState.Cancelled && input.StrungOn is not null ? new TicketCancelled()
        : input.Order.Faults(job.Sport, shops.Get()).Concat(input.Days.Faults(today)).FirstOrDefault()
            ?? OutOfOrder(connection, job, input)
            ?? ReadingStore.FirstFault(connection, input.Reading, input.InstrumentId);

    private static StrungOutOfOrder? OutOfOrder(SqliteConnection connection, JobRow job, ChangedJobEntry input) =>
        job.StrungOn is { } was && input.StrungOn is { } on && BedStore.Passed(connection, job.RacketId, job.Id, was, on) is { } passed
            ? new StrungOutOfOrder(passed.Ticket, passed.StrungOn)
            : null;

    private const string ChangeSql = """
        UPDATE job
        SET state = @State, mains_id = @MainsId, crosses_id = @CrossesId, mains_supplied_by = @MainsSuppliedBy,
            crosses_supplied_by = @CrossesSuppliedBy, mains_tension = @MainsTension, crosses_tension = @CrossesTension,
            tension_unit = @TensionUnit, mains_pre_stretch = @MainsPreStretch, crosses_pre_stretch = @CrossesPreStretch, pieces = @Pieces,
            received_on = @ReceivedOn, received_where = @ReceivedWhere, promised_for = @PromisedFor,
            strung_at = CASE WHEN strung_on = @StrungOn THEN strung_at END, strung_on = @StrungOn, strung_by = @StrungBy, machine = @Machine, collected_on = @CollectedOn,
            note = @Note, ended_on = @EndedOn, ended_how = @EndedHow,
            version = version + 1
        WHERE id = @Id AND version = @Version
        """;
}
