using TagPage.Core.Jobs;
using TagPage.Core.Money;
using TagPage.Core.Tags;
using TagPage.Records.Condition;
using TagPage.Records.DueDates;
using TagPage.Records.Jobs;
using TagPage.Records.Money;
using TagPage.Records.OwnPages;
using TagPage.Records.Privacy;
using TagPage.Records.Shop;
using TagPage.Records.Stops;
using TagPage.Records.Storage;
using TagPage.Records.Tags;
using TagPage.Records.Tests.Cast;
using TagPage.Records.Visits;

namespace TagPage.Records.Tests.Visits;

/// <summary>Pim's racket gets a new grip for 6.00.</summary>
public sealed class VisitStoreTests : IDisposable
{
    private readonly Street _street = new();

    public VisitStoreTests()
    {
        new DueDateKeeper(_street.Database, _street.Time).Attach();
        _street.Records.Change("INSERT INTO money_setting (id, tax_bp) VALUES (1, 2000); INSERT INTO extra_price (id, kind, amount_minor) VALUES (7, 'Grip', 600)");
        _street.Records.Change("UPDATE player SET hours_a_time = 2");
    }

    private VisitStore Store => new(_street.Database, new ShopStore(_street.Database), _street.Clock);

    private PaymentStore Payments => new(_street.Database, _street.Clock);

    private FigureStore Figures => new(_street.Database);

    private static VisitEntry Grip => new() { FormKey = FormKey.New(), DoneOn = Street.Today, Works = [VisitWork.Grip], Extras = [7] };

    private long Add(VisitEntry entry) => ((Outcome.Done)Store.Add(Who.Shop, _street.Racket, entry)).Id;

    private VisitRow Visit(long id) => Store.Get(Who.Shop, id)!;

    /// <summary>All that the restring-by dates are worked out of and come to.</summary>
    private string Forecast => string.Join('\n', Kept.Select(_street.Records.Text));

    private static readonly string[] Kept =
    [
        "SELECT group_concat(concat_ws('|', racket_id, strung_on, ended_on, bed_id, mains_material, label_date), ';') FROM forecast",
        "SELECT group_concat(concat_ws('|', id, due_on, due_soon_on, due_because, calendar_number, version), ';') FROM racket",
        "SELECT COUNT(*) FROM due_again",
    ];

    public void Dispose() => _street.Dispose();

    [Fact]
    public void Visit_never_moves_the_restring_forecast()
    {
        var before = Forecast;
        Assert.Contains("2026-11-01", before, StringComparison.Ordinal);
        Assert.NotEqual("", _street.Records.Text("SELECT due_on FROM racket"));

        var visit = Add(Grip with { Works = [.. Enum.GetValues<VisitWork>()], Note = "everything" });
        Store.Change(Who.Shop, visit, Grip with { Version = Visit(visit).Version, DoneOn = Street.Today.AddDays(-30) });
        Assert.Equal(before, Forecast);

        Store.Delete(Who.Shop, visit);
        Assert.Equal(before, Forecast);
    }

    [Fact]
    public void Visit_has_a_ticket_and_the_price_of_what_was_ticked_and_is_paid_like_any_other()
    {
        var visit = Add(Grip);
        Assert.Equal((600L, null, 1002L), (Visit(visit).PriceMinor!.Value, Visit(visit).PaidOn, Visit(visit).Ticket));

        Payments.PayJob(Who.Shop, visit, new PaymentEntry { FormKey = FormKey.New(), PaidOn = Street.Today, Method = PaymentMethod.Cash });

        Assert.Equal(Street.Today, Visit(visit).PaidOn);
        _street.Refused<VisitInTheBooks>(() => Store.Delete(Who.Shop, visit));
    }

    [Theory]
    [InlineData(true, null, 600L)]
    [InlineData(true, 5, 500L)]
    [InlineData(false, 8, 800L)]
    [InlineData(false, null, null)]
    [InlineData(false, 0, null)]
    public void Price_is_what_is_ticked_or_typed(bool ticked, int? typed, long? price)
    {
        var visit = Visit(Add(Grip with { Extras = ticked ? [7] : [], Price = typed }));

        Assert.Equal(price, visit.PriceMinor);
        Assert.Equal(price is null ? Street.Today : (DateOnly?)null, visit.PaidOn);
    }

