using TagPage.Core.Customising;
using TagPage.Core.Jobs;
using TagPage.Core.Money;
using TagPage.Core.Rackets;
using TagPage.Core.Strings;
using TagPage.Records.Accounts;
using TagPage.Records.Backups;
using TagPage.Records.Clients;
using TagPage.Records.Condition;
using TagPage.Records.Customising;
using TagPage.Records.Events;
using TagPage.Records.Frames;
using TagPage.Records.Jobs;
using TagPage.Records.Labels;
using TagPage.Records.Loans;
using TagPage.Records.LostAndFound;
using TagPage.Records.Machines;
using TagPage.Records.Money;
using TagPage.Records.Outbox;
using TagPage.Records.OwnPages;
using TagPage.Records.PlayTime;
using TagPage.Records.Prepaid;
using TagPage.Records.Rackets;
using TagPage.Records.Readings;
using TagPage.Records.Reminders;
using TagPage.Records.Shop;
using TagPage.Records.Specs;
using TagPage.Records.Stock;
using TagPage.Records.Stops;
using TagPage.Records.StringingLists;
using TagPage.Records.Tests.Cast;
using TagPage.Records.Visits;

namespace TagPage.Records.Tests.Permissions;

/// <summary>Who may do and read what, call by call.</summary>
internal static class Table
{
    /// <summary>The shop's owner, and the same with helpers at the bench.</summary>
    private static readonly Actor[] Owner = [Actor.Shop], Shop = [Actor.Shop, Actor.Bench];

    private static readonly Actor[] OwnerAndHousehold = [Actor.Shop, Actor.Owner], ShopAndHousehold = [Actor.Shop, Actor.Bench, Actor.Owner], Household = [Actor.Owner];

    /// <summary>About themselves: another client does it too, and to nobody else.</summary>
    private static readonly Actor[] EveryClient = [Actor.Owner, Actor.OtherClient];

    /// <summary>The event's own helper, and nobody from another one.</summary>
    private static readonly Actor[] AtDesk = [Actor.Shop, Actor.Bench, Actor.Helper];

    private const string StrungNow = "UPDATE job SET state = 'Strung', strung_on = '2026-11-25' WHERE id = 2";

    private const string NothingOpen = "UPDATE job SET state = 'Cancelled' WHERE id = 2";

    private const string CodesSent = """
        UPDATE own_page_session SET fresh_until = NULL;
        INSERT INTO own_page_code (client_id, made_at, expires_at) SELECT id, '2026-11-25T09:59:00.000Z', '2026-11-25T10:09:00.000Z' FROM client;
        """;

    private const string Due = "UPDATE racket SET own_date = '2026-11-20' WHERE id = 1";

    private const string AReminder = """
        INSERT INTO reminder (client_id, made_at, expires_at) VALUES (1, '2026-11-25T09:00:00.000Z', '2027-01-24T09:00:00.000Z');
        INSERT INTO reminder_racket (reminder_id, racket_id, due) VALUES (1, 1, '2026-11-20');
        """;

    private const string AFailure = """
        INSERT INTO outbox (kind, to_client_id, message_id, state, not_before, made_at)
        VALUES ('ClientNotice', 1, 'failed', 'Failed', '2026-11-25T09:00:00.000Z', '2026-11-25T09:00:00.000Z')
        """;

    private const string AMessage = """
        INSERT INTO found_event (code, racket_id, client_id, kind, at, source, form_key, message, contact)
        VALUES ('0MWF2SBY7KE', 1, 1, 'Message', '2026-11-25T09:00:00.000Z', 'passer-by', 'key', 'It is here', 'ilse@finder.example')
        """;

    private const string AWish = "INSERT INTO client_request (client_id, kind, made_at) VALUES (1, 'Link', '2026-11-25T09:00:00.000Z')";

    private const string APayment = """
        INSERT INTO charge_change (job_id, ticket, kind, is_minor, made_at, made_by) VALUES (2, 1002, 'Whole', 2450, '2026-11-25T09:00:00.000Z', 'Shop');
        INSERT INTO payment (client_id, paid_on, method, amount_minor, made_at, made_by) VALUES (1, '2026-11-25', 'Cash', 1000, '2026-11-25T09:00:00.000Z', 'Shop');
        INSERT INTO payment_share (payment_id, job_id, amount_minor, made_at, made_by) VALUES (1, 2, 1000, '2026-11-25T09:00:00.000Z', 'Shop');
        """;

    private const string ABill = """
        INSERT INTO bill (year, number, client_id, to_name, from_on, to_on, issued_on, shop, currency, paid_minor, made_at, made_by)
        VALUES (2026, 1, 1, 'Odalys Ferran', '2026-11-01', '2026-11-30', '2026-11-25', '{}', 'GBP', 0, '2026-11-25T09:00:00.000Z', 'Shop');
        INSERT INTO bill_line (bill_id, position, job_id, ticket, strung_on, kind, amount_minor, tax_bp) VALUES (1, 1, 1, 1001, '2026-11-01', 'Whole', 2450, 0);
        """;

    private const string Complete = "UPDATE spec SET balance = 320, swing_weight = 290";

    private const string AStock = "INSERT INTO string_stock (string_id, unit, racket_cm, since) VALUES (1, 'Set', 1200, '2026-11-01')";

    private const string ALoan = """
        INSERT INTO loan_racket (name) VALUES ('Demo 1'), ('Demo 3');
        INSERT INTO loan (loan_racket_id, client_id, lent_on, due_on, made_by) VALUES (1, 1, '2026-11-01', '2026-11-08', 'Shop');
        """;

