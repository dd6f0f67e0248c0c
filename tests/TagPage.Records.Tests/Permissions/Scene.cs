using System.Globalization;
using TagPage.Core.Customising;
using TagPage.Core.Forecast;
using TagPage.Core.Rackets;
using TagPage.Core.Tags;
using TagPage.Records.Accounts;
using TagPage.Records.Audit;
using TagPage.Records.Backups;
using TagPage.Records.Clients;
using TagPage.Records.Condition;
using TagPage.Records.Customising;
using TagPage.Records.Deeds;
using TagPage.Records.Events;
using TagPage.Records.FirstVisits;
using TagPage.Records.Frames;
using TagPage.Records.Jobs;
using TagPage.Records.Labels;
using TagPage.Records.Loans;
using TagPage.Records.LostAndFound;
using TagPage.Records.Machines;
using TagPage.Records.Money;
using TagPage.Records.Outbox;
using TagPage.Records.OwnPages;
using TagPage.Records.Players;
using TagPage.Records.PlayTime;
using TagPage.Records.Prepaid;
using TagPage.Records.Privacy;
using TagPage.Records.Rackets;
using TagPage.Records.Readings;
using TagPage.Records.Reminders;
using TagPage.Records.Shop;
using TagPage.Records.Specs;
using TagPage.Records.Stock;
using TagPage.Records.Stops;
using TagPage.Records.Storage;
using TagPage.Records.StringingLists;
using TagPage.Records.Strings;
using TagPage.Records.Tags;
using TagPage.Records.Tests.Cast;
using TagPage.Records.Visits;
using TagPage.Records.WholeShop;

namespace TagPage.Records.Tests.Permissions;

/// <summary>
/// Something of everything that is written by somebody: Pim's racket 1 is strung, tagged and measured, racket 2 has no tag and
/// waits at the shop. Both clients have just typed a code.
/// </summary>
public sealed class Scene : IDisposable
{
    public Scene()
    {
        (Racket, Strung) = (Street.Racket, Street.Strung);
        Second = Street.Records.Racket(Street.Pim, number: 2);
        Waiting = Street.Records.Job(Second);
        Blank = Street.Records.BlankTag();
        Street.Records.Reading(Strung, 62);
        Street.Records.Change("""
            UPDATE client SET mail = 'ewan@lockyer.example' WHERE id = @Ewan;
            UPDATE job SET paid_on = '2026-11-20' WHERE id = @Strung;
            INSERT INTO job_request (job_id, asked_in) VALUES (@Waiting, 'OwnPage');
            INSERT INTO reading (job_id, first, taken_on, instrument_id, value) VALUES (@Strung, 0, '2026-11-20', 1, 58);
            INSERT INTO logged_hours (racket_id, played_on, hours) VALUES (@Racket, '2026-11-20', 2);
            INSERT INTO pause (player_id, from_on) VALUES (@Pim, '2026-11-24');
            INSERT INTO spec (racket_id, measured_on, weight, strung, grip_on, dampener_on) VALUES (@Racket, '2026-11-01', 300, 1, 1, 0);
            """, new { Street.Ewan, Strung, Waiting, Racket, Street.Pim });
        Bo = Street.Records.Player(Street.Ewan, "Bo Lockyer");
        (_odalys, _ewan) = (Who.Client(Street.Odalys, Street.Fresh(Street.Odalys)), Who.Client(Street.Ewan, Street.Fresh(Street.Ewan)));
    }

    private readonly Who _odalys, _ewan;

    public Street Street { get; } = new();
    public long Racket { get; }
    public long Second { get; }
    public long Strung { get; }
    public long Waiting { get; }
    public long Bo { get; }
    public TagCode Blank { get; }
    public TagCode Live => TagCode.Parse(Street.Records.Text("SELECT code FROM tag WHERE state = 'Live'"));
    public long Later => long.Parse(Street.Records.Text("SELECT id FROM reading WHERE first = 0"), CultureInfo.InvariantCulture);

    public Who Be(Actor actor) => actor switch { Actor.Owner => _odalys, Actor.OtherClient => _ewan, _ => Street.Be(actor) };

    public void Dispose() => Street.Dispose();

    private Database Database => Street.Database;
    private OutboxStore Outbox => new(Database, Street.Time);
    private ShopStore Shops => new(Database);
    public OwnPageLinkStore Links => new(Database, Keys, Outbox, new Mails(), Street.Time);
    private LinkTokens Keys => new(Street.Folder);

    public EventStore Events => new(Database, Shops, Street.Time);
    public TechnicianStore Technicians => new(Database, Street.Clock);
    public DeskStore Desks => new(Database, Street.Clock);
    public IntakeStore Intakes => new(Database, Clients, Shops, Street.Clock);
    public EntryChangeStore EntryChanges => new(Database, Shops, Street.Clock);
    public EventBillStore EventBills => new(Database, Shops, Street.Clock);
    public DeskMoveStore DeskMoves => new(Database, Street.Clock);
    public DeskFindStore DeskFinds => new(Database);
    public ShiftStore Shifts => new(Database, Street.Clock);
    public EventHomeStore EventHomes => new(Database);
    public DayStore Days => new(Database);
    public PrivacyStore Privacy => new(Database);