    [Fact]
    public void Whoever_asks_for_a_job_gets_no_visit_unless_they_say_so()
    {
        var visit = Add(Grip);
        var jobs = new JobStore(_street.Database);

        Assert.Null(jobs.Get(Who.Shop, visit));
        Assert.True(jobs.GetWithVisits(Who.Shop, visit)!.IsVisit);
        Assert.Equal(_street.Strung, new NewJobStore(_street.Database, new ShopStore(_street.Database), _street.Clock).Racket(Who.Shop, _street.Racket)!.LastJobId);
        Assert.Empty(new BenchStore(_street.Database).CameIn(Street.Today).Newest);
    }

    [Fact]
    public void Client_who_asks_for_the_same_again_gets_the_last_strings_and_not_the_visit()
    {
        Add(Grip);
        var orders = new OrderStore(_street.Database, new Records.Outbox.OutboxStore(_street.Database, _street.Time), new ShopStore(_street.Database), new Mails(), _street.Clock);

        var job = Assert.IsType<Outcome.Done>(orders.Ask(Who.Client(_street.Odalys), _street.Racket, FormKey.New(), new JobRequest(AskedIn.OwnPage, ""))).Id;

        Assert.Equal(52m, new JobStore(_street.Database).Get(Who.Shop, job)!.MainsTension);
    }

    [Fact]
    public void Figures_count_it_as_a_visit_and_its_price_as_charged()
    {
        var before = Figures.Year(Who.Shop, 2026)[10];
        Add(Grip);

        var month = Figures.Year(Who.Shop, 2026)[10];

        Assert.Equal((before.Jobs, before.Visits + 1, before.ChargedMinor + 600, before.Days), (month.Jobs, month.Visits, month.ChargedMinor, month.Days));
        Assert.Contains(Figures.Charges(Who.Shop, 2026), charged => charged is { Ticket: 1002, GrossMinor: 600, TaxBp: 2000 } && charged.StrungOn == Street.Today);
    }

    [Fact]
    public void It_stands_on_the_months_bill_as_work_that_was_done()
    {
        var visit = Add(Grip);
        var bills = new BillStore(_street.Database, new ShopStore(_street.Database), _street.Clock);

        var bill = Assert.IsType<Outcome.Done>(bills.Make(Who.Shop, Party.Client(_street.Odalys), Street.Today)).Id;

        Assert.Single(bills.Get(Who.Shop, bill)!.Lines, line => line.JobId == visit && line is { IsVisit: true, AmountMinor: 600 } && line.StrungOn == Street.Today);
        Assert.Single(bills.Get(Who.Shop, bill)!.Lines, line => !line.IsVisit);
    }

    [Fact]
    public void Everybody_sees_day_and_kind_alone()
    {
        Add(Grip with { Works = [VisitWork.Other, VisitWork.Grip], Note = "canary: glued" });
        var code = TagCode.Parse(_street.Records.Text("SELECT code FROM tag WHERE state = 'Live'"));

        var seen = Assert.Single(new TagPageStore(_street.Database).Visits(code, 5));

        Assert.Equal((Street.Today, "Grip, Other"), (seen.DoneOn, string.Join(", ", seen.Works)));
        Assert.Equal(seen, Assert.Single(new OwnPageRacketStore(_street.Database).Visits(_street.Odalys, _street.Racket, 5)));
        Assert.Empty(new OwnPageRacketStore(_street.Database).Visits(_street.Ewan, _street.Racket, 5));
    }

    [Fact]
    public void Page_of_its_player_is_made_anew()
    {
        var mark = _street.Database.Changes.Now;
        Add(Grip);

        Assert.False(_street.Database.Changes.IsFresh(_street.Pim, mark));
    }

    [Fact]
    public void What_does_not_fit_is_refused()
    {
        _street.Refused<VisitInFuture>(() => Store.Add(Who.Shop, _street.Racket, Grip with { DoneOn = Street.Today.AddDays(1) }));
        _street.Refused<NothingDone>(() => Store.Add(Who.Shop, _street.Racket, Grip with { Works = [] }));
        _street.Refused<OtherWorkUnsaid>(() => Store.Add(Who.Shop, _street.Racket, Grip with { Works = [VisitWork.Other], Note = " " }));
        _street.Refused<VisitPriceUnlikely>(() => Store.Add(Who.Shop, _street.Racket, Grip with { Price = -1 }));
    }