    private const string APrepaid = """
        INSERT INTO payment (id, client_id, paid_on, method, amount_minor, made_at, made_by) VALUES (9, 1, '2026-11-01', 'Cash', 8000, '2026-11-01T09:00:00.000Z', 'Shop');
        INSERT INTO prepaid (client_id, bought_on, restrings, covers, amount_minor, tax_bp, payment_id, made_at, made_by)
        VALUES (1, '2026-11-01', 5, 'LabourAndStrings', 8000, 0, 9, '2026-11-01T09:00:00.000Z', 'Shop');
        """;

    private const string AVisit = """
        INSERT INTO job (id, ticket, racket_id, state, mains_supplied_by, crosses_supplied_by, tension_unit, received_on, collected_on, done_on)
        VALUES (9, 1009, 1, 'Collected', 'Client', 'Client', 'Lb', '2026-11-20', '2026-11-20', '2026-11-20');
        INSERT INTO visit_work (job_id, work) VALUES (9, 'Grip');
        """;

    private const string AWaitingVisit = """
        INSERT INTO job (id, ticket, racket_id, state, mains_supplied_by, crosses_supplied_by, tension_unit, received_on)
        VALUES (9, 1009, 1, 'Waiting', 'Client', 'Client', 'Lb', '2026-11-20');
        INSERT INTO visit_work (job_id, work) VALUES (9, 'Grip');
        """;

    private const string AStop = """
        INSERT INTO stop (name, kind, position) VALUES ('Lido desk', 'Desk', 1), ('Box', 'DropBox', 2);
        INSERT INTO job_stop (job_id, left_at, collect_at) VALUES (2, 1, 1);
        """;

    private const string AMachine = "INSERT INTO machine (name, kind, made_on) VALUES ('Machine 1', 'Crank', '2026-11-01')";

    private const string AFrame = "INSERT INTO frame (sport, name, name_key, most_tension) SELECT sport, frame, upper(frame), 40 FROM racket WHERE id = 1";

    private const string APiece = "INSERT INTO added_mass (racket_id, place, at, weight, material, added_on) VALUES (1, 'Handle', 8, 3, 'Lead', '2026-11-01')";

    private const string ToldBy77 = """
        INSERT INTO outbox (id, kind, to_client_id, message_id, state, not_before, made_at)
        VALUES (77, 'ClientNotice', 1, 'told', 'Failed', '2026-11-25T09:00:00.000Z', '2026-11-25T09:00:00.000Z');
        UPDATE job SET told_mail_id = 77 WHERE id = 2;
        """;

    private const string APhoto = "INSERT INTO photo (job_id, made_at, width, height, small, picture) VALUES (2, '2026-11-25T09:00:00.000Z', 4, 3, x'FFD8FF', x'FFD8FF')";

    private const string AGuide = "INSERT INTO care_guide (title, name, markdown) VALUES ('In the sun', 'sun', 'Put it in the shade.')";

    public static IReadOnlyList<Row> Rows { get; } = [.. Trust(), .. Bench(), .. Money(), .. OnFile(), .. Desk(), .. Play(), .. Reminders(), .. LostAndFound(), .. OwnPage(), .. EventDesk()];

    private const string GivenUp = """
        INSERT INTO outbox (kind, to_client_id, message_id, state, tries, not_before, made_at)
        VALUES ('ClientNotice', 1, 'given-up', 'Failed', 8, '2026-11-25T09:00:00.000Z', '2026-11-25T09:00:00.000Z')
        """;

    private static Row[] Trust() =>
    [
        new(Owner, (s, who) => s.BackupSettings.Change(who, new BackupSetting { Days = 3 })),
        new(Owner, (s, who) => s.GivenUp.RetryAll(who), GivenUp),
        new(Owner, (s, who) => s.Audit.Page(who, long.MaxValue), "INSERT INTO audit (event, detail, first_at, last_at) VALUES (1001, '', '2026-11-25T09:00:00.000Z', '2026-11-25T09:00:00.000Z')"),
        new(Owner, (s, who) => s.Privacy.Get(who)),
        new(Owner, (s, who) => s.Privacy.AllLeaving(who), "UPDATE client SET forget_at = '2026-12-01T09:00:00.000Z' WHERE id = 1"),
        new(Owner, (s, who) => s.Privacy.AllDone(who), "INSERT INTO audit (event, detail, first_at, last_at) VALUES (1202, 'client 9', '2026-11-25T09:00:00.000Z', '2026-11-25T09:00:00.000Z')"),
        new(Owner, (s, who) => s.GivenUp.LetAllGo(who), GivenUp),
        new(Owner, (s, who) => s.People.All(who), AHelper),
        new(Owner, (s, who) => s.People.Get(who, "bram"), AHelper),
        new(Owner, (s, who) => s.People.Change(who, "bram", new HelperEntry { Name = "Bram", NormalizedName = "BRAM" }), AHelper),
        new(Owner, (s, who) => s.People.SignOut(who, "bram"), AHelper),
        new(Owner, (s, who) => s.People.End(who, "bram"), AHelper),
        new(Owner, (s, who) => s.Tablets.All(who), ATablet),
        new(Owner, (s, who) => s.Tablets.Share(who, "bench", "secret")),
        new(Owner, (s, who) => s.Tablets.End(who, 1), ATablet),
        new(Owner, (s, who) => s.Invitations.Invite(who, new Account { Name = "tove", NormalizedName = "TOVE", Role = Roles.Bench }, Scene.Key, _ => default)),
        new(Owner, (s, who) => s.Invitations.Renew(who, "bram", _ => default), AHelper),
        new(Owner, (s, who) => s.Invitations.Token(who, 1), AHelper + "INSERT INTO invitation (account_id, expires_at) VALUES ('bram', '2026-11-28')"),
    ];

    private const string ATablet = "INSERT INTO shared_tablet (secret_hash, name, made_at) VALUES ('hash', 'bench', '2026-11-25T09:00:00.000Z')";

