using Microsoft.Data.Sqlite;
using Microsoft.Extensions.Logging.Abstractions;
using TagPage.Records.Import;
using TagPage.Records.Outbox;
using TagPage.Records.Privacy;
using TagPage.Records.Tests.Cast;

namespace TagPage.Records.Tests.Faults;

/// <summary>What lies beside the database goes with a client's records, and never after them.</summary>
public sealed class ErasingTests : IDisposable
{
    private readonly Street _street = new();
    private readonly MailFiles _files;
    private readonly EraseStore _erase;

    public ErasingTests()
    {
        _files = new MailFiles(_street.Folder);
        _erase = new EraseStore(_street.Database, _files, new Uploads(_street.Folder, _street.Time), _street.Folder, _street.Time, NullLogger<EraseStore>.Instance);
        _street.Records.Change("""
            INSERT INTO outbox (kind, to_client_id, message_id, state, not_before, made_at, sent_at)
            VALUES ('ClientNotice', @Odalys, 'hers', 'Sent', '2026-11-25T09:00:00.000Z', '2026-11-25T09:00:00.000Z', '2026-11-25T09:00:00.000Z')
            """, new { _street.Odalys });
        File.WriteAllText(_files.PathOf("hers"), "Dear Odalys");
    }

    public void Dispose() => _street.Dispose();

    [Fact]
    public void Deletion_broken_off_at_its_commit_leaves_the_client_to_be_deleted_again()
    {
        var fault = new Interruption(_street.Database);
        fault.AtCommit();

        Assert.Throws<SqliteException>(() => _erase.Erase(_street.Odalys));

        Assert.Equal("1", _street.Records.Text("SELECT COUNT(*) FROM client WHERE name = 'Odalys Ferran'"));
        fault.Never();
        _erase.Erase(_street.Odalys);
        Assert.Equal("0", _street.Records.Text("SELECT COUNT(*) FROM client WHERE name = 'Odalys Ferran'"));
        Assert.False(File.Exists(_files.PathOf("hers")));
    }

    [Fact]
    public void Email_file_that_cannot_be_deleted_leaves_the_client_to_be_deleted_again()
    {
        File.Delete(_files.PathOf("hers"));
        Directory.CreateDirectory(_files.PathOf("hers"));

        Assert.ThrowsAny<Exception>(() => _erase.Erase(_street.Odalys));

        Assert.Equal("1", _street.Records.Text("SELECT COUNT(*) FROM client WHERE name = 'Odalys Ferran'"));
    }
}
