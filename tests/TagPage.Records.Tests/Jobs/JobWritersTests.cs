using TagPage.Core.Jobs;
using TagPage.Records.Jobs;
using TagPage.Records.Outbox;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Records.Tests.Cast;

namespace TagPage.Records.Tests.Jobs;

/// <summary>Who may do what to a job: everything is the shop's but how the strings felt, which is the household's.</summary>
public sealed class JobWritersTests : IDisposable
{
    public static readonly Actor[] NotTheShop = [Actor.Owner, Actor.OtherClient, Actor.Finder, Actor.Program];

    private readonly Street _street = new();
    private readonly long _waiting;

    public JobWritersTests()
    {
        _waiting = _street.Records.Job(_street.Racket);
        _street.Records.Change("INSERT INTO job_request (job_id, asked_in) VALUES (@_waiting, 'OwnPage')", new { _waiting });
    }

    public void Dispose() => _street.Dispose();

    private MoveStore Moves => new(_street.Database, _street.Clock);

    private ShopStore Shops => new(_street.Database);

    /// <summary>Each write, and what the job has to be like before it.</summary>
    private static readonly Dictionary<string, (string Before, Func<JobWritersTests, Who, Outcome> Act)> Writes = new()
    {
        ["start"] = ("", (t, who) => t.Moves.Start(who, t._waiting)),
        ["receive"] = ("", (t, who) => t.Moves.Receive(who, t._waiting)),
        ["strung"] = ("", (t, who) => t.Moves.MarkStrung(who, t._waiting, new StrungEntry { StrungOn = Street.Today })),
        ["collect"] = (Strung, (t, who) => t.Moves.Collect(who, t._waiting, new CollectEntry { CollectedOn = Street.Today })),
        ["cancel"] = ("", (t, who) => t.Moves.Cancel(who, t._waiting)),
        ["pay"] = ("", (t, who) => t.Moves.Pay(who, t._waiting, Street.Today)),
        ["back"] = (Strung, (t, who) => new BackStore(t._street.Database).Back(who, t._waiting, JobState.Strung)),
        ["change"] = ("", (t, who) => new EditJobStore(t._street.Database, t.Shops, t._street.Clock).Change(who, t._waiting, Changed)),
        ["take in"] = ("", (t, who) => new NewJobStore(t._street.Database, t.Shops, t._street.Clock).Add(who, t._street.Racket, Order)),
        ["tell it is ready"] = (Strung, (t, who) => t.Ready.Tell(who, t._waiting)),
    };

    private const string Strung = "UPDATE job SET state = 'Strung', strung_on = '2026-11-25' WHERE id = @_waiting";

    private static ChangedJobEntry Changed => new() { Version = 1, MainsId = 1, MainsTension = 50, ReceivedOn = Street.Today, Note = "softer" };

    private static NewJobEntry Order => new() { FormKey = FormKey.New(), MainsId = 1, MainsTension = 50, ReceivedOn = Street.Today };

    private ReadyStore Ready => new(_street.Database, new OutboxStore(_street.Database, _street.Time), new NoWords(), Shops, _street.Clock);

    public static TheoryData<string, Actor> Denied()
    {
        var all = new TheoryData<string, Actor>();
        foreach (var write in Writes.Keys)
            foreach (var actor in NotTheShop)
                all.Add(write, actor);
        return all;
    }

    public static TheoryData<string> Allowed() => [.. Writes.Keys];

    [Theory]
    [MemberData(nameof(Allowed))]
    public void Shop_may(string write) => Try(write, Actor.Shop, true);

    [Theory]
    [MemberData(nameof(Denied))]
    public void Nobody_else_may_and_nothing_changes(string write, Actor actor) => Try(write, actor, false);

    private void Try(string write, Actor actor, bool allowed)
    {
        var (before, act) = Writes[write];
        if (before.Length > 0)
            _street.Records.Change(before, new { _waiting });
        _street.Check(allowed, () => act(this, _street.Be(actor)));
    }

    [Theory]
    [InlineData(Actor.Shop, false)]
    [InlineData(Actor.Owner, true)]
    [InlineData(Actor.OtherClient, false)]
    [InlineData(Actor.Finder, false)]
    [InlineData(Actor.Program, false)]
    public void How_strings_felt_is_said_by_the_household(Actor actor, bool allowed)
    {
        var (store, who) = (new FeelStore(_street.Database, _street.Clock), _street.Be(actor));

        Assert.Equal(allowed, store.Get(who, _street.Strung) is not null);
        _street.Check(allowed, () => store.Save(who, _street.Strung, new FeelStore.Row { Bed = FeelBed.Right }));
        _street.Check(false, () => store.Save(who, _waiting, new FeelStore.Row { Bed = FeelBed.Right }));
    }

    [Theory]
    [InlineData(Actor.Shop, true)]
    [InlineData(Actor.Owner, false)]
    [InlineData(Actor.OtherClient, false)]
    [InlineData(Actor.Finder, false)]
    [InlineData(Actor.Program, false)]
    public void Whole_job_is_read_by_the_shop_alone(Actor actor, bool allowed)
    {
        var who = _street.Be(actor);

        Assert.Equal(allowed, new JobStore(_street.Database).Get(who, _waiting) is not null);
        Assert.Equal(allowed, new NewJobStore(_street.Database, Shops, _street.Clock).Racket(who, _street.Racket) is not null);
    }

    /// <summary>What an email says is tested where the words are.</summary>
    private sealed class NoWords : IJobMails
    {
        public WrittenMail Ready(JobRow job) => new("Ready", "Ready");

        public WrittenMail Received(JobRow job) => new("Received", "Received");
    }
}
