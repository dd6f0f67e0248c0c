using Dapper;
using TagPage.Records.DueDates;
using TagPage.Records.Rackets;
using TagPage.Records.Storage;
using TagPage.Records.Tests.Cast;

namespace TagPage.Records.Tests.DueDates;

/// <summary>Pim plays two rackets. When one of them leaves, the other is played more from that day on, and not before.</summary>
public sealed class LeftPlayTests : IDisposable
{
    private readonly Street _street = new();
    private readonly long _other;

    public LeftPlayTests()
    {
        new DueDateKeeper(_street.Database, _street.Time).Attach();
        _other = _street.Records.Racket(_street.Pim, number: 2);
    }

    public void Dispose() => _street.Dispose();

    private DateOnly Due(long racket) => _street.Database.Read(c => c.QuerySingle<DateOnly>("SELECT due_on FROM racket WHERE id = @racket", new { racket }));

    private void Become(string state) =>
        _street.Database.Write(c => c.Execute("UPDATE racket SET state = @state WHERE id = @id", new { state, id = _street.Racket }));

    [Fact]
    public void Passing_a_racket_on_leaves_the_past_date_of_the_other_as_it_is()
    {
        _street.Records.Job(_other, new(2026, 7, 1));
        var before = Due(_other);
        Assert.True(before < Street.Today);

        var done = new HandOverStore(_street.Database, _street.Time).HandOver(Who.Shop, _street.Racket, _street.Records.Player(_street.Ewan, "Bo Lockyer"),
            new HandOverEntry { FormKey = FormKey.New(), Version = 1, Number = 1 });

        Assert.IsType<Outcome.Done>(done);
        Assert.Equal(before, Due(_other));
        _street.Time.Advance(TimeSpan.FromDays(3));
        _street.Database.Write(c => c.Execute("INSERT INTO due_again (player_id) VALUES (@Pim)", new { _street.Pim }));
        Assert.Equal(before, Due(_other));
    }

    [Theory]
    [InlineData("Gone")]
    [InlineData("Damaged")]
    [InlineData("Resting")]
    public void Date_to_come_moves_closer_and_not_before_today_and_back_with_the_racket(string state)
    {
        _street.Records.Job(_other, new(2026, 11, 1));
        var before = Due(_other);

        Become(state);

        Assert.InRange(Due(_other), Street.Today, before.AddDays(-1));
        Become("InTurn");
        Assert.Equal(before, Due(_other));
    }
}
