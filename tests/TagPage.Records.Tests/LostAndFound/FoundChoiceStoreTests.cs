using TagPage.Records.Clients;
using TagPage.Records.LostAndFound;
using TagPage.Records.Outbox;
using TagPage.Records.Storage;
using TagPage.Records.Tests.Cast;

namespace TagPage.Records.Tests.LostAndFound;

/// <summary>Who chooses what finders of Pim's racket get, and who takes it back.</summary>
public sealed class FoundChoiceStoreTests : IDisposable
{
    private readonly Street _street = new();
    private readonly FoundChoiceStore _store;

    public FoundChoiceStoreTests() => _store = new FoundChoiceStore(_street.Database, new OutboxStore(_street.Database, _street.Time), new Mails(), _street.Clock);

    public void Dispose() => _street.Dispose();

    [Theory]
    [InlineData(Actor.Shop, true)]
    [InlineData(Actor.Owner, true)]
    [InlineData(Actor.OtherClient, false)]
    [InlineData(Actor.Finder, false)]
    [InlineData(Actor.Program, false)]
    public void Choice_is_read_made_and_withdrawn_by_whom_it_concerns(Actor actor, bool allowed)
    {
        var who = _street.BeFresh(actor);
        Assert.Equal(allowed, _store.Get(who, _street.Odalys) is not null);
        _street.Check(allowed, () => Choose(who, FoundChoice.Contact));
        _street.Records.Change("UPDATE client SET found_choice = 'Contact'");
        _street.Check(allowed, () => _store.Withdraw(who, _street.Odalys));
    }

    [Theory]
    [InlineData(Actor.Shop)]
    [InlineData(Actor.Owner)]
    public void Choice_that_was_changed_meanwhile_is_not_overwritten_whoever_chooses(Actor actor)
    {
        var who = _street.BeFresh(actor);
        Choose(Who.Shop, FoundChoice.Message);

        _street.Refused<SavedMeanwhile>(() => Choose(who, FoundChoice.Contact, version: 1));
        _street.Check(true, () => Choose(who, FoundChoice.Contact, version: 2));
    }

    [Theory]
    [InlineData(Actor.Shop)]
    [InlineData(Actor.Owner)]
    public void Contact_that_is_not_there_is_not_shown(Actor actor)
    {
        var who = _street.BeFresh(actor);
        _street.Records.Change("UPDATE client SET phone = NULL");

        _street.Refused<NothingToShow>(() => Choose(who, FoundChoice.Contact));
        _street.Check(true, () => Choose(who, FoundChoice.Contact, showsMail: true));
    }

    [Theory]
    [InlineData(Actor.Shop, 0)]
    [InlineData(Actor.Owner, 1)]
    public void Address_on_file_is_told_what_the_own_page_did(Actor actor, int mails)
    {
        Choose(_street.BeFresh(actor), FoundChoice.Message);

        Assert.Equal(mails, _street.Records.Count("outbox"));
    }

    [Fact]
    public void Withdrawing_takes_no_code() => _street.Check(true, () =>
    {
        _street.Records.Change("UPDATE client SET found_choice = 'Contact', found_always = 1");
        return _store.Withdraw(Who.Client(_street.Odalys), _street.Odalys);
    });

    private Outcome Choose(Who who, FoundChoice choice, int version = 1, bool showsMail = false) =>
        _store.Change(who, _street.Odalys, new FoundChoiceEntry { Version = version, Choice = choice, Always = true, ShowsMail = showsMail });
}
