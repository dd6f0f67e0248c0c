using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Core.EventDesk;
using TagPage.Core.Jobs;
using TagPage.Records.Jobs;
using TagPage.Records.Money;
using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Records.Events;

/// <summary>
/// Changes what was said about a racket that waits at the desk. Where its times change, its promise is worked out anew; what
/// was promised before is then forgotten, since whoever asked for the change is told the new one.
/// </summary>
public sealed class EntryChangeStore(Database database, ShopStore shops, ShopClock clock)
{
    /// <summary>What could be promised instead, and whom that would make late. Null where its times stay, it does not wait any more, or for others.</summary>
    public WhatIf? Ask(Who who, long eventId, int number, IntakeEntry input) => database.Read(c =>
        EventStore.Get(c, who, eventId) is { } desk && DeskStore.Of(c, desk, clock.Minute) is var board
        && board.Of(number) is { State: JobState.Waiting } entry && !entry.HasTimesOf(input)
            ? WhatIf.Of(board.Desk, Planned(entry, input))
            : null);

    /// <summary>Done tells the desk number.</summary>
    /// <param name="who">Whoever works at the desk.</param>
    /// <param name="eventId">Of the desk.</param>
    /// <param name="number">Desk number.</param>
    /// <param name="version">As the form was opened.</param>
    /// <param name="input">All that is said about it now; whose racket it is stays.</param>
    public Outcome Change(Who who, long eventId, int number, int version, IntakeEntry input) => database.AtDesk(who, eventId, (c, desk) =>
        FormKeys.Once(c, who, input.FormKey, clock.Now, () => Change(c, who, desk, number, version, input)));

    private Outcome Change(SqliteConnection connection, Who who, EventRow desk, int number, int version, IntakeEntry input)
    {
        var board = DeskStore.Of(connection, desk, clock.Minute);
        if (board.Of(number) is not { } entry)
            return new Outcome.Absent();
        if (entry.State != JobState.Waiting)
            return new Outcome.Refused(new EntryMovedOn(number, entry.State, entry.StrungBy));
        if (entry.Version != version)
            return Outcome.Stale;
        var job = Job(desk, entry, input);
        if ((TimesFault(connection, desk, entry, input) ?? job.Order.Faults(entry.Sport, shops.Get()).FirstOrDefault()) is { } why)
            return new Outcome.Refused(why);
        if (Promise(board, entry, input) is not { } promise)
            return new Outcome.Refused(new NoHoursLeft());
        var (strings, refused) = StringPickStore.Pick(connection, job);
        if (strings is null)
            return refused!;
        Keep(connection, who, desk, entry, input, new JobValues(job, strings, shops.Get()), promise);
        return new Outcome.Done(number);
    }

    private Refusal? TimesFault(SqliteConnection connection, EventRow desk, EntryRow entry, IntakeEntry input) =>
        entry.HasTimesOf(input) ? null : IntakeRules.WhyNot(connection, desk, input) ?? input.Unkeepable(clock.Minute);

    private static DateTime? Promise(DeskBoard board, EntryRow entry, IntakeEntry input) =>
        entry.HasTimesOf(input) ? entry.Promised : IntakeRules.Promise(board.Desk, Planned(entry, input), input.Insist);

    private static DeskEntry Planned(EntryRow entry, IntakeEntry input) =>
        IntakeRules.Planned(input, entry.Number, entry.Sport) with { PulledForward = entry.PulledForward };

    /// <summary>What the desk does not ask for stays; a price that nobody typed follows the event's price list.</summary>
    private JobEntry Job(EventRow desk, EntryRow entry, IntakeEntry input) => input.Order with
    {
        MainsPreStretch = entry.MainsPreStretch,
        CrossesPreStretch = entry.CrossesPreStretch,
        Pieces = input.Order.CrossesId is null && input.Order.NewString.Place == NewStringPlace.Both ? entry.Pieces : 2,
        Price = input.Order.Price ?? IntakeRules.Price(desk, input, shops.Get()) ?? (entry.PriceMinor is { } was ? Currencies.ToAmount(was, shops.Get().Currency) : null),
    };

    private void Keep(SqliteConnection connection, Who who, EventRow desk, EntryRow entry, IntakeEntry input, JobValues job, DateTime promise)
    {
        DeskChange.Make(connection, who, desk, clock.Minute, () =>
        {
            connection.Execute(JobSql, new
            {
                entry.JobId,
                job.MainsId,
                job.CrossesId,
                job.MainsSuppliedBy,
                job.CrossesSuppliedBy,
                job.MainsTension,
                job.CrossesTension,
                job.TensionUnit,
                job.Pieces,
                job.Note,
                Day = entry.HasTimesOf(input) ? (DateOnly?)null : DateOnly.FromDateTime(promise),
            });
            return connection.Execute(EntrySql, new
            {
                entry.JobId,
                Team = input.Team ?? "",
                input.NeededBy,
                input.NotBefore,
                promise,
                IsPromisedAnew = !entry.HasTimesOf(input),
                input.OnCourt,
                input.KeptFor,
                input.Minutes,
                Stencil = input.Stencil ?? "",
                StencilColour = input.StencilColour ?? "",
            });
        }, entry.Number);
        if (job.PriceMinor != entry.PriceMinor)
            ChargeLineStore.Replace(connection, entry.JobId, PriceListStore.Get(connection).Agreed(ChargeLineStore.Of(connection, entry.JobId), job.PriceMinor), who, clock.Now);
    }

    private const string JobSql = """
        UPDATE job
        SET mains_id = @MainsId, crosses_id = @CrossesId, mains_supplied_by = @MainsSuppliedBy, crosses_supplied_by = @CrossesSuppliedBy,
            mains_tension = @MainsTension, crosses_tension = @CrossesTension, tension_unit = @TensionUnit, pieces = @Pieces, note = @Note,
            promised_for = COALESCE(@Day, promised_for), version = version + 1
        WHERE id = @JobId
        """;

    private const string EntrySql = """
        UPDATE event_entry
        SET team = @Team, needed_by = @NeededBy, not_before = @NotBefore, promised = @promise, moved_from = CASE WHEN @IsPromisedAnew THEN NULL ELSE moved_from END,
            on_court = @OnCourt, kept_for = @KeptFor, minutes = @Minutes, stencil = @Stencil, stencil_colour = @StencilColour
        WHERE job_id = @JobId
        """;
}
