using TagPage.Core.Money;
using TagPage.Records.Clients;
using TagPage.Records.Jobs;
using TagPage.Records.LostAndFound;
using TagPage.Records.Money;
using TagPage.Records.Outbox;
using TagPage.Records.PlayTime;
using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.UnderFire;

/// <summary>Writes from four sides at once, as fast as it can, and says of each write that it is done only after the records said so.</summary>
internal sealed class Writer(Database database)
{
    private const int Sides = 4;

    private readonly ShopClock _clock = new(TimeProvider.System, new ShopStore(database));
    private readonly OutboxStore _outbox = new(database, TimeProvider.System);

    public static void Run(DataFolder folder)
    {
        using var database = Battlefield.Open(folder);
        var writer = new Writer(database);
        Parallel.For(0, Sides, new ParallelOptions { MaxDegreeOfParallelism = Sides }, side => writer.Write(new Random(Environment.ProcessId + side)));
    }

    private void Write(Random random)
    {
        Func<string, long, bool>[] deeds = [Words, Hours, Job, Payment, Email];
        while (true)
        {
            var (key, racket, deed) = (Guid.NewGuid().ToString("N"), random.Next(1, Battlefield.Rackets + 1), random.Next(deeds.Length));
            if (deeds[deed](key, racket))
                Console.WriteLine($"{Deeds.All[deed].Name} {key}");
        }
    }

    private bool Words(string key, long racket)
    {
        var press = new FinderPress(Battlefield.CodeOf((int)racket), FoundKind.Message, key, key, _clock.Now) { Message = key };
        return new FoundEventStore(database, new FoundNoticeStore(_outbox, new ShortMails())).Take(press).Result == FoundResult.Done;
    }

    private bool Hours(string key, long racket) =>
        new HoursStore(database, _clock).Add(Who.Shop, racket, new HoursEntry { FormKey = key, PlayedOn = _clock.Today, Hours = 0.01m, Note = key }) is Outcome.Done;

    private bool Job(string key, long racket) =>
        new NewJobStore(database, new ShopStore(database), _clock).Add(Who.Shop, racket, new NewJobEntry { FormKey = key, MainsId = 1, MainsTension = 52, ReceivedOn = _clock.Today, Note = key }) is Outcome.Done;

    private bool Payment(string key, long client) =>
        new PaymentStore(database, _clock).PayAccount(Who.Shop, Party.Client(client), new PaymentEntry { FormKey = key, PaidOn = _clock.Today, Method = PaymentMethod.Cash, AmountMinor = 100, Note = key }) is Outcome.Done;

    private bool Email(string key, long client) => database.Write(c => _outbox.Queue(c, new NewMail(MailKind.ClientNotice, client, key, "ready"))) > 0;

    private sealed class ShortMails : IFinderMails
    {
        public WrittenMail Acted(MailKind kind, Addressee client, IReadOnlyList<FoundNoticeRow> events) => new("found", "found");

        public WrittenMail Answer(string language, string answer) => new("answer", "answer");
    }
}

/// <summary>What is written, and where its key stands afterwards.</summary>
internal sealed record Deeds(string Name, string Table, string Column)
{
    public static IReadOnlyList<Deeds> All { get; } =
    [
        new("words", "found_event", "message"), new("hours", "logged_hours", "note"), new("job", "job", "note"), new("payment", "payment", "note"), new("email", "outbox", "subject"),
    ];
}
