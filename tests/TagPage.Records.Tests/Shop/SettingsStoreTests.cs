using TagPage.Core.Forecast;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Records.Tests.Cast;

namespace TagPage.Records.Tests.Shop;

/// <summary>Every topic of the settings counts one version, and the owner's words belong to the topic of their form.</summary>
public sealed class SettingsStoreTests : IDisposable
{
    private readonly Street _street = new();
    private readonly SettingsStore _store;
    private readonly ShopStore _shops;

    public SettingsStoreTests() => (_store, _shops) = (new SettingsStore(_street.Database), new ShopStore(_street.Database));

    public void Dispose() => _street.Dispose();

    [Theory]
    [InlineData(Actor.Shop, true)]
    [InlineData(Actor.Owner, false)]
    [InlineData(Actor.OtherClient, false)]
    [InlineData(Actor.Finder, false)]
    [InlineData(Actor.Program, false)]
    public void Only_the_shop_changes_its_settings(Actor actor, bool allowed)
    {
        var who = _street.Be(actor);

        _street.Check(allowed, () => _store.SaveShop(who, Quayside with { Version = 1 }));
        _street.Check(allowed, () => _store.SavePage(who, new HomePageEntry { Version = allowed ? 2 : 1, HomeMarkdown = "Come in" }));
        _street.Check(allowed, () => _store.SaveLives(who, allowed ? 3 : 1, StartingValues.Default with { SpareWeight = 0.5 }));
        _street.Check(allowed, () => _store.SaveReminders(who, Reminders with { Version = allowed ? 4 : 1 }));
        _street.Check(allowed, () => _store.SaveMessages(who, Messages with { Version = allowed ? 5 : 1 }));
    }

    [Fact]
    public void Shop_without_words_of_its_own_has_empty_ones()
    {
        var shop = _shops.Get();

        Assert.All([shop.Reminder, shop.ReminderSms, shop.Ready, shop.Received, shop.Notice], own => Assert.Equal(new OwnWords(), own));
    }

    [Fact]
    public void Words_come_back_for_what_they_were_written_for()
    {
        _street.Check(true, () => _store.SaveReminders(Who.Shop, Reminders with { Version = 1 }));
        _street.Check(true, () => _store.SaveMessages(Who.Shop, Messages with { Version = 2 }));

        var shop = _shops.Get();
        Assert.Equal((21, 19, 9), (shop.DaysBetweenReminders, shop.QuietFromHour, shop.QuietUntilHour));
        Assert.Equal((Reminders.Mail, Reminders.Sms), (shop.Reminder, shop.ReminderSms));
        Assert.Equal((Messages.Ready, Messages.Received, Messages.Notice), (shop.Ready, shop.Received, shop.Notice));
    }

    [Fact]
    public void Words_taken_back_are_the_products_again()
    {
        _street.Check(true, () => _store.SaveReminders(Who.Shop, Reminders with { Version = 1 }));
        _street.Check(true, () => _store.SaveReminders(Who.Shop, new RemindersEntry { Version = 2, DaysBetween = 21 }));

        Assert.Equal((new OwnWords(), new OwnWords()), (_shops.Get().Reminder, _shops.Get().ReminderSms));
    }

    [Fact]
    public void Second_of_two_who_read_the_same_settings_changes_neither_settings_nor_words()
    {
        _street.Check(true, () => _store.SaveReminders(Who.Shop, Reminders with { Version = 1 }));
        var before = _shops.Get();

        Assert.Equal(Outcome.Stale, _store.SaveMessages(Who.Shop, Messages with { Version = 1 }));
        Assert.Equal(Outcome.Stale, _store.SaveReminders(Who.Shop, Reminders with { Version = 1, Mail = new OwnWords("second", "second") }));
        Assert.Equal(Outcome.Stale, _store.SavePage(Who.Shop, new HomePageEntry { Version = 1, HomeMarkdown = "second" }));

        Assert.Equal(before, _shops.Get());
        Assert.Equal(2, _street.Records.Count("message"));
    }

    [Fact]
    public void Words_too_long_for_their_message_are_kept_out_with_the_settings_beside_them()
    {
        var before = _shops.Get();

        Assert.ThrowsAny<Exception>(() => _store.SaveReminders(Who.Shop, Reminders with { Version = 1, Sms = new OwnWords("", new string('x', 401)) }));

        Assert.Equal(before, _shops.Get());
        Assert.Equal(0, _street.Records.Count("message"));
    }

    [Fact]
    public void Starting_values_that_are_the_products_own_are_not_kept()
    {
        _street.Check(true, () => _store.SaveLives(Who.Shop, 1, StartingValues.Default));

        Assert.Equal(1, _street.Records.Count("shop", "starting_values IS NULL"));
    }

    [Fact]
    public void First_save_makes_the_shop_and_a_second_first_one_does_not_overwrite_it()
    {
        _street.Records.Change("DELETE FROM shop");

        _street.Check(true, () => _store.SaveShop(Who.Shop, Quayside));
        Assert.Equal("Quayside Strings", _shops.Get().Name);
        _street.Check(true, () => _store.SaveShop(Who.Shop, Quayside with { Version = 1, Name = "Quayside" }));
        Assert.Equal(Outcome.Stale, _store.SaveShop(Who.Shop, Quayside));
        Assert.Equal("Quayside", _shops.Get().Name);
    }

    private static ShopEntry Quayside => new() { Name = "Quayside Strings", Country = "GB", TimeZone = "Europe/London", Currency = "GBP", UnseenMonths = 12 };

    private static RemindersEntry Reminders => new() { DaysBetween = 21, Mail = new OwnWords("Strings, {client}", "Hi {client} {link} {stop}"), Sms = new OwnWords("", "{shop} {link}") };

    private static MessagesEntry Messages => new()
    {
        Ready = new OwnWords("Come", "Ready"),
        Received = new OwnWords("Got it", "Thanks"),
        Notice = new OwnWords("News", "{events}"),
        QuietFromHour = 19,
        QuietUntilHour = 9,
    };
}