    private const string AHelper = """
        INSERT INTO account (id, name, normalized_name, password_hash, security_stamp, concurrency_stamp, role, made_at)
        VALUES ('bram', 'bram', 'BRAM', '', '', '', 'Bench', '2026-11-25T09:00:00.000Z');
        INSERT INTO session (id, account_id, made_at) VALUES ('0123456789abcdef0123456789abcdef', 'bram', '2026-11-25T09:00:00.000Z');
        """;

    private const string ADeed = AHelper + """
        INSERT INTO account (id, name, normalized_name, password_hash, security_stamp, concurrency_stamp, role, made_at)
        VALUES ('runa', 'runa', 'RUNA', '', '', '', 'Owner', '2026-11-25T09:00:00.000Z');
        INSERT INTO job_deed (job_id, deed, made_at, made_by) VALUES (2, 'Started', '2026-11-25T09:00:00.000Z', 'bram');
        """;

    private static Row[] Bench() =>
    [
        new(Shop, (s, who) => s.Moves.Start(who, s.Waiting)),
        new(Shop, (s, who) => s.Moves.Receive(who, s.Waiting)),
        new(Shop, (s, who) => s.Moves.MarkStrung(who, s.Waiting, new StrungEntry { StrungOn = Street.Today })),
        new(Shop, (s, who) => s.Moves.Collect(who, s.Waiting, new HandOutEntry { CollectedOn = Street.Today }), StrungNow),
        new(Shop, (s, who) => s.Moves.Cancel(who, s.Waiting)),
        new(Owner, (s, who) => s.StringingLists.Begin(who, new StringingListEntry { FormKey = Scene.Key, Lines = new[] { new StringingLine { Client = "Ivo" } }, Headings = "[]" })),
        new(Owner, (s, who) => s.WholeShops.Read(who, null)),
        new(Owner, (s, who) => s.WholeShops.TakeIn(who, Scene.Key, s.NoRecords), """
            DELETE FROM tag; DELETE FROM job_request; DELETE FROM reading; DELETE FROM job; DELETE FROM logged_hours; DELETE FROM pause; DELETE FROM spec; DELETE FROM racket;
            DELETE FROM player; DELETE FROM own_page_session; DELETE FROM own_page_code; DELETE FROM own_page_link; DELETE FROM client; DELETE FROM payer
            """),
        new(Owner, (s, who) => s.TakeBacks.Begin(who, 1), "INSERT INTO stringing_list (name, state, lines, made_at) VALUES ('list.csv', 'In', 0, '2026-11-25T09:00:00.000Z')"),
        new(Shop, (s, who) => s.Backs.Back(who, s.Waiting, JobState.Strung), StrungNow),
        new(Shop, (s, who) => s.Backs.BackTogether(who, new[] { s.Waiting }, JobState.Strung), StrungNow),
        new(Shop, (s, who) => s.Backs.LastMove(who, DateTimeOffset.UnixEpoch), "UPDATE job SET state = 'OnMachine', moved_at = '2026-11-25T09:00:00.000Z' WHERE id = 2"),
        new(Shop, (s, who) => s.Edits.Change(who, s.Waiting, Scene.Changed)),
        new(Shop, (s, who) => s.JobRackets.Move(who, s.Waiting, new MovedJobEntry { Version = 1, RacketId = s.Racket }), "DELETE FROM job_request"),
        new(Owner, (s, who) => s.JobDeletes.Delete(who, s.Waiting), "DELETE FROM job_request"),
        new(Shop, (s, who) => s.News.Add(who, s.Racket, Scene.Order)),
        new(Shop, (s, who) => s.News.Racket(who, s.Racket)),
        new(Shop, (s, who) => s.Ready.Tell(who, s.Waiting), StrungNow),
        new(Shop, (s, who) => s.Ready.TellAll(who, Party.Client(s.Street.Odalys)), StrungNow),
        new(Shop, (s, who) => s.Ready.ToldBy(who, 77), ToldBy77),
        new(Shop, (s, who) => s.Together.Get(who, Party.Client(s.Street.Odalys))),
        new(Shop, (s, who) => s.DropOffs.Rackets(who, Party.Client(s.Street.Odalys))),
        new(Shop, (s, who) => s.DropOffs.Add(who, Party.Client(s.Street.Odalys), new DropOffEntry { FormKey = Scene.Key, ReceivedOn = Street.Today, Lines = new[] { new DropOffLine { RacketId = s.Racket, Job = Scene.Order } } })),
        new(Shop, (s, who) => s.PickUps.Credit(who, Party.Client(s.Street.Odalys))),
        new(Shop, (s, who) => s.PickUps.Collect(who, Party.Client(s.Street.Odalys), new PickUpEntry { FormKey = Scene.Key, CollectedOn = Street.Today, Jobs = new[] { s.Waiting } }), StrungNow),
        new(Shop, (s, who) => s.Confirms.Confirm(who, s.Waiting), AFrame),
        new(Shop, (s, who) => s.Conditions.OfJob(who, s.Waiting)),
        new(Shop, (s, who) => s.Conditions.OfRacket(who, s.Second), APhoto),
        new(Shop, (s, who) => s.Conditions.Note(who, s.Waiting, new ConditionEntry { Grip = PartState.Worn })),
        new(Shop, (s, who) => s.Photos.Get(who, 1), APhoto),
        new(Shop, (s, who) => s.Photos.Picture(who, 1), APhoto),
        new(Shop, (s, who) => s.Photos.Small(who, 1), APhoto),
        new(Shop, (s, who) => s.Photos.Add(who, s.Waiting, Scene.Key, Scene.APhoto)),
        new(Shop, (s, who) => s.Photos.Remove(who, 1), APhoto),
        new(Shop, (s, who) => s.Jobs.Get(who, s.Waiting)),
        new(Shop, (s, who) => s.Deeds.Of(who, s.Waiting), ADeed),
        new(Household, (s, who) => s.Feels.Get(who, s.Strung)),
        new(Household, (s, who) => s.Feels.Save(who, s.Strung, new FeelStore.Row { Bed = FeelBed.Right })),
    ];