    [Fact]
    public void Form_sent_twice_notes_one_visit_and_a_form_that_is_out_of_date_changes_none()
    {
        var twice = Grip;
        var visit = Add(twice);
        Assert.Equal(visit, Add(twice));
        Assert.Single(Store.OfRacket(Who.Shop, _street.Racket));

        _street.Refused<SavedMeanwhile>(() => Store.Change(Who.Shop, visit, Grip with { Version = 99 }));
    }

    [Fact]
    public void Number_of_a_deleted_visit_is_not_given_again()
    {
        var visit = Add(Grip);
        _street.Check(true, () => Store.Delete(Who.Shop, visit));

        Assert.Equal(1003, Visit(Add(Grip)).Ticket);
    }

    [Fact]
    public void Of_a_client_whose_data_was_deleted_its_count_and_money_stay()
    {
        var visit = Add(Grip);
        Payments.PayJob(Who.Shop, visit, new PaymentEntry { FormKey = FormKey.New(), PaidOn = Street.Today, Method = PaymentMethod.Cash });
        var before = Figures.Year(Who.Shop, 2026)[10];

        _street.Database.Write(c => EraseStore.EraseRecords(c, _street.Odalys, _street.Clock.Now));

        Assert.Equal(before, Figures.Year(Who.Shop, 2026)[10]);
        Assert.Equal(0, _street.Records.Count("visit_work"));
    }

    private static VisitEntry Later => Grip with { FormKey = FormKey.New(), DoneOn = null, PromisedFor = Street.Today.AddDays(2) };

    private JobRow Job(long id) => new JobStore(_street.Database).GetWithVisits(Who.Shop, id)!;

    private MoveStore Moves => new(_street.Database, _street.Clock);

    private BackStore Backs => new(_street.Database, _street.Time);

    [Fact]
    public void One_that_waits_stands_on_the_bench_with_its_promise_until_it_is_done_and_then_among_what_is_ready()
    {
        var visit = Add(Later);
        var bench = new BenchStore(_street.Database);
        Assert.Equal((JobState.Waiting, Street.Today.AddDays(2), true, VisitWork.Grip), Assert.Single(bench.Open()) is var row ? (row.State, row.PromisedFor!.Value, row.IsVisit, Assert.Single(row.Works)) : default);
        Assert.Equal(visit, Assert.Single(bench.CameIn(Street.Today).Newest).Id);

        _street.Check(true, () => Store.Done(Who.Shop, visit, Street.Today));

        Assert.Empty(bench.Open());
        Assert.Equal((visit, Street.Today), Assert.Single(bench.Ready()) is var ready ? (ready.Id, ready.ReadyOn!.Value) : default);
        Assert.Equal(new JobMovedOn(1002, JobState.Strung) { IsVisit = true }, _street.Refused<JobMovedOn>(() => Store.Done(Who.Shop, visit, Street.Today)));
    }

    [Fact]
    public void One_that_waits_is_charged_on_the_day_it_is_done_and_handed_out_with_its_payment()
    {
        var before = Figures.Year(Who.Shop, 2026)[10];
        var visit = Add(Later);
        Assert.Equal((600L, null), (Visit(visit).PriceMinor!.Value, Visit(visit).PaidOn));
        Assert.Equal(before, Figures.Year(Who.Shop, 2026)[10]);

        Store.Done(Who.Shop, visit, Street.Today);
        _street.Check(true, () => Moves.Collect(Who.Shop, visit, new HandOutEntry { CollectedOn = Street.Today, Payment = new PaymentEntry { PaidOn = Street.Today, Method = PaymentMethod.Cash } }));

        Assert.Equal((JobState.Collected, Street.Today, Street.Today), (Visit(visit).State, Visit(visit).CollectedOn!.Value, Visit(visit).PaidOn!.Value));
        Assert.Equal((before.Visits + 1, before.ChargedMinor + 600), Figures.Year(Who.Shop, 2026)[10] is var month ? (month.Visits, month.ChargedMinor) : default);
    }

    [Fact]
    public void One_that_costs_nothing_counts_as_paid_once_it_is_done_and_not_while_it_waits()
    {
        var visit = Add(Later with { Extras = [] });
        Assert.Null(Visit(visit).PaidOn);

        Store.Done(Who.Shop, visit, Street.Today);
        Assert.Equal(Street.Today, Visit(visit).PaidOn);

        Backs.Back(Who.Shop, visit, JobState.Strung);
        Assert.Null(Visit(visit).PaidOn);
    }