    public JobDeedStore Deeds => new(Database);

    public PeopleStore People => new(Database, Street.Time);

    public MachineStore Machines => new(Database, Street.Clock);

    public StopStore Stops => new(Database, Street.Clock);

    public RoundStore Rounds => new(Database, Street.Clock);

    public LoanRacketStore LoanRackets => new(Database, Street.Clock);

    public LoanStore Loans => new(Database, Street.Clock);

    public PrepaidStore Prepaid => new(Database, Street.Clock);

    public VisitStore Visits => new(Database, Shops, Street.Clock);

    public TabletStore Tablets => new(Database, Street.Time);

    public InvitationStore Invitations => new(Database, Keys, Outbox, Street.Time);

    public AuditStore Audit => new(Database, Street.Time);

    public BackupSettingStore BackupSettings => new(Database, Street.Folder);
    public GivenUpStore GivenUp => new(Database, Street.Clock);
    public TogetherStore Together => new(Database);

    public DropOffStore DropOffs => new(Database, Shops, Street.Clock);

    public PickUpStore PickUps => new(Database, Street.Clock);

    public MoveStore Moves => new(Database, Street.Clock);
    public BackStore Backs => new(Database, Street.Time);
    public JobRacketStore JobRackets => new(Database, Street.Time);
    public StringingListStore StringingLists => new(Database, Street.Time);
    public WholeShopStore WholeShops => new(Database, Street.Time);

    /// <summary>A shop without a record, as it would move.</summary>
    public IReadOnlyList<WholeShopStore.Part> NoRecords => [.. WholeShops.Read(Who.Shop)!.Select(sheet => new WholeShopStore.Part(sheet.Name, sheet.Columns, []))];

    public TakeBackStore TakeBacks => new(Database, Street.Time);
    public JobDeleteStore JobDeletes => new(Database);
    public EditJobStore Edits => new(Database, Shops, Street.Clock);
    public NewJobStore News => new(Database, Shops, Street.Clock);
    public ReadyStore Ready => new(Database, Outbox, new Mails(), Shops, Street.Clock);
    public FirstVisitStore FirstVisits => new(Database, Clients, Street.Time);
    public SettingsStore Settings => new(Database);
    public OpeningStore Openings => new(Database, Street.Clock);
    public AddressStore Addresses => new(Database, Street.Time);
    public TestMailStore TestMails => new(Database, Outbox, Shops, Street.Time);
    public CareGuideStore Guides => new(Database, Street.Time);
    public LabelSettingsStore LabelSettings => new(Database);
    public LabelStore Labels => new(Database);
    public LogoStore Logos => new(Database);
    public RollStore Rolls => new(Database, Keys, Street.Time);
    public FeelStore Feels => new(Database, Street.Clock);
    public JobStore Jobs => new(Database);
    public TagStore Tags => new(Database, Street.Time);
    public RacketStore Rackets => new(Database, Street.Time);
    public HandOverStore HandOvers => new(Database, Street.Time);
    public PlayerStore Players => new(Database, Street.Time);
    public ClientStore Clients => new(Database, Shops, Street.Clock);
    public PayerStore Payers => new(Database, Shops, Street.Time);
    public NewReminderStore NewReminders => new(Database, Shops, Street.Clock);
    public SendReminderStore Sending => new(Database, Outbox, Shops, Street.Clock);
    public BatchStore Batches => new(Database, new BatchReminder(NewReminders, Outbox, new Mails(), Shops, Street.Clock), Street.Clock);
    public AnswerStore Answers => new(Database, Street.Clock);
    public ReminderStore.Row Reminder => new ReminderStore(Database, Keys, Street.Clock).Get(1)!;
    public AnswerStore.Given NotYet => new([new RacketAnswer(Racket, AnswerKind.NotYet) { Weeks = 3 }], null);
    public StringStore Strings => new(Database, Street.Time);
    public SpecStore Specs => new(Database, Street.Time);
    public StockStore Stock => new(Database, Street.Clock);
    public FrameStore Frames => new(Database, Street.Time);
    public ConditionStore Conditions => new(Database, Street.Time);
    public PhotoStore Photos => new(Database, Street.Time);
    public RangeConfirmStore Confirms => new(Database, Street.Clock);
    public FramePlaceStore Places => new(Database);
    public AddedMassStore Pieces => new(Database, Street.Time);
    public CustomiseStore Customising => new(Database, Street.Time);
    public InstrumentStore Instruments => new(Database, Street.Time);
    public ReadingStore Readings => new(Database, Street.Clock);
    public HoursStore Hours => new(Database, Street.Clock);
    public PauseStore Pauses => new(Database, Street.Clock);
    public LostStore Lost => new(Database, Street.Clock);
    public FoundChoiceStore Choices => new(Database, Outbox, new Mails(), Street.Clock);
    public ForgetStore Forgets => new(Database, Outbox, new Mails(), Street.Clock);
    public OwnPageSessionStore Sessions => new(Database, Street.Time);
    public ClientRequestStore Requests => new(Database, Street.Time);
    public ChargeStore Charges => new(Database, Street.Clock);
    public PaymentStore Payments => new(Database, Street.Clock);
    public OwedStore Owed => new(Database);
    public FigureStore Figures => new(Database);
    public BillStore Bills => new(Database, Shops, Street.Clock);
    public BillMailStore BillMails => new(Database, Outbox);
    public Party OfOdalys => Party.Client(Street.Odalys);
    public PriceListStore Prices => new(Database);
    public FinderReplyStore FinderReplies => new(Database, Outbox, new Mails(), Street.Time);
    public PassOnStore PassOns => new(Database, Street.Clock);
    public OrderStore Orders => new(Database, Outbox, Shops, new Mails(), Street.Clock);
    public OwnClientStore OwnClients => new(Database, Links, Street.Clock);
    public OwnPageRacketStore OwnRackets => new(Database);
    public OwnPageDetailsStore Details => new(Database, Outbox, new Mails(), Street.Clock);
    public OwnPageCodeStore Codes => new(Database, Keys, Outbox, new Mails(), Street.Time);