    private static Row[] Money() =>
    [
        new(Shop, (s, who) => s.Charges.Get(who, s.Waiting)),
        new(Shop, (s, who) => s.Charges.Changes(who, s.Waiting), APayment),
        new(Shop, (s, who) => s.Charges.Save(who, s.Waiting, 1, new ChargeLine[] { new() { Kind = ChargeKind.Labour, AmountMinor = 1800 } })),
        new(Shop, (s, who) => s.Payments.OfJob(who, s.Waiting), APayment),
        new(Owner, (s, who) => s.Payments.Get(who, 1), APayment),
        new(Shop, (s, who) => s.Payments.CreditFor(who, s.Waiting)),
        new(Shop, (s, who) => s.Payments.PayJob(who, s.Waiting, new PaymentEntry { PaidOn = Street.Today, Method = PaymentMethod.Cash })),
        new(Owner, (s, who) => s.Payments.TakeBack(who, 1), APayment),
        new(Owner, (s, who) => s.Payments.PayAccount(who, s.OfOdalys, new PaymentEntry { FormKey = Scene.Key, PaidOn = Street.Today, Method = PaymentMethod.Cash, AmountMinor = 500 })),
        new(Owner, (s, who) => s.Payments.OfParty(who, s.OfOdalys), APayment),
        new(Owner, (s, who) => s.Owed.List(who)),
        new(Household, (s, who) => s.Owed.OfClient(who), "UPDATE job SET paid_on = NULL"),
        new(Owner, (s, who) => s.Figures.Year(who, 2026)),
        new(Owner, (s, who) => s.Figures.Strings(who, 2026)),
        new(Owner, (s, who) => s.Figures.StayAway(who, new DateOnly(2027, 1, 1))),
        new(Owner, (s, who) => s.Figures.Payments(who, 2026), APayment),
        new(Owner, (s, who) => s.Figures.Charges(who, 2026)),
        new(Owner, (s, who) => s.Owed.Get(who, s.OfOdalys)),
        new(Owner, (s, who) => s.Bills.Months(who, s.OfOdalys)),
        new(Owner, (s, who) => s.Bills.Make(who, s.OfOdalys, new DateOnly(2026, 11, 1))),
        new(Owner, (s, who) => s.Bills.Of(who, s.OfOdalys), ABill),
        new(Owner, (s, who) => s.Bills.Get(who, 1), ABill),
        new(Owner, (s, who) => s.Bills.Cancel(who, 1), ABill),
        new(Owner, (s, who) => s.BillMails.Send(who, 1, new WrittenMail("Bill", MailText.Words("Attached.")), true), ABill),
        new(Owner, (s, who) => s.Prices.Save(who, new PriceList { LabourMinor = 1800 })),
    ];

