using TagPage.Records.Accounts;
using TagPage.Records.Audit;
using TagPage.Records.DueDates;
using TagPage.Records.LostAndFound;
using TagPage.Records.Outbox;
using TagPage.Records.OwnPages;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Records.StringingLists;
using TagPage.Records.Tests.Cast;
using TagPage.Records.Tests.Permissions;

namespace TagPage.Records.Tests.Faults;

/// <summary>A write in nobody's name: by finders, by whoever signs in, and by the program's own work. By hand: a new one is added here.</summary>
internal sealed record OwnWrite(string Name, Action<Scene> Do, string Before = "")
{
    private const string AnAccount = """
        INSERT INTO account (id, name, normalized_name, password_hash, security_stamp, concurrency_stamp, role, pin_hash, made_at)
        VALUES ('runa', 'runa', 'RUNA', '', '', '', 'Owner', 'hash', '2026-11-25T09:00:00.000Z');
        INSERT INTO session (id, account_id, made_at) VALUES ('0123456789abcdef0123456789abcdef', 'runa', '2026-11-25T09:00:00.000Z');
        INSERT INTO shared_tablet (id, secret_hash, name, made_at) VALUES (1, 'hash', 'bench', '2026-11-25T09:00:00.000Z');
        """;

    private const string AnEmail = """
        INSERT INTO outbox (id, kind, to_client_id, message_id, state, not_before, made_at)
        VALUES (1, 'ClientNotice', 1, 'waiting', 'Queued', '2026-11-25T09:00:00.000Z', '2026-11-25T09:00:00.000Z')
        """;

    private const string AMessage = """
        INSERT INTO found_event (code, racket_id, client_id, kind, at, source, form_key, message, contact)
        VALUES ('0MWF2SBY7KE', 1, 1, 'Message', '2026-09-25T09:00:00.000Z', 'passer-by', 'key', 'It is here', 'ilse@finder.example')
        """;

    public static IReadOnlyList<OwnWrite> All { get; } =
    [
        new("AccountStore.Add", s => new AccountStore(Database(s), s.Street.Time).Add(Runa)),
        new("AccountStore.TakeCode", s => new AccountStore(Database(s), s.Street.Time).TakeCode("runa", 59_000_000), AnAccount),
        new("SessionStore.Begin", s => Sessions(s).Begin("runa", SignInWay.Password, "a browser", ("A new browser", MailText.Words("Was it you?"))), AnAccount),
        new("SessionStore.BeginByPin", s => Sessions(s).BeginByPin("runa", 1, "a browser"), AnAccount),
        new("SessionStore.EndAll", s => Sessions(s).EndAll("runa"), AnAccount),
        new("EverySessionStore.End", s => new EverySessionStore(Database(s)).End(), AnAccount),
        new("PinStore.Set", s => new PinStore(Database(s), s.Street.Time).Set("runa", "another"), AnAccount),
        new("PinStore.Take", s => new PinStore(Database(s), s.Street.Time).Take(1, "runa"), AnAccount),
        new("SetUpStore.NewToken", s => new SetUpStore(Database(s), s.Street.Time).NewToken()),
        new("PasskeyStore.Save", s => new PasskeyStore(Database(s)).Save("runa", new PasskeyRow { Id = [1], PublicKey = [2], Name = "phone" }), AnAccount),
        new("AuditStore.Add", s => new AuditStore(Database(s), s.Street.Time).Add(AuditEvent.SignedIn)),
        new("OwnPageSessionStore.Begin", s => s.Sessions.Begin(s.Links.OfClient(s.Street.Odalys)[0])),
        new("LinkRequestStore.Add", s => Requests(s).Add(LinkRequestWay.Mail, "nobody@canary.example")),
        new("LinkRequestStore.AnswerAll", s => Requests(s).AnswerAll(), "INSERT INTO link_request (way, contact, made_at) VALUES ('Mail', 'odalys@canary.example', '2026-11-25T09:00:00.000Z')"),
        new("FoundEventStore.Take", s => Finders(s).Take(Press(s)), "UPDATE racket SET lost_since = '2026-11-20' WHERE id = 1; UPDATE client SET found_choice = 'Message' WHERE id = 1"),
        new("FoundWipeStore.Wipe", s => new FoundWipeStore(Database(s), new MailFiles(s.Street.Folder)).Wipe(s.Street.Clock.Now.AddDays(-30), s.Street.Clock.Now), AMessage),
        new("OutboxStore.Claim", s => new OutboxStore(Database(s), s.Street.Time).Claim(MailLane.AllElse), AnEmail),
        new("DeliveryStore.Sent", s => Deliveries(s).Sent(1, s.Street.Clock.Now), AnEmail + "; UPDATE outbox SET state = 'Leaving'"),
        new("DeliveryStore.NotSent", s => Deliveries(s).NotSent(new OutboxStore.Row { Id = 1 }, "451", final: false), AnEmail + "; UPDATE outbox SET state = 'Leaving'"),
        new("DeliveryStore.LeftBehind", s => Deliveries(s).LeftBehind(), AnEmail + "; UPDATE outbox SET state = 'Leaving'"),
        new("BatchStore.Step", s => s.Batches.Step(), """
            INSERT INTO reminder_batch (id, made_at) VALUES (1, '2026-11-25T09:00:00.000Z');
            INSERT INTO reminder_batch_client (batch_id, client_id) VALUES (1, 1);
            """),
        new("DueDateKeeper.BeginDay", s => Dates(s).BeginDay()),
        new("DueDateKeeper.RefreshLater", s => Dates(s).RefreshLater(), "INSERT OR REPLACE INTO due_again (player_id, in_background) SELECT id, 1 FROM player"),
        new("RollStore.MakeSome", s => s.Rolls.MakeSome(20), "INSERT INTO tag_roll (count, stock, made_at) VALUES (20, '{}', '2026-11-25T09:00:00.000Z')"),
        new("ListWriteStore.Step", s => new ListWriteStore(Database(s), s.Street.Time).Step(1), """
            INSERT INTO stringing_list (id, name, state, lines, made_at) VALUES (1, 'list.csv', 'Coming', 0, '2026-11-25T09:00:00.000Z');
            """),
        new("UsedAddressStore.Note", s => new UsedAddressStore(Database(s), s.Street.Time).Note("https://tag.example")),
    ];

    private static Account Runa => new() { Name = "runa", NormalizedName = "RUNA", PasswordHash = "hash", SecurityStamp = "s" };

    private static Database Database(Scene scene) => scene.Street.Database;

    private static OutboxStore Outbox(Scene scene) => new(Database(scene), scene.Street.Time);

    private static SessionStore Sessions(Scene scene) => new(Database(scene), Outbox(scene), scene.Street.Time);

    private static LinkRequestStore Requests(Scene scene) => new(Database(scene), scene.Links, scene.Street.Time);

    private static DeliveryStore Deliveries(Scene scene) => new(Database(scene), scene.Street.Time);

    private static DueDateKeeper Dates(Scene scene) => new(Database(scene), scene.Street.Time);

    private static FoundEventStore Finders(Scene scene) => new(Database(scene), new FoundNoticeStore(Outbox(scene), new Mails()));

    private static FinderPress Press(Scene scene) => new(scene.Live, FoundKind.Message, "passer-by", FormKey.New(), scene.Street.Clock.Now) { Message = "It is at the desk" };
}
