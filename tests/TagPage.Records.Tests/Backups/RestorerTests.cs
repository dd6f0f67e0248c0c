using Dapper;
using Microsoft.Data.Sqlite;
using Microsoft.Extensions.Logging.Abstractions;
using TagPage.Records.Backups;
using TagPage.Records.Import;
using TagPage.Records.Outbox;
using TagPage.Records.Privacy;
using TagPage.Records.Search;
using TagPage.Records.Storage;
using TagPage.Records.Tests.Cast;
using TagPage.Web.Tests.Cast;

namespace TagPage.Records.Tests.Backups;

public sealed class RestorerTests : IDisposable
{
    private const string Passphrase = "four grey herons walking";

    private readonly Vault _vault = new();

    public void Dispose() => _vault.Dispose();

    private Street Street => _vault.Street;

    private Restorer Restorer => new(Street.Database, Street.Folder, _vault.Store, new NameKeeper(Street.Database), Migration.Embedded, Street.Time, NullLogger<Migrator>.Instance);

    private string BackUp()
    {
        Assert.Null(_vault.Store.Make(BackupFile.ByHand));
        var file = _vault.Store.List()[0].Path;
        Street.Time.Advance(TimeSpan.FromMinutes(1));
        return file;
    }

    [Fact]
    public void Everything_is_as_it_was_what_came_since_is_a_backup_of_its_own_and_going_back_can_be_taken_back()
    {
        var before = Street.Database.Dump();
        var file = BackUp();
        Street.Records.Client("Ilse Marrow");
        var since = Street.Database.Dump();
        var seen = Street.Database.Changes.OfAll;

        Restorer.Restore(file, null);
        Assert.Equal(before, Street.Database.Dump());
        Assert.NotEqual(seen, Street.Database.Changes.OfAll);
        Assert.Equal("ok", Street.Database.Read(c => c.ExecuteScalar<string>("PRAGMA integrity_check")));

        Street.Time.Advance(TimeSpan.FromMinutes(1));
        var aside = Assert.Single(_vault.Store.List(), b => b.Why == BackupFile.BeforeRestore);
        Restorer.Restore(aside.Path, null);
        Assert.Equal(since, Street.Database.Dump());
        Assert.Empty(Directory.GetDirectories(Path.Combine(Street.Folder.Root, "restoring")));
    }

    [Fact]
    public void Look_tells_what_is_in_it_and_changes_nothing()
    {
        var file = BackUp();
        Street.Records.Client("Ilse Marrow");
        var before = Street.Database.Dump();

        Assert.Equal((2, 3), (Restorer.Look(file, null).Clients, Restorer.Live().Clients));
        Assert.Equal(before, Street.Database.Dump());
    }

    [Fact]
    public void Whoever_was_forgotten_since_is_forgotten_again_and_nobody_else()
    {
        Street.Records.Change("UPDATE job SET paid_on = '2026-11-20'");
        var file = BackUp();
        new EraseStore(Street.Database, new MailFiles(Street.Folder), new Uploads(Street.Folder, Street.Time), Street.Time).Erase(Street.Odalys);
        // A number that is wound back would be given to somebody else, who is not to be taken for the one who was forgotten.
        var ilse = Street.Records.Client("Ilse Marrow");

        Restorer.Restore(file, null);

        Assert.Equal(0, Street.Records.Count("client", "name = 'Odalys Ferran'"));
        Assert.Equal(1, Street.Records.Count("client", "name = 'Ewan Lockyer'"));
        Assert.Equal(0, Street.Records.Count("player", "name = 'Pim Ferran'"));
        Assert.True(Street.Records.Client("Teo Quill") > ilse);
    }