    private static Row[] OnFile() =>
    [
        new(Shop, (s, who) => s.Tags.Make(who, s.Second, Scene.Key)),
        new(Shop, (s, who) => s.Tags.MakeMissing(who, new[] { s.Second })),
        new(Shop, (s, who) => s.Tags.Replace(who, s.Live, Scene.Key)),
        new(Shop, (s, who) => s.Tags.Retire(who, s.Live)),
        new(Owner, (s, who) => s.Tags.BlockFinders(who, s.Live, true)),
        new(Shop, (s, who) => s.Tags.Link(who, s.Blank, s.Second)),
        new(Shop, (s, who) => s.Rackets.Add(who, s.Street.Pim, Scene.Frame)),
        new(Shop, (s, who) => s.Rackets.Change(who, s.Racket, Scene.Frame)),
        new(Shop, (s, who) => s.HandOvers.HandOver(who, s.Racket, s.Bo, new HandOverEntry { FormKey = Scene.Key, Version = 1, Number = 1 })),
        new(Shop, (s, who) => s.Players.Add(who, s.Street.Odalys, Scene.Player)),
        new(Shop, (s, who) => s.Players.Change(who, s.Street.Pim, Scene.Player)),
        new(Shop, (s, who) => s.Clients.Add(who, Scene.NewClient)),
        new(Shop, (s, who) => s.Clients.Change(who, s.Street.Odalys, Scene.Client)),
        new(Shop, (s, who) => s.Strings.Add(who, Scene.NewString)),
        new(Shop, (s, who) => s.Strings.Change(who, 1, Scene.NewString)),
        new(Owner, (s, who) => s.Stock.Keep(who, 1, new StockEntry { RacketCm = 1200 })),
        new(Owner, (s, who) => s.Stock.Buy(who, 1, new BoughtEntry { FormKey = Scene.Key, Centimetres = 1200 }), AStock),
        new(Owner, (s, who) => s.Stock.Count(who, 1, new CountEntry { FormKey = Scene.Key, Centimetres = 1200 }), AStock),
        new(Owner, (s, who) => s.Machines.Add(who, new MachineEntry { FormKey = Scene.Key, Name = "Machine 2" })),
        new(Owner, (s, who) => s.Machines.Change(who, 1, new MachineEntry { Version = 1, Name = "Machine 2" }), AMachine),
        new(Owner, (s, who) => s.Stops.Add(who, new StopEntry { FormKey = Scene.Key, Name = "Academy desk" })),
        new(Owner, (s, who) => s.Stops.Change(who, 1, new StopEntry { Version = 1, Name = "Academy desk" }), AStop),
        new(Owner, (s, who) => s.Stops.Earlier(who, 2), AStop),
        new(Shop, (s, who) => s.Rounds.Parts(who), AStop),
        new(Shop, (s, who) => s.Rounds.LastMove(who, DateTimeOffset.UnixEpoch), AStop + "UPDATE job_stop SET fetched_at = '2026-11-25T09:00:00.000Z'"),
        new(Shop, (s, who) => s.Rounds.Fetch(who, new[] { s.Waiting }), AStop),
        new(Shop, (s, who) => s.Rounds.Unfetch(who, new[] { s.Waiting }), AStop + "UPDATE job_stop SET fetched_at = '2026-11-25T09:00:00.000Z'"),
        new(Shop, (s, who) => s.Rounds.Bring(who, new[] { s.Waiting }), AStop + StrungNow),
        new(Shop, (s, who) => s.Rounds.Unbring(who, new[] { s.Waiting }), AStop + StrungNow + "; UPDATE job_stop SET brought_at = '2026-11-25T09:00:00.000Z'"),
        new(Owner, (s, who) => s.LoanRackets.Add(who, new LoanRacketEntry { FormKey = Scene.Key, Name = "Demo 2" })),
        new(Owner, (s, who) => s.LoanRackets.Change(who, 1, new LoanRacketEntry { Version = 1, Name = "Demo 2" }), ALoan),
        new(Shop, (s, who) => s.LoanRackets.List(who), ALoan),
        new(Shop, (s, who) => s.LoanRackets.Get(who, 1), ALoan),
        new(Shop, (s, who) => s.Loans.Get(who, 1), ALoan),
        new(Shop, (s, who) => s.Loans.OfClient(who, 1), ALoan),
        new(Shop, (s, who) => s.Loans.Overdue(who), ALoan),
        new(Shop, (s, who) => s.Loans.Lend(who, 1, new LoanEntry { FormKey = Scene.Key, RacketId = 2, LentOn = Street.Today }), ALoan),
        new(Shop, (s, who) => s.Loans.TakeBack(who, 1, Street.Today), ALoan),
        new(Shop, (s, who) => s.Loans.Reopen(who, 1), ALoan + "UPDATE loan SET back_on = '2026-11-24'"),
        new(Shop, (s, who) => s.Prepaid.Of(who, Party.Client(1)), APrepaid),
        new(Shop, (s, who) => s.Prepaid.Sell(who, Party.Client(1), new PrepaidEntry { FormKey = Scene.Key, BoughtOn = Street.Today, Restrings = 5, AmountMinor = 8000 })),
        new(Shop, (s, who) => s.Prepaid.ForJob(who, 2), APrepaid),
        new(Shop, (s, who) => s.Prepaid.Use(who, 2), APrepaid),
        new(Shop, (s, who) => s.Prepaid.GiveBack(who, 2), APrepaid + "INSERT INTO prepaid_use (prepaid_id, job_id, ticket, used_on, made_at, made_by) VALUES (1, 2, 1002, '2026-11-25', '2026-11-25T09:00:00.000Z', 'Shop')"),
        new([Actor.Owner], (s, who) => s.Prepaid.LeftOfClient(who), APrepaid),
        new(Shop, (s, who) => s.Prepaid.Get(who, 1), APrepaid),
        new(OwnerAndHousehold, (s, who) => s.Prepaid.LostWith(who, 1), APrepaid),
        new(Owner, (s, who) => s.Bills.MakePrepaid(who, s.OfOdalys, 1), APrepaid),
        new(Shop, (s, who) => s.Visits.Add(who, 1, new VisitEntry { FormKey = Scene.Key, DoneOn = Street.Today, Works = new[] { VisitWork.Grip } })),
        new(Shop, (s, who) => s.Visits.Change(who, 9, new VisitEntry { Version = 1, DoneOn = Street.Today, Works = new[] { VisitWork.Grip } }), AVisit),
        new(Shop, (s, who) => s.Visits.Done(who, 9, Street.Today), AWaitingVisit),
        new(Owner, (s, who) => s.Visits.Delete(who, 9), AVisit),
        new(Shop, (s, who) => s.Visits.Get(who, 9), AVisit),
        new(Shop, (s, who) => s.Visits.OfRacket(who, 1), AVisit),
        new(Shop, (s, who) => s.Jobs.GetWithVisits(who, 9), AVisit),
        new(Shop, (s, who) => s.Machines.Check(who, 1, new CheckEntry { FormKey = Scene.Key, CheckedOn = Street.Today, Reference = 50, Measured = 51 }), AMachine),
        new(Owner, (s, who) => s.Frames.Add(who, new FrameEntry { FormKey = Scene.Key, Name = "Heron 100" })),
        new(Owner, (s, who) => s.Frames.Change(who, 1, new FrameEntry { Version = 1, Name = "Heron 100" }), AFrame),
        new(Shop, (s, who) => s.Specs.Add(who, s.Racket, new SpecEntry { FormKey = Scene.Key, MeasuredOn = Street.Today, Weight = 301 })),
        new(Shop, (s, who) => s.Specs.Change(who, s.Racket, 1, new SpecEntry { Version = 1, MeasuredOn = Street.Today, Weight = 302 })),
        new(Shop, (s, who) => s.Specs.ShowOnTag(who, s.Racket, true)),
        new(Shop, (s, who) => s.Places.Save(who, s.Racket, new FramePlaceEntry[] { new() { Name = "Throat", At = 35, Most = 20 } })),
        new(Shop, (s, who) => s.Pieces.Note(who, s.Racket, new PieceEntry { FormKey = Scene.Key, Place = "Handle", At = 8, Weight = 3, AddedOn = Street.Today })),
        new(Shop, (s, who) => s.Pieces.TakeOff(who, s.Racket, 1, Street.Today), APiece),
        new(Shop, (s, who) => s.Pieces.Forget(who, s.Racket, 1), APiece),
        new(Shop, (s, who) => s.Customising.Apply(who, Scene.Key, s.Custom), Complete),
        new(Owner, (s, who) => s.Instruments.Add(who, new InstrumentEntry { FormKey = Scene.Key, Name = "old gauge", Scale = ReadingScale.Hertz })),
        new(Owner, (s, who) => s.Instruments.Change(who, 1, new InstrumentEntry { Version = 1, Name = "old gauge", Scale = ReadingScale.Stiffness })),
    ];

