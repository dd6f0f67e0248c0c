using System.Globalization;
using TagPage.Records.Outbox;
using TagPage.Records.OwnPages;
using TagPage.Records.Storage;
using TagPage.Records.Tests.Cast;

namespace TagPage.Records.Tests.OwnPages;

/// <summary>Codes that are sent to Odalys: what one opens, in which browser, how often and for how long.</summary>
public sealed class OwnPageCodeStoreTests : IDisposable
{
    private readonly Street _street = new();
    private readonly LinkTokens _keys;
    private readonly OwnPageCodeStore _store;
    private readonly Who _odalys, _ewan;

    public OwnPageCodeStoreTests()
    {
        _keys = new LinkTokens(_street.Folder);
        _store = new OwnPageCodeStore(_street.Database, _keys, new OutboxStore(_street.Database, _street.Time), new Mails(), _street.Time);
        (_odalys, _ewan) = (_street.BeFresh(Actor.Owner), _street.BeFresh(Actor.OtherClient));
        _street.Records.Change("UPDATE own_page_session SET fresh_until = NULL; UPDATE client SET mail = 'ewan@lockyer.example' WHERE id = @Ewan", new { _street.Ewan });
    }

    public void Dispose() => _street.Dispose();

    [Fact]
    public void Code_that_fits_makes_the_browser_it_was_typed_in_fresh_for_ten_minutes_and_no_other()
    {
        _street.Records.Change("INSERT INTO own_page_session (id_hash, client_id, link_id, made_at) SELECT @other, client_id, link_id, made_at FROM own_page_session WHERE client_id = @Odalys",
            new { other = new string('9', 64), _street.Odalys });
        Send();

        Assert.IsType<Outcome.Done>(_store.Try(_odalys, Digits()));

        Assert.True(_store.IsFresh(_odalys));
        Assert.False(_store.IsFresh(Who.Client(_street.Odalys, new string('9', 64))));
        Assert.False(_store.IsFresh(_ewan));
        _street.Time.Advance(TimeSpan.FromMinutes(10));
        Assert.False(_store.IsFresh(_odalys));
    }

    [Fact]
    public void Code_is_good_once()
    {
        Send();
        Assert.IsType<Outcome.Done>(_store.Try(_odalys, Digits()));

        _street.Refused<CodeOver>(() => _store.Try(_odalys, Digits()));
    }

    [Fact]
    public void Digits_are_read_however_they_are_spaced()
    {
        Send();

        Assert.IsType<Outcome.Done>(_store.Try(_odalys, $" {Digits()[..3]} - {Digits()[3..]}."));
    }

    [Fact]
    public void Code_of_one_client_opens_nothing_in_the_browser_of_another()
    {
        Send();
        _store.Send(_ewan);
        var hers = Digits(1);
        Assert.NotEqual(hers, Digits(2));

        Assert.IsType<CodeWrong>(Assert.IsType<Outcome.Refused>(_store.Try(_ewan, hers)).Why);

        Assert.False(_store.IsFresh(_ewan));
        Assert.IsType<Outcome.Done>(_store.Try(_odalys, hers));
    }

    [Fact]
    public void Fifth_wrong_try_ends_the_code_even_for_who_knows_it()
    {
        Send();
        var wrong = Digits() == "000000" ? "000001" : "000000";

        for (var n = 1; n < OwnPageCodeStore.MostTries; n++)
            Assert.IsType<CodeWrong>(Assert.IsType<Outcome.Refused>(_store.Try(_odalys, n % 2 == 0 ? "" : wrong)).Why);
        Assert.IsType<CodeOver>(Assert.IsType<Outcome.Refused>(_store.Try(_odalys, wrong)).Why);

        _street.Refused<CodeOver>(() => _store.Try(_odalys, Digits()));
        Assert.False(_store.IsFresh(_odalys));
    }

    [Fact]
    public void New_code_makes_the_one_before_worth_nothing_even_when_the_new_one_is_over()
    {
        Send();
        Send();

        Assert.IsType<CodeWrong>(Assert.IsType<Outcome.Refused>(_store.Try(_odalys, Digits(1))).Why);
        _street.Records.Change("UPDATE own_page_code SET tries = 5 WHERE id = 2");
        _street.Refused<CodeOver>(() => _store.Try(_odalys, Digits(1)));
    }

    [Theory]
    [InlineData(599, true)]
    [InlineData(600, false)]
    public void Code_is_good_for_ten_minutes(int seconds, bool good)
    {
        Send();
        _street.Time.Advance(TimeSpan.FromSeconds(seconds));

        Assert.Equal(good, _store.Try(_odalys, Digits()) is Outcome.Done);
    }

    [Fact]
    public void Three_codes_an_hour_and_ten_a_day_are_enough_and_each_client_has_their_own()
    {
        for (var n = 0; n < 3; n++)
            Send();
        _street.Refused<CodesEnough>(() => _store.Send(_odalys));
        Assert.IsType<Outcome.Done>(_store.Send(_ewan));
        for (var n = 3; n < 10; n++)
        {
            _street.Time.Advance(TimeSpan.FromHours(1));
            Send();
        }
        _street.Time.Advance(TimeSpan.FromHours(1));

        _street.Refused<CodesEnough>(() => _store.Send(_odalys));
        _street.Time.Advance(TimeSpan.FromHours(17));
        Send();
    }

    [Fact]
    public void Clock_that_ran_a_year_ahead_shuts_nobody_out()
    {
        for (var n = 0; n < 3; n++)
            Send();
        _street.Records.Change("UPDATE own_page_code SET made_at = '2027-11-25T10:00:00.000Z'");

        Send();
    }

    [Fact]
    public void Client_without_an_address_gets_no_code()
    {
        _street.Records.Change("UPDATE client SET mail = NULL");

        _street.Refused<NoAddressOnFile>(() => _store.Send(_odalys));
    }

    [Fact]
    public void Code_leaves_with_what_somebody_waits_for_at_a_screen()
    {
        Send();

        var mail = new OutboxStore(_street.Database, _street.Time).Claim(MailLane.AwaitedNow)!;

        Assert.Equal((1, "Odalys Ferran"), (mail.CodeId, mail.ToName));
        Assert.Equal(Digits(), _keys.Digits(1, mail.CodeSecret!));
    }

    private void Send() => Assert.IsType<Outcome.Done>(_store.Send(_odalys));

    private string Digits(long? code = null)
    {
        var id = code ?? long.Parse(_street.Records.Text($"SELECT MAX(id) FROM own_page_code WHERE client_id = {_street.Odalys}"), CultureInfo.InvariantCulture);
        return _keys.Digits(id, _street.Records.Text($"SELECT secret FROM own_page_code WHERE id = {id}"));
    }
}