    [Fact]
    public void Marks_beside_a_backup_hold_where_the_machine_that_made_it_is_gone()
    {
        _vault.Settings.Change(Who.Shop, new BackupSetting { Folder = _vault.Drive });
        Street.Records.Change("UPDATE job SET paid_on = '2026-11-20'");
        BackUp();
        var file = Assert.Single(Directory.GetFiles(_vault.Drive, "*.db"));
        File.Copy(file, file + ".kept");
        new EraseStore(Street.Database, new MailFiles(Street.Folder), new Uploads(Street.Folder, Street.Time), Street.Time).Erase(Street.Odalys);
        _vault.Store.Tend();
        File.Move(file + ".kept", file, overwrite: true);
        var machine = new DataFolder(_vault.Drive + ".new-machine");

        Restorer.RestoreInto(machine, file, null, Migration.Embedded, Street.Time, NullLogger<Migrator>.Instance);

        using (var there = new Database(machine))
            Assert.Equal(["Ewan Lockyer"], there.Read(c => c.Query<string>("SELECT name FROM client").AsList()));
        Assert.DoesNotContain("Odalys", System.Text.Encoding.Latin1.GetString(File.ReadAllBytes(machine.DatabaseFile)), StringComparison.Ordinal);
        Directory.Delete(machine.Root, recursive: true);
    }

    [Fact]
    public void Next_night_forgets_in_older_backups_too_and_they_stay_sound()
    {
        Street.Records.Change("UPDATE job SET paid_on = '2026-11-20'");
        var file = BackUp();
        new EraseStore(Street.Database, new MailFiles(Street.Folder), new Uploads(Street.Folder, Street.Time), Street.Time).Erase(Street.Odalys);
        Assert.Contains("Odalys", System.Text.Encoding.Latin1.GetString(File.ReadAllBytes(file)), StringComparison.Ordinal);

        Street.Time.Advance(TimeSpan.FromDays(1));
        _vault.Store.Tend();

        Assert.DoesNotContain("Odalys", System.Text.Encoding.Latin1.GetString(File.ReadAllBytes(file)), StringComparison.Ordinal);
        Restorer.Restore(file, null);
        Assert.Equal(["Ewan Lockyer"], Street.Database.Read(c => c.Query<string>("SELECT name FROM client").AsList()));
    }

    [Fact]
    public void No_email_goes_out_twice_and_nobody_who_signed_out_is_signed_in_again()
    {
        Street.Records.Change("""
            INSERT INTO outbox (kind, to_client_id, message_id, not_before, made_at) VALUES ('ClientNotice', 1, 'm1', '2026-11-25T09:00:00.000Z', '2026-11-25T09:00:00.000Z');
            INSERT INTO reminder_batch (made_at) VALUES ('2026-11-25T09:00:00.000Z');
            INSERT INTO session (id, account_id, made_at) VALUES ('0123456789abcdef0123456789abcdef', 'a1', '2026-11-25T09:00:00.000Z');
            """);
        Street.Fresh(Street.Odalys);
        var file = BackUp();
        Street.Records.Change("""
            UPDATE account SET password_hash = 'new hash', security_stamp = 'new stamp';
            UPDATE session SET id = 'fedcba9876543210fedcba9876543210';
            """);

        Restorer.Restore(file, null);

        Assert.Equal((1, 0), (Street.Records.Count("outbox", "state = 'MaybeSent'"), Street.Records.Count("reminder_batch", "stopped_at IS NULL")));
        Assert.Equal("new hash fedcba9876543210fedcba9876543210", Street.Records.Text("SELECT password_hash || ' ' || session.id FROM account JOIN session"));
        Assert.Equal(0, Street.Records.Count("own_page_session"));
    }

    [Fact]
    public void Sealed_backup_of_the_second_folder_opens_with_its_passphrase_alone()
    {
        var seal = new BackupSeal(Street.Folder);
        seal.Set(Passphrase);
        _vault.Settings.Change(Who.Shop, new BackupSetting { Folder = _vault.Drive });
        var before = Street.Database.Dump();
        BackUp();
        seal.Remove();
        Street.Records.Client("Ilse Marrow");
        var file = Assert.Single(Directory.GetFiles(_vault.Drive, "*.sealed"));
        Assert.DoesNotContain("Odalys", System.Text.Encoding.Latin1.GetString(File.ReadAllBytes(file)), StringComparison.Ordinal);

        Assert.Equal(RestoreFault.NeedsPassphrase, Assert.Throws<NotRestoredException>(() => Restorer.Restore(file, null)).Fault);
        Restorer.Restore(file, Passphrase);

        Assert.Equal(before, Street.Database.Dump().Replace("folder=" + _vault.Drive, "folder=" + _vault.Drive, StringComparison.Ordinal));
    }
}