    private static Row[] Desk() =>
    [
        new(Shop, (s, who) => s.FirstVisits.Add(who, Scene.Visit)),
        new(Owner, (s, who) => s.Settings.SaveShop(who, Scene.Moved)),
        new(Owner, (s, who) => s.Settings.SavePage(who, new HomePageEntry { Version = 1, HomeMarkdown = "Come in" })),
        new(Owner, (s, who) => s.Settings.SaveLives(who, 1, Scene.Values)),
        new(Owner, (s, who) => s.Settings.SaveCustomising(who, 1, new CustomisingValues { StepG = 1 })),
        new(Owner, (s, who) => s.Settings.SaveHelpersSecondStep(who, 1, true)),
        new(Owner, (s, who) => s.Settings.SaveBench(who, new BenchEntry { Version = 1, Timer = true })),
        new(Owner, (s, who) => s.Settings.SaveReminders(who, new RemindersEntry { Version = 1, DaysBetween = 21 })),
        new(Owner, (s, who) => s.Settings.SaveMessages(who, new MessagesEntry { Version = 1, QuietFromHour = 19, QuietUntilHour = 9 })),
        new(Owner, (s, who) => s.Openings.SaveWeek(who, Scene.Week)),
        new(Owner, (s, who) => s.Openings.AddClosed(who, new ClosedDaysEntry { FormKey = Scene.Key, FromOn = Street.Today })),
        new(Owner, (s, who) => s.Openings.RemoveClosed(who, 1), "INSERT INTO closed_days (from_on, to_on) VALUES ('2026-12-24', '2027-01-02')"),
        new(Owner, (s, who) => s.Addresses.Choose(who, "https://new.example")),
        new(Owner, (s, who) => s.TestMails.Send(who, Scene.Key, "test", "test"), "UPDATE shop SET mail = 'shop@heron.example'"),
        new(Owner, (s, who) => s.Guides.Add(who, Scene.Guide)),
        new(Owner, (s, who) => s.Guides.Change(who, 1, Scene.Guide), AGuide),
        new(Owner, (s, who) => s.Guides.Remove(who, 1), AGuide),
        new(Owner, (s, who) => s.LabelSettings.Save(who, new LabelSettings { TapeMm = 24 })),
        new(Shop, (s, who) => s.Labels.Remember(who, s.Racket, new LabelEntry { OwnLine = "Court 3" }, Street.Today)),
        new(Owner, (s, who) => s.Logos.Save(who, new byte[] { 2 }, 90)),
        new(Owner, (s, who) => s.Logos.Remove(who), "INSERT INTO label_logo (id, png, threshold) VALUES (1, x'01', 128)"),
        new(Shop, (s, who) => s.Rolls.Order(who, 5, new LabelSettings(), Scene.Key)),
    ];

    private static Row[] Play() =>
    [
        new(ShopAndHousehold, (s, who) => s.Readings.Bed(who, s.Strung)),
        new(ShopAndHousehold, (s, who) => s.Readings.Add(who, s.Strung, new ReadingEntry { FormKey = Scene.Key, TakenOn = Street.Today, Value = 588, InstrumentId = 1 })),
        new(Shop, (s, who) => s.Readings.Get(who, s.Later)),
        new(Household, (s, who) => s.Readings.Pitches(who, s.Strung), "UPDATE instrument SET scale = 'Hertz', kind = 'Phones'"),
        new(Shop, (s, who) => s.Readings.Count(who, s.Later), "UPDATE reading SET doubtful = 1 WHERE first = 0"),
        new(Shop, (s, who) => s.Readings.Remove(who, s.Later)),
        new(ShopAndHousehold, (s, who) => s.Hours.Of(who, s.Racket)),
        new(ShopAndHousehold, (s, who) => s.Hours.Since(who, s.Racket, null, 9)),
        new(ShopAndHousehold, (s, who) => s.Hours.Get(who, 1)),
        new(ShopAndHousehold, (s, who) => s.Hours.Add(who, s.Racket, new HoursEntry { FormKey = Scene.Key, PlayedOn = Street.Today, Hours = 2 })),
        new(ShopAndHousehold, (s, who) => s.Hours.Remove(who, 1)),
        new(ShopAndHousehold, (s, who) => s.Pauses.Now(who, s.Street.Pim)),
        new(ShopAndHousehold, (s, who) => s.Pauses.Begin(who, s.Street.Pim), "DELETE FROM pause"),
        new(ShopAndHousehold, (s, who) => s.Pauses.End(who, s.Street.Pim)),
        new(Shop, (s, who) => s.Pauses.Add(who, s.Street.Pim, new PauseEntry { FormKey = Scene.Key, FromOn = Street.Today })),
        new(Shop, (s, who) => s.Pauses.Change(who, 1, new PauseEntry { FromOn = Street.Today })),
        new(Shop, (s, who) => s.Pauses.Remove(who, 1)),
    ];

