using TagPage.Records.Clients;
using TagPage.Records.LostAndFound;
using TagPage.Records.Outbox;
using TagPage.Records.OwnPages;
using TagPage.Records.Privacy;
using TagPage.Records.Storage;
using TagPage.Records.Tests.Cast;

namespace TagPage.Records.Tests.OwnPages;

/// <summary>A code that was typed in one household's browser lets that household do what could hurt, and nobody else.</summary>
public sealed class FreshCodeTests : IDisposable
{
    private readonly Street _street = new();
    private readonly OutboxStore _outbox;

    public FreshCodeTests() => _outbox = new OutboxStore(_street.Database, _street.Time);

    public void Dispose() => _street.Dispose();

    public static TheoryData<string> Dangers => ["pass on", "own client", "contact", "choice", "forget"];

    [Theory]
    [MemberData(nameof(Dangers))]
    public void Browser_that_is_fresh_for_one_client_is_fresh_for_no_other(string what)
    {
        _street.Records.Change("UPDATE job SET paid_on = '2026-11-20'");
        var (hers, his) = (_street.Fresh(_street.Odalys), _street.Fresh(_street.Ewan));

        foreach (var session in new[] { null, his, "" })
            _street.Refused<CodeRanOut>(() => Do(what, Who.Client(_street.Odalys, session)));
        _street.Check(true, () => Do(what, Who.Client(_street.Odalys, hers)));
    }

    [Theory]
    [MemberData(nameof(Dangers))]
    public void Code_is_good_for_ten_minutes(string what)
    {
        _street.Records.Change("UPDATE job SET paid_on = '2026-11-20'");
        var odalys = _street.BeFresh(Actor.Owner);
        _street.Time.Advance(TimeSpan.FromMinutes(9));

        _street.Refused<CodeRanOut>(() => Do(what, odalys));
    }

    [Theory]
    [MemberData(nameof(Dangers))]
    public void Fresh_browser_of_somebody_else_opens_nothing_of_hers(string what)
    {
        var before = OfHers();
        Do(what, _street.BeFresh(Actor.OtherClient));
        Do(what, Who.Finder);
        Do(what, Who.Program);

        Assert.Equal(before, OfHers());
    }

    private string OfHers() => _street.Records.Text($"""
        SELECT c.name || c.phone || c.mail || c.version || c.found_choice || COALESCE(c.forget_at, '') || p.client_id || p.version || r.state || r.version
        FROM client c JOIN player p ON p.name = 'Pim Ferran' JOIN racket r ON r.player_id = p.id WHERE c.id = {_street.Odalys}
        """);

    private Outcome Do(string what, Who who) => what switch
    {
        "pass on" => new PassOnStore(_street.Database, _street.Clock).PassOn(who, _street.Racket),
        "own client" => OwnClients.Make(who, _street.Pim, "pim@ferran.example", null),
        "contact" => Details.ChangeContact(who, new ContactEntry { Version = 1, Name = "Odalys Ferran", Mail = "new@ferran.example" }),
        "choice" => new FoundChoiceStore(_street.Database, _outbox, new Mails(), _street.Clock)
            .Change(who, _street.Odalys, new FoundChoiceEntry { Version = 1, Choice = FoundChoice.Contact }),
        _ => new ForgetStore(_street.Database, _outbox, new Mails(), _street.Clock).Ask(who, _street.Odalys),
    };

    private OwnPageDetailsStore Details => new(_street.Database, _outbox, new Mails(), _street.Clock);

    private OwnClientStore OwnClients => new(_street.Database, new OwnPageLinkStore(_street.Database, null!, _outbox, new Mails(), _street.Time), _street.Clock);

    [Fact]
    public void Used_form_key_tells_another_client_nothing()
    {
        var key = FormKey.New();
        Assert.IsType<Outcome.Done>(Details.AskAboutPayer(Who.Client(_street.Odalys), "The academy pays", key));

        Assert.Equal(new Outcome.Done(_street.Ewan), Details.AskAboutPayer(Who.Client(_street.Ewan), "I do", key));
        Assert.Equal(2, _street.Records.Count("client_request"));
    }
}
