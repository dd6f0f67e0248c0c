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
            var values = new ChangedJobValues(id, input, strings, shops.Get(), job.State, IsMore(job, input, shops.Get().Currency));
            // A ticket that is saved as it was is not changed, and moves nothing.
            if (c.Execute(ChangeSql, values) == 1)
                Follow(c, who, job, values, now);
            if (input.Confirmed)
                RangeConfirmStore.Note(c, id, now);
            return new Outcome.Done(id);
        });
    }

    /// <summary>Something is changed that is kept beside the ticket: its price, where it is left and collected, or its first reading.</summary>
    private static bool IsMore(JobRow job, ChangedJobEntry input, string currency) =>
        job.PriceMinor != (input.Price is { } price ? Currencies.ToMinor(price, currency) : null)
        || job.LeftAtId != input.Stops.LeftAt || job.CollectAtId != input.Stops.CollectAt
        || job.Reading != input.Reading || (input.Reading is not null && job.InstrumentId != input.InstrumentId);

    private static void Follow(SqliteConnection connection, Who who, JobRow job, ChangedJobValues values, DateTimeOffset now)
    {
        var input = values.Changed;
        JobStopStore.Set(connection, job.Id, input.Stops);
        if (values.PriceMinor != job.PriceMinor)
            ChargeLineStore.Replace(connection, job.Id, PriceListStore.Get(connection).Agreed(ChargeLineStore.Of(connection, job.Id), values.PriceMinor), who, now);
        ReadingStore.SetFirst(connection, job.Id, input.StrungOn ?? input.ReceivedOn, input.Reading, input.InstrumentId);
        BedStore.EndFollowed(connection, job.RacketId, BedEnd.Unknown);
        JobDeedStore.Note(connection, who, job.Id, JobDeed.Changed, now);
    }

    /// <summary>What is odd about a day on which the job is said to have been strung.</summary>
    public IEnumerable<Oddity> Oddities(JobRow job, DateOnly? strungOn) =>
        strungOn is { } on && database.Read(c => BedStore.SameDay(c, job.RacketId, job.Id, on)) is { } odd ? [odd] : [];

    private Refusal? WhyNot(SqliteConnection connection, JobRow job, ChangedJobEntry input, DateOnly today) =>
        job.State == JobState.Cancelled && input.StrungOn is not null ? new TicketCancelled()
        : input.Order.Faults(job.Sport, shops.Get()).Concat(input.Days.Faults(today)).FirstOrDefault()
            ?? OutOfOrder(connection, job, input)
            ?? ReadingStore.FirstFault(connection, input.Reading, input.InstrumentId)
            ?? JobStopStore.WhyNot(connection, input.Stops, job);

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
          AND (@IsMore
               OR (state, mains_id, crosses_id, mains_supplied_by, crosses_supplied_by, mains_tension, crosses_tension, tension_unit, mains_pre_stretch, crosses_pre_stretch, pieces)
                  IS NOT (@State, @MainsId, @CrossesId, @MainsSuppliedBy, @CrossesSuppliedBy, @MainsTension, @CrossesTension, @TensionUnit, @MainsPreStretch, @CrossesPreStretch, @Pieces)
               OR (received_on, received_where, promised_for, strung_on, strung_by, machine, collected_on, note, ended_on, ended_how)
                  IS NOT (@ReceivedOn, @ReceivedWhere, @PromisedFor, @StrungOn, @StrungBy, @Machine, @CollectedOn, @Note, @EndedOn, @EndedHow))
        """;
}