    [Fact]
    public void Its_moves_are_taken_back_one_by_one_and_a_cancelled_one_waits_again()
    {
        var visit = Add(Later);
        Store.Done(Who.Shop, visit, Street.Today);
        Moves.Collect(Who.Shop, visit, new HandOutEntry { CollectedOn = Street.Today });

        Assert.Equal((JobState.Collected, true), Backs.LastMove(Who.Shop, DateTimeOffset.MinValue) is { } last ? (last.State, last.IsVisit) : default);
        _street.Check(true, () => Backs.Back(Who.Shop, visit, JobState.Collected));
        Assert.Equal(JobState.Strung, Visit(visit).State);
        _street.Check(true, () => Backs.Back(Who.Shop, visit, JobState.Strung));
        Assert.Equal((JobState.Waiting, null), (Visit(visit).State, Visit(visit).DoneOn));
        _street.Check(true, () => Moves.Cancel(Who.Shop, visit));
        _street.Check(true, () => Backs.Back(Who.Shop, visit, JobState.Cancelled));
        Assert.Equal(JobState.Waiting, Visit(visit).State);
    }

    [Fact]
    public void Nobody_strings_one_that_waits_or_puts_it_on_the_machine()
    {
        var visit = Add(Later);

        _street.Check(false, () => Moves.Start(Who.Shop, visit));
        _street.Check(false, () => Moves.MarkStrung(Who.Shop, visit, new StrungEntry { StrungOn = Street.Today }));
        Assert.Equal(_street.Strung, new NewJobStore(_street.Database, new ShopStore(_street.Database), _street.Clock).Racket(Who.Shop, _street.Racket)!.LastJobId);
        Assert.Empty(new TagPageStore(_street.Database).Visits(TagCode.Parse(_street.Records.Text("SELECT code FROM tag WHERE state = 'Live'")), 5));
    }

    [Fact]
    public void Days_of_one_that_waited_keep_their_order()
    {
        _street.Refused<PromisedBeforeIn>(() => Store.Add(Who.Shop, _street.Racket, Later with { PromisedFor = Street.Today.AddDays(-1) }));
        var visit = Add(Later);
        _street.Refused<DoneOutOfOrder>(() => Store.Done(Who.Shop, visit, Street.Today.AddDays(-1)));
        _street.Refused<VisitInFuture>(() => Store.Done(Who.Shop, visit, Street.Today.AddDays(1)));

        _street.Check(true, () => Store.Change(Who.Shop, visit, Later with { Version = Visit(visit).Version, PromisedFor = Street.Today.AddDays(3), Works = [VisitWork.Grommets] }));
        Assert.Equal((JobState.Waiting, Street.Today.AddDays(3), VisitWork.Grommets), (Visit(visit).State, Visit(visit).PromisedFor!.Value, Assert.Single(Visit(visit).Works)));
        Store.Done(Who.Shop, visit, Street.Today);
        _street.Refused<DoneWithoutDay>(() => Store.Change(Who.Shop, visit, Later with { Version = Visit(visit).Version }));
        _street.Refused<DoneOutOfOrder>(() => Store.Change(Who.Shop, visit, Grip with { Version = Visit(visit).Version, DoneOn = Street.Today.AddDays(-1) }));
        _street.Time.Advance(TimeSpan.FromDays(2));
        Assert.Equal(Street.Today, _street.Refused<CollectedBeforeStrung>(() => Moves.Collect(Who.Shop, visit, new HandOutEntry { CollectedOn = Street.Today.AddDays(-1) })).StrungOn);
    }

    [Fact]
    public void Client_is_told_once_that_it_is_ready_and_is_not_forgotten_before_it_is_collected()
    {
        var outbox = new Records.Outbox.OutboxStore(_street.Database, _street.Time);
        var ready = new ReadyStore(_street.Database, outbox, new Mails(), new ShopStore(_street.Database), _street.Clock);
        var forgets = new ForgetStore(_street.Database, outbox, new Mails(), _street.Clock);
        _street.Records.Change("UPDATE job SET paid_on = '2026-11-20'");
        var visit = Add(Later);
        _street.Refused<NotReady>(() => ready.Tell(Who.Shop, visit));
        Store.Done(Who.Shop, visit, Street.Today);

        _street.Check(true, () => ready.Tell(Who.Shop, visit));
        _street.Refused<ToldReadyAlready>(() => ready.Tell(Who.Shop, visit));
        Assert.IsNotType<Outcome.Done>(forgets.Ask(Who.Shop, _street.Odalys));
    }

