using Dapper;
using TagPage.Records.Storage;
using TagPage.Records.Tests.Cast;

namespace TagPage.Records.Tests.Storage;

/// <summary>A form sent twice makes one record, and one that was refused can be sent again.</summary>
public sealed class FormKeysTests : IDisposable
{
    private readonly Street _street = new();
    private readonly string _key = FormKey.New();

    public void Dispose() => _street.Dispose();

    [Fact]
    public void Second_sending_is_answered_with_the_first_record()
    {
        Assert.Equal(new Outcome.Done(7), Send(new Outcome.Done(7)));
        Assert.Equal(new Outcome.Done(7), Send(new Outcome.Done(8)));
    }

    [Fact]
    public void Form_that_was_refused_can_be_sent_again()
    {
        Assert.Equal(Outcome.Stale, Send(Outcome.Stale));
        Assert.Equal(new Outcome.Done(8), Send(new Outcome.Done(8)));
    }

    [Fact]
    public void Write_that_broke_leaves_no_key_behind()
    {
        Assert.Throws<InvalidOperationException>(() => _street.Database.Write(c => FormKeys.Once(c, Who.Shop, _key, _street.Clock.Now, () =>
            Make(c).Id > 0 ? throw new InvalidOperationException("The lights went out.") : Outcome.Stale)));

        Assert.Equal((0, 0), (_street.Records.Count("used_form_key"), _street.Records.Count("client", "name = 'Ilse'")));
        Assert.Equal(new Outcome.Done(8), Send(new Outcome.Done(8)));
    }

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("0123456789abcdef0123456789abcde")]
    [InlineData("0123456789abcdef0123456789abcdef0")]
    public void Key_that_was_never_given_out_makes_nothing(string? key)
    {
        _street.Refused<FormKeyUnknown>(() => _street.Database.Write(c => FormKeys.Once(c, Who.Shop, key, _street.Clock.Now, () => Make(c))));
        Assert.Equal(0, _street.Records.Count("client", "name = 'Ilse'"));
    }

    [Fact]
    public void Keys_are_forgotten_after_30_days()
    {
        Send(new Outcome.Done(7));
        _street.Time.Advance(TimeSpan.FromDays(30) + TimeSpan.FromSeconds(1));
        _street.Database.Write(c => FormKeys.Once(c, Who.Shop, FormKey.New(), _street.Clock.Now, () => new Outcome.Done(9)));

        Assert.Equal(new Outcome.Done(8), Send(new Outcome.Done(8)));
    }

    private Outcome Send(Outcome made) => _street.Database.Write(c => FormKeys.Once(c, Who.Shop, _key, _street.Clock.Now, () => made));

    private static Outcome.Done Make(Microsoft.Data.Sqlite.SqliteConnection connection) =>
        new(connection.ExecuteScalar<long>("INSERT INTO client (name) VALUES ('Ilse') RETURNING id"));
}