    /// <summary>What the newest email with a code says.</summary>
    public string Digits(Who who)
    {
        var newest = $"FROM own_page_code WHERE client_id = {who.ClientId ?? Street.Odalys} ORDER BY id DESC LIMIT 1";
        return Street.Records.Text($"SELECT id {newest}") is { Length: > 0 } id
            ? Keys.Digits(long.Parse(id, CultureInfo.InvariantCulture), Street.Records.Text($"SELECT secret {newest}"))
            : "";
    }

    public IReadOnlyList<(long, CustomEntry)> Custom =>
        [(Racket, new() { On = Street.Today, SpecId = 1, SpecVersion = 1, Added = [(new FramePlace("Throat", 35), 2)] })];

    public static string Key => FormKey.New();
    public static EventEntry Event => new() { FormKey = Key, Version = 1, Name = "Harbour Open", FromOn = Street.Today };
    public static TechnicianEntry Technician => new() { FormKey = Key, Name = "Runa", Hours = "9-18" };
    public static IntakeEntry Intake => new() { FormKey = Key, Visitor = new() { Name = "Tove Alling" }, Order = new() { MainsId = 1, MainsTension = 50 } };
    public static ChangedJobEntry Changed => new() { Version = 1, MainsId = 1, MainsTension = 50, ReceivedOn = Street.Today, Note = "softer" };
    public static NewJobEntry Order => new() { FormKey = Key, MainsId = 1, MainsTension = 50, ReceivedOn = Street.Today };
    public static IReadOnlyList<PhotoEntry> APhoto => [new() { Width = 4, Height = 3, Small = [0xFF, 0xD8, 0xFF], Picture = [0xFF, 0xD8, 0xFF, 0xE0] }];
    public static JobRequest Same => new(AskedIn.OwnPage, "");
    public static RacketEntry Frame => new() { FormKey = Key, Version = 1, Number = 7, State = RacketState.InTurn };
    public static PlayerEntry Player => new() { FormKey = Key, Version = 1, Name = "Mika Ferran", TimesAWeek = 1, HoursATime = 1 };
    public static ClientEntry Client => new() { Version = 1, Name = "Odalys Ferran", Mail = "new@ferran.example", Language = "en", Reminders = true };
    public static ClientEntry NewClient => Client with { FormKey = Key, Name = "Ilse Marrow" };
    public static PayerEntry Payer => new() { FormKey = Key, Version = 1, Name = "Hall Academy" };
    public static StringEntry NewString => new() { FormKey = Key, Version = 1, Name = "Quiet Heron", Material = Core.Strings.Material.Polyester, GaugeMm = 1.25m };
    public static FirstVisitEntry Visit => new() { FormKey = Key, Client = Client, Player = Player, Racket = Frame, Tag = FirstTag.New };
    public static OpeningEntry Week => new() { Version = 1, Week = [new OpeningSpan { Weekday = 2, OpensAt = 600, ClosesAt = 1080 }] };

    public static ShopEntry Moved => new() { Version = 1, Name = "Quayside Rackets", Country = "GB", TimeZone = "Etc/UTC", Currency = "GBP", UnseenMonths = 6 };
    public static StartingValues Values => StartingValues.Default with { SpareWeight = 0.5 };
    public static CareGuideEntry Guide => new() { FormKey = Key, Version = 1, Title = "In the car", Name = "heat", Markdown = "Not in the boot." };
    public static ContactEntry Contact => new() { Version = 2, Name = "Somebody Else", Mail = "new@else.example" };
}