    private static Row[] Reminders() =>
    [
        new(Owner, (s, who) => s.Payers.Add(who, Scene.Payer)),
        new(Owner, (s, who) => s.Payers.Change(who, 7, Scene.Payer), "INSERT INTO payer (id, name) VALUES (7, 'Academy')"),
        new(Owner, (s, who) => s.NewReminders.Add(who, s.Street.Odalys, new NewReminderEntry { FormKey = Scene.Key }), Due),
        new(Owner, (s, who) => s.Sending.Mail(who, 1, "due", "due"), AReminder),
        new(Owner, (s, who) => s.Sending.NoteSent(who, 1, SentHow.SmsApp), AReminder),
        new(Owner, (s, who) => s.Sending.Discard(who, 1), AReminder),
        new(Owner, (s, who) => s.Sending.Retry(who, 1), AFailure),
        new(Owner, (s, who) => s.Batches.Make(who, Scene.Key, new[] { s.Street.Odalys })),
        new(Owner, (s, who) => s.Batches.Stop(who, 1), "INSERT INTO reminder_batch (made_at) VALUES ('2026-11-25T09:00:00.000Z')"),
        new(OwnerAndHousehold, (s, who) => s.Answers.Save(who, s.Reminder, s.NotYet), AReminder),
        new(OwnerAndHousehold, (s, who) => s.Answers.Stop(who, s.Street.Odalys)),
    ];

    private static Row[] LostAndFound() =>
    [
        new(ShopAndHousehold, (s, who) => s.Lost.Get(who, s.Racket)),
        new(ShopAndHousehold, (s, who) => s.Lost.Lose(who, s.Racket, new LostEntry { Since = Street.Today, Note = "at the pool" })),
        new(ShopAndHousehold, (s, who) => s.Lost.Back(who, s.Racket), "UPDATE racket SET lost_since = '2026-11-20' WHERE id = 1"),
        new(Household, (s, who) => s.FinderReplies.Send(who, s.FinderReplies.Get(1)!, "At six?"), AMessage),
        new(ShopAndHousehold, (s, who) => s.Choices.Get(who, s.Street.Odalys)),
        new(ShopAndHousehold, (s, who) => s.Choices.Change(who, s.Street.Odalys, new FoundChoiceEntry { Version = 1, Choice = FoundChoice.Contact })),
        new(ShopAndHousehold, (s, who) => s.Choices.Withdraw(who, s.Street.Odalys), "UPDATE client SET found_choice = 'Contact' WHERE id = 1"),
    ];

    private static Row[] OwnPage() =>
    [
        new(Household, (s, who) => s.Orders.Ask(who, s.Racket, Scene.Key, Scene.Same)),
        new(Household, (s, who) => s.Orders.Cancel(who, s.Waiting)),
        new(Household, (s, who) => s.PassOns.PassOn(who, s.Racket)),
        new(Household, (s, who) => s.OwnClients.Make(who, s.Street.Pim, "pim@ferran.example", null)),
        new(ShopAndHousehold, (s, who) => s.OwnRackets.SetRole(who, s.Racket, RacketState.Spare)),
        new(OwnerAndHousehold, (s, who) => s.Forgets.Ask(who, s.Street.Odalys), NothingOpen),
        new(OwnerAndHousehold, (s, who) => s.Forgets.Undo(who, s.Street.Odalys), "UPDATE client SET forget_at = '2026-12-01T10:00:00.000Z' WHERE id = 1"),
        new(Owner, (s, who) => s.Requests.Done(who, 1), AWish),
        new(Owner, (s, who) => s.Links.Make(who, s.Street.Odalys)),
        new(Owner, (s, who) => s.Links.Mail(who, 1)),
        new(Owner, (s, who) => s.Links.Revoke(who, 1)),
        new(OwnerAndHousehold, (s, who) => s.Sessions.EndAll(who, s.Street.Odalys)),
        new(EveryClient, (s, who) => s.Details.ChangeContact(who, Scene.Contact), "UPDATE client SET version = 2"),
        new(EveryClient, (s, who) => s.Details.ChangeReminders(who, new ReminderWishEntry { Language = "es" })),
        new(EveryClient, (s, who) => s.Details.AskAboutPayer(who, "The academy pays", Scene.Key)),
        new(EveryClient, (s, who) => s.Codes.Send(who)),
        new(EveryClient, (s, who) => s.Codes.Try(who, s.Digits(who)), CodesSent),
        new([Actor.Shop, Actor.Bench, Actor.Owner, Actor.OtherClient], (s, who) => s.Codes.IsFresh(who)),
    ];

    private const string AnEvent = """
        INSERT INTO event (name, from_on, to_on, last_number) VALUES ('Harbour Open', '2026-11-25', '2026-11-25', 1);
        INSERT INTO event_technician (event_id, name) VALUES (1, 'Runa');
        INSERT INTO event_hours (technician_id, from_at, to_at) VALUES (1, '2026-11-25 09:00', '2026-11-25 19:00');
        INSERT INTO event_entry (job_id, event_id, number, came_at, needed_by, promised, moved_from)
        VALUES (2, 1, 1, '2026-11-25 09:30', '2026-11-25 12:00', '2026-11-25 12:00', '2026-11-25 11:50');
        """;

    private const string InCredit = "; INSERT INTO payment (client_id, paid_on, method, amount_minor, made_at, made_by) VALUES (1, '2026-11-25', 'Cash', 5000, '2026-11-25T09:00:00.000Z', 'Shop')";

    private const string OnBreak = "INSERT INTO event_hours (technician_id, is_break, from_at, to_at) VALUES (1, 1, '2026-11-25 09:30', '2026-11-25 11:00')";

    private const string OnMachine = AnEvent + "UPDATE job SET state = 'OnMachine' WHERE id = 2";

    private const string StrungThere = AnEvent + StrungNow;

    private const string HandedOut = AnEvent + "UPDATE job SET state = 'Collected', strung_on = received_on, collected_on = received_on WHERE id = 2";

