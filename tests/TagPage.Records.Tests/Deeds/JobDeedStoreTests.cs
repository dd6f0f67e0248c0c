using System.Globalization;
using TagPage.Core.Jobs;
using TagPage.Core.Money;
using TagPage.Records.Accounts;
using TagPage.Records.Audit;
using TagPage.Records.Deeds;
using TagPage.Records.Jobs;
using TagPage.Records.Money;
using TagPage.Records.Rackets;
using TagPage.Records.Readings;
using TagPage.Records.Storage;
using TagPage.Records.Tests.Cast;

namespace TagPage.Records.Tests.Deeds;

/// <summary>Runa owns the shop, Bram helps; both move a ticket of Pim's.</summary>
public sealed class JobDeedStoreTests : IDisposable
{
    private readonly Street _street = new();
    private readonly Account _runa = new() { Name = "Runa", NormalizedName = "RUNA" };
    private readonly Account _bram = new() { Name = "Bram", NormalizedName = "BRAM", Role = Roles.Bench };
    private readonly long _job;

    public JobDeedStoreTests()
    {
        Accounts.Add(_runa);
        _job = _street.Records.Job(_street.Records.Racket(_street.Pim, number: 2));
    }

    public void Dispose() => _street.Dispose();

    private AccountStore Accounts => new(_street.Database, _street.Time);

    private MoveStore Moves => new(_street.Database, _street.Clock);

    private PaymentStore Payments => new(_street.Database, _street.Clock);

    private Who Runa => Who.Owner(_runa.Id);

    private Who Bram => Who.Bench(_bram.Id);

    private IEnumerable<(JobDeed, string)> Deeds(Who who) => new JobDeedStore(_street.Database).Of(who, _job).Select(d => (d.Deed, d.By));

    [Fact]
    public void Ticket_says_who_moved_it_and_when()
    {
        Accounts.Add(_bram);
        _street.Records.Reading(_street.Strung, 62);

        _street.Check(true, () => Moves.Start(Bram, _job));
        _street.Check(true, () => Moves.MarkStrung(Runa, _job, new StrungEntry { StrungOn = Street.Today }));
        _street.Check(true, () => new ReadingStore(_street.Database, _street.Clock).Add(Bram, _job, new ReadingEntry { FormKey = FormKey.New(), TakenOn = Street.Today, Value = 60, InstrumentId = 1 }));
        _street.Check(true, () => new BackStore(_street.Database, _street.Time).Back(Bram, _job, JobState.Strung));

        Assert.Equal([(JobDeed.Started, "Bram"), (JobDeed.Strung, "Runa"), (JobDeed.Measured, "Bram"), (JobDeed.TakenBack, "Bram")], Deeds(Runa));
        Assert.Equal(_street.Clock.Now, new JobDeedStore(_street.Database).Of(Runa, _job)[0].MadeAt);
    }

    [Fact]
    public void What_was_refused_is_nobodys_deed()
    {
        Accounts.Add(_bram);
        _street.Check(true, () => Moves.Start(Bram, _job));

        Assert.IsType<Outcome.Refused>(Moves.Start(Runa, _job));

        Assert.Equal([(JobDeed.Started, "Bram")], Deeds(Runa));
    }

    [Fact]
    public void As_long_as_one_person_signs_in_no_name_is_shown_and_later_it_is()
    {
        _street.Check(true, () => Moves.Start(Runa, _job));
        Assert.Empty(Deeds(Runa));

        Accounts.Add(_bram);

        Assert.Equal([(JobDeed.Started, "Runa")], Deeds(Runa));
    }

    [Fact]
    public void Whoever_can_no_longer_sign_in_is_still_named()
    {
        Accounts.Add(_bram);
        _street.Check(true, () => Moves.Start(Bram, _job));

        _street.Check(true, () => new PeopleStore(_street.Database, _street.Time).End(Runa, _bram.Id));

        Assert.Equal([(JobDeed.Started, "Bram")], Deeds(Runa));
    }

    [Fact]
    public void Payment_and_price_say_who()
    {
        Accounts.Add(_bram);
        var charges = new ChargeStore(_street.Database, _street.Clock);

        _street.Check(true, () => charges.Save(Bram, _job, charges.Get(Runa, _job)!.Version, [new ChargeLine { Kind = ChargeKind.Labour, AmountMinor = 1800 }]));
        _street.Check(true, () => Payments.PayJob(Bram, _job, new PaymentEntry { PaidOn = Street.Today, Method = PaymentMethod.Cash }));

        Assert.Equal(("Bram", "Shop"), (charges.Changes(Runa, _job)[0].By, charges.Changes(Runa, _job)[0].MadeBy));
        Assert.Equal("Bram", Assert.Single(Payments.OfJob(Runa, _job)).By);
    }

    [Fact]
    public void What_happened_says_who_and_keeps_people_apart()
    {
        Accounts.Add(_bram);
        var audit = new AuditStore(_street.Database, _street.Time);

        audit.Add(AuditEvent.SignedIn, "by password", _runa.Id);
        audit.Add(AuditEvent.SignedIn, "by password", _bram.Id);
        audit.Add(AuditEvent.SignedIn, "by password", _bram.Id);
        audit.Add(AuditEvent.ContactShown);

        Assert.Equal([(null, 1L), ("Bram", 2L), ("Runa", 1L)], audit.Page(Runa, long.MaxValue).Select(line => (line.By, line.Times)));
    }

    [Fact]
    public void Racket_card_names_who_pressed_strung_where_nobody_was_entered()
    {
        Accounts.Add(_bram);
        _street.Check(true, () => Moves.MarkStrung(Bram, _job, new StrungEntry { StrungOn = Street.Today }));

        var racket = long.Parse(_street.Records.Text($"SELECT racket_id FROM job WHERE id = {_job}"), CultureInfo.InvariantCulture);

        Assert.Equal("Bram", new CardStore(_street.Database).Get(racket)!.Jobs.Single(job => job.Id == _job).StrungBy);
    }
}
