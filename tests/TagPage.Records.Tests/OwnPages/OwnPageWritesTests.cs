using TagPage.Core.Rackets;
using TagPage.Records.Jobs;
using TagPage.Records.Outbox;
using TagPage.Records.OwnPages;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Records.Tests.Cast;
using TagPage.Web.Tests.Cast;

namespace TagPage.Records.Tests.OwnPages;

/// <summary>What a household does by itself, and who else may.</summary>
public sealed class OwnPageWritesTests : IDisposable
{
    private readonly Street _street = new();
    private readonly OutboxStore _outbox;
    private readonly OwnPageDetailsStore _details;

    public OwnPageWritesTests()
    {
        _outbox = new OutboxStore(_street.Database, _street.Time);
        _details = new OwnPageDetailsStore(_street.Database, _outbox, new Mails(), _street.Clock);
    }

    public void Dispose() => _street.Dispose();

    [Theory]
    [InlineData(Actor.Shop, true)]
    [InlineData(Actor.Owner, true)]
    [InlineData(Actor.OtherClient, false)]
    [InlineData(Actor.Finder, false)]
    [InlineData(Actor.Program, false)]
    public void Role_is_given_by_whom_the_racket_concerns_and_what_is_sold_stays_sold(Actor actor, bool allowed)
    {
        var store = new OwnPageRacketStore(_street.Database);
        _street.Check(allowed, () => store.SetRole(_street.Be(actor), _street.Racket, RacketState.Spare));

        _street.Records.Change("UPDATE racket SET state = 'Sold'");
        _street.Check(false, () => store.SetRole(_street.Be(actor), _street.Racket, RacketState.InTurn));
    }

    [Theory]
    [InlineData(RacketState.Sold)]
    [InlineData(RacketState.Damaged)]
    [InlineData((RacketState)77)]
    public void Role_that_is_not_theirs_to_give_is_refused(RacketState role) =>
        _street.Refused<RoleNotTheirs>(() => new OwnPageRacketStore(_street.Database).SetRole(_street.Be(Actor.Owner), _street.Racket, role));

    [Theory]
    [InlineData(Actor.Shop, false)]
    [InlineData(Actor.Owner, true)]
    [InlineData(Actor.OtherClient, false)]
    [InlineData(Actor.Finder, false)]
    [InlineData(Actor.Program, false)]
    public void Restring_is_asked_for_and_taken_back_by_the_household(Actor actor, bool allowed)
    {
        var orders = new OrderStore(_street.Database, _outbox, new ShopStore(_street.Database), new Mails(), _street.Clock);
        var (who, key) = (_street.Be(actor), FormKey.New());
        _street.Check(allowed, () => orders.Ask(who, _street.Racket, key, new JobRequest(AskedIn.OwnPage, "")));

        orders.Ask(_street.Be(Actor.Owner), _street.Racket, key, new JobRequest(AskedIn.OwnPage, ""));
        var job = long.Parse(_street.Records.Text("SELECT MAX(id) FROM job"), System.Globalization.CultureInfo.InvariantCulture);
        if (!allowed)
            _street.Check(false, () => orders.Ask(who, _street.Racket, key, new JobRequest(AskedIn.OwnPage, "")));
        _street.Check(allowed, () => orders.Cancel(who, job));
    }

    [Theory]
    [InlineData(Actor.Shop)]
    [InlineData(Actor.Finder)]
    [InlineData(Actor.Program)]
    public void Details_are_a_clients_own_and_nobody_else_writes_them_here(Actor actor)
    {
        var who = _street.Be(actor);
        _street.Check(false, () => _details.ChangeContact(who, new ContactEntry { Version = 1, Name = "Mallory", Mail = "mallory@else.example" }));
        _street.Check(false, () => _details.ChangeReminders(who, new ReminderWishEntry()));
        _street.Check(false, () => _details.AskAboutPayer(who, "Mallory pays", FormKey.New()));
    }

    [Fact]
    public void Client_changes_the_reminders_of_no_other()
    {
        _street.Check(true, () => _details.ChangeReminders(_street.Be(Actor.OtherClient), new ReminderWishEntry { Language = "es", Wanted = false, QuietMonths = 1 }));

        Assert.Equal("en|1|0|", _street.Records.Text("SELECT language || '|' || reminders || '|' || quiet_months || '|' || COALESCE(reminders_changed_on, '') FROM client WHERE name = 'Odalys Ferran'"));
        Assert.Equal("es|0|1|2026-11-25", _street.Records.Text("SELECT language || '|' || reminders || '|' || quiet_months || '|' || reminders_changed_on FROM client WHERE name = 'Ewan Lockyer'"));
    }

    [Fact]
    public void Contact_that_the_shop_changed_meanwhile_is_not_overwritten()
    {
        var odalys = _street.BeFresh(Actor.Owner);
        _street.Records.Change("UPDATE client SET phone = '+442079460111', version = version + 1");

        _street.Refused<SavedMeanwhile>(() => _details.ChangeContact(odalys, Entry with { Version = 1 }));
        _street.Check(true, () => _details.ChangeContact(odalys, Entry with { Version = 2 }));
        Assert.Equal("contact|" + OnFile.CanaryMail, _street.Records.Text("SELECT subject || '|' || to_address FROM outbox"));
    }

    [Fact]
    public void Client_stays_within_reach()
    {
        var odalys = _street.BeFresh(Actor.Owner);

        _street.Refused<ReachMissing>(() => _details.ChangeContact(odalys, Entry with { Version = 1, Mail = null }));
    }

    private static ContactEntry Entry => new() { Name = "Odalys Ferran", Mail = "new@ferran.example" };
}
