using TagPage.Records.Audit;
using TagPage.Records.Storage;
using TagPage.Records.Tests.Cast;

namespace TagPage.Records.Tests.Audit;

public sealed class AuditStoreTests : IDisposable
{
    private readonly Vault _vault = new();
    private readonly Street _street;
    private readonly AuditStore _store;

    public AuditStoreTests()
    {
        _street = _vault.Street;
        _store = new AuditStore(_street.Database, _street.Time);
    }

    public void Dispose() => _vault.Dispose();

    private IEnumerable<(AuditEvent, string, long)> Lines => _store.Page(Who.Shop, long.MaxValue).Select(row => (row.Event, row.Detail, row.Times));

    [Fact]
    public void What_happens_alike_within_an_hour_is_one_line_and_the_next_hour_another()
    {
        _store.Add(AuditEvent.SignInFailed);
        _street.Time.Advance(TimeSpan.FromMinutes(59));
        _store.Add(AuditEvent.SignInFailed);
        _store.Add(AuditEvent.SignedIn, "by password");
        _street.Time.Advance(TimeSpan.FromMinutes(1));
        _store.Add(AuditEvent.SignInFailed);

        Assert.Equal([(AuditEvent.SignInFailed, "", 1), (AuditEvent.SignedIn, "by password", 1), (AuditEvent.SignInFailed, "", 2)], Lines);
        Assert.Equal(TimeSpan.FromMinutes(59), _store.Page(Who.Shop, long.MaxValue)[^1] is var first ? first.LastAt - first.FirstAt : default);
    }

    [Fact]
    public void Lines_are_kept_a_year_and_a_page_holds_a_hundred_and_tells_of_more()
    {
        _store.Add(AuditEvent.SignedIn, "a year ago");
        _street.Time.Advance(TimeSpan.FromDays(366) + TimeSpan.FromSeconds(1));
        for (var n = 0; n <= AuditStore.OnAPage; n++)
            _store.Add(AuditEvent.SettingChanged, $"page {n}");

        var page = _store.Page(Who.Shop, long.MaxValue);

        Assert.Equal(AuditStore.OnAPage + 1, page.Count);
        Assert.Equal("page 0", Assert.Single(_store.Page(Who.Shop, page[AuditStore.OnAPage - 1].Id)).Detail);
    }

    [Fact]
    public void Going_back_winds_everything_back_but_this()
    {
        var file = _vault.BackUp();
        _store.Add(AuditEvent.SignInFailed);

        _vault.Restorer.Restore(file, null);

        Assert.Equal([(AuditEvent.WentBack, Path.GetFileName(file), 1), (AuditEvent.SignInFailed, "", 1)], Lines);
    }

    [Fact]
    public void Deletion_is_written_down_with_the_clients_number_and_no_name()
    {
        _vault.Forget(_street.Ewan);

        Assert.Equal([(AuditEvent.ClientErased, $"client {_street.Ewan}", 1)], Lines);
    }
}