    private const string Priced = HandedOut + "; INSERT INTO charge (job_id, kind, amount_minor, tax_bp) VALUES (2, 'Whole', 1200, 0); UPDATE job SET price_minor = 1200, paid_on = NULL WHERE id = 2";

    private const string ABilledEntry = ABill + "INSERT INTO bill_line (bill_id, position, job_id, ticket, strung_on, kind, amount_minor, tax_bp) VALUES (1, 2, 2, 1002, '2026-11-25', 'Whole', 1200, 0)";

    private static Row[] EventDesk() =>
    [
        new(AtDesk, (s, who) => s.Events.Get(who, 1), AnEvent),
        new(Owner, (s, who) => s.Events.Add(who, Scene.Event)),
        new(Owner, (s, who) => s.Events.Change(who, 1, Scene.Event), AnEvent),
        new(Owner, (s, who) => s.Events.Close(who, 1), AnEvent + "DELETE FROM event_entry"),
        new(Owner, (s, who) => s.Events.Reopen(who, 1), AnEvent),
        new(Owner, (s, who) => s.Events.SignHelpersOut(who, 1), AnEvent),
        new(Owner, (s, who) => s.Technicians.Add(who, 1, Scene.Technician), AnEvent),
        new(Owner, (s, who) => s.Technicians.Change(who, 1, 1, Scene.Technician), AnEvent),
        new(AtDesk, (s, who) => s.Technicians.SetAway(who, 1, 1, true), AnEvent),
        new(AtDesk, (s, who) => s.Technicians.Pause(who, 1, 1, 20), AnEvent),
        new(AtDesk, (s, who) => s.Technicians.EndBreak(who, 1, 1), AnEvent + OnBreak),
        new(AtDesk, (s, who) => s.Desks.Get(who, 1), AnEvent),
        new(AtDesk, (s, who) => s.Intakes.Add(who, 1, Scene.Intake), AnEvent),
        new(AtDesk, (s, who) => s.Intakes.Ask(who, 1, Scene.Intake, Core.Sports.Sport.Tennis), AnEvent),
        new(AtDesk, (s, who) => s.Intakes.Sent(who, 1, "sent a moment ago"), AnEvent + "INSERT INTO used_form_key (form_key, made_id, made_at) VALUES ('sent a moment ago', 1, '2026-11-25'), ('sent a moment ago desk 1', 1, '2026-11-25')"),
        new(AtDesk, (s, who) => s.EntryChanges.Ask(who, 1, 1, Scene.Intake), AnEvent),
        new(AtDesk, (s, who) => s.EntryChanges.Change(who, 1, 1, 1, Scene.Intake), AnEvent),
        new(AtDesk, (s, who) => s.Intakes.Racket(who, 1, s.Second, null), AnEvent),
        new(AtDesk, (s, who) => s.Intakes.Player(who, 1, s.Street.Pim), AnEvent),
        new(AtDesk, (s, who) => s.DeskFinds.ByTag(who, 1, s.Live), AnEvent),
        new(AtDesk, (s, who) => s.DeskFinds.ByName(who, 1, "Pim"), AnEvent),
        new(AtDesk, (s, who) => s.DeskFinds.LastRound(who, 1, s.Racket), AnEvent),
        new(AtDesk, (s, who) => s.DeskMoves.Take(who, 1, 1, 1, false), AnEvent),
        new(AtDesk, (s, who) => s.DeskMoves.Strung(who, 1, 1), OnMachine),
        new(AtDesk, (s, who) => s.DeskMoves.PutBack(who, 1, 1), OnMachine),
        new(AtDesk, (s, who) => s.DeskMoves.HandOut(who, 1, 1, PaymentMethod.Cash), StrungThere),
        new(AtDesk, (s, who) => s.DeskMoves.Pay(who, 1, 1, PaymentMethod.Cash), HandedOut),
        new(AtDesk, (s, who) => s.DeskMoves.HandOutFromCredit(who, 1, 1), StrungThere + InCredit),
        new(AtDesk, (s, who) => s.DeskMoves.PayFromCredit(who, 1, 1), HandedOut + InCredit),
        new(AtDesk, (s, who) => s.DeskMoves.CreditFor(who, 1, 1), StrungThere),
        new(AtDesk, (s, who) => s.DeskMoves.Withdraw(who, 1, 1), AnEvent),
        new(AtDesk, (s, who) => s.DeskMoves.PullForward(who, 1, 1, true), AnEvent),
        new(AtDesk, (s, who) => s.DeskMoves.PutOnCourt(who, 1, 1, true), AnEvent),
        new(AtDesk, (s, who) => s.DeskMoves.Lay(who, 1, 1, "shelf 2"), AnEvent),
        new(Owner, (s, who) => s.EventBills.Of(who, 1), HandedOut + ";" + ABilledEntry),
        new(Owner, (s, who) => s.EventBills.PayerOf(who, 1, s.Street.Pim), AnEvent),
        new(Owner, (s, who) => s.EventBills.Make(who, 1, new EventBillEntry { FormKey = Scene.Key, Whose = EventParty.Player(s.Street.Pim), ToName = "Odalys Ferran" }), Priced),
        new(Owner, (s, who) => s.EventBills.Pay(who, 1, EventParty.Player(s.Street.Pim), PaymentMethod.Card), Priced),
        new(AtDesk, (s, who) => s.DeskMoves.Told(who, 1, 1), AnEvent),
        new(AtDesk, (s, who) => s.DeskMoves.PromiseMatch(who, 1, 1), AnEvent + "UPDATE event_entry SET promised = '2026-11-25 18:30'"),
        new(AtDesk, (s, who) => s.Shifts.Shift(who, 1, 60), AnEvent),
        new(Owner, (s, who) => s.Days.Get(who, 1, null), AnEvent),
        new(Owner, (s, who) => s.EventHomes.Get(who, 1), HandedOut),
    ];
}