    [Fact]
    public void Rackets_of_one_household_are_handed_out_together_whatever_was_done_on_them()
    {
        var visit = Add(Later);
        Store.Done(Who.Shop, visit, Street.Today);
        var strung = _street.Records.Job(_street.Racket);
        Moves.MarkStrung(Who.Shop, strung, new StrungEntry { StrungOn = Street.Today });

        var pickUp = new PickUpStore(_street.Database, _street.Clock);
        Assert.IsType<Outcome.Done>(pickUp.Collect(Who.Shop, Party.Client(_street.Odalys), new PickUpEntry { FormKey = FormKey.New(), CollectedOn = Street.Today, Jobs = [visit, strung] }));

        Assert.Equal((JobState.Collected, JobState.Collected), (Job(visit).State, Job(strung).State));
    }

    [Fact]
    public void One_that_is_left_at_a_stop_is_fetched_done_and_brought_on_the_round()
    {
        var stops = new StopStore(_street.Database, _street.Clock);
        var desk = ((Outcome.Done)stops.Add(Who.Shop, new StopEntry { FormKey = FormKey.New(), Name = "Academy desk", Kind = StopKind.Desk })).Id;
        var rounds = new RoundStore(_street.Database, _street.Clock);
        _street.Refused<StopUnknown>(() => Store.Add(Who.Shop, _street.Racket, Later with { LeftAtId = 99 }));
        var visit = Add(Later with { LeftAtId = desk });
        Assert.Equal(visit, Assert.Single(rounds.Parts(Who.Shop).Single().ToFetch).Id);

        _street.Check(true, () => rounds.Fetch(Who.Shop, [visit]));
        _street.Check(true, () => rounds.Unfetch(Who.Shop, [visit]));
        Store.Done(Who.Shop, visit, Street.Today);
        Assert.Empty(rounds.Parts(Who.Shop).Single().ToFetch);
        _street.Check(true, () => rounds.Bring(Who.Shop, [visit]));

        Assert.Equal("Academy desk", Job(visit).IsAt);
        Assert.Equal((desk, desk), (Visit(visit).LeftAtId!.Value, Visit(visit).CollectAtId!.Value));
        Store.Change(Who.Shop, visit, Grip with { Version = Visit(visit).Version });
        Assert.Equal(desk, Visit(visit).CollectAtId);
    }

    [Fact]
    public void One_that_waits_can_be_collected_elsewhere_and_one_with_photos_is_not_deleted()
    {
        var stops = new StopStore(_street.Database, _street.Clock);
        var desk = ((Outcome.Done)stops.Add(Who.Shop, new StopEntry { FormKey = FormKey.New(), Name = "Academy desk", Kind = StopKind.Desk })).Id;
        var visit = Add(Later with { LeftAtId = desk });
        _street.Check(true, () => Store.Change(Who.Shop, visit, Later with { Version = Visit(visit).Version, CollectAtId = desk }));
        Assert.Equal((null, desk), (Visit(visit).LeftAtId, Visit(visit).CollectAtId!.Value));

        new PhotoStore(_street.Database, _street.Time).Add(Who.Shop, visit, FormKey.New(), [new PhotoEntry { Width = 1, Height = 1, Small = [0xFF, 0xD8, 0xFF], Picture = [0xFF, 0xD8, 0xFF] }]);
        _street.Refused<PhotosOnIt>(() => Store.Delete(Who.Shop, visit));
    }

    [Theory]
    [InlineData("UPDATE job SET strung_on = '2026-11-20' WHERE done_on IS NOT NULL")]
    [InlineData("UPDATE job SET state = 'Waiting', collected_on = NULL WHERE done_on IS NOT NULL")]
    [InlineData("UPDATE job SET state = 'OnMachine', collected_on = NULL, done_on = NULL WHERE done_on IS NOT NULL")]
    [InlineData("UPDATE job SET mains_id = 1 WHERE done_on IS NOT NULL")]
    [InlineData("UPDATE job SET mains_tension = 50 WHERE done_on IS NOT NULL")]
    [InlineData("UPDATE job SET done_on = '2026-11-20' WHERE done_on IS NULL")]
    [InlineData("UPDATE job SET crosses_id = NULL WHERE done_on IS NULL")]
    public void Schema_lets_nobody_string_a_visit_or_unstring_a_job(string sql)
    {
        Add(Grip);

        Assert.Throws<Microsoft.Data.Sqlite.SqliteException>(() => _street.Records.Change(sql));
    }
}
