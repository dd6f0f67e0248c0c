using Dapper;
using Microsoft.Data.Sqlite;
using Microsoft.Extensions.Logging.Abstractions;
using TagPage.Records.Backups;
using TagPage.Records.Storage;
using TagPage.Records.Tests.Cast;
using TagPage.Web.Tests.Cast;

namespace TagPage.Records.Tests.Backups;

public sealed class BackupStoreTests : IDisposable
{
    private readonly Vault _vault = new();

    public void Dispose() => _vault.Dispose();

    private Street Street => _vault.Street;

    [Fact]
    public void Night_makes_one_that_holds_everything_and_the_next_quarters_of_an_hour_make_none()
    {
        _vault.Store.Tend();
        Street.Time.Advance(TimeSpan.FromMinutes(15));
        _vault.Store.Tend();

        var made = Assert.Single(_vault.Store.List());
        Assert.Equal(("20261125-100000-nightly.db", Street.Time.GetUtcNow().AddMinutes(-15)), (made.Name, _vault.Store.State().LastGood));
        Assert.Equal(Street.Database.Dump(), Vault.DumpOf(made.Path));

        Street.Time.Advance(TimeSpan.FromHours(17));
        _vault.Store.Tend();
        Assert.Equal(2, _vault.Own.Length);
    }

    [Fact]
    public void Shop_that_nobody_has_set_up_has_nothing_to_lose()
    {
        Street.Records.Change("DELETE FROM account");

        _vault.Store.Tend();

        Assert.Empty(_vault.Own);
    }

    [Fact]
    public void Keys_go_along_and_are_no_longer_in_what_somebody_starts_from()
    {
        KeyFiles.Write(Path.Combine(Street.Folder.Keys, "links.key"), new byte[32]);

        Assert.Null(_vault.Store.Make(BackupFile.ByHand));

        var file = _vault.Store.List()[0].Path;
        using (var copy = FullCheck.Open(file))
            Assert.Equal(32, copy.ExecuteScalar<byte[]>("SELECT bytes FROM carried_key WHERE name = 'links.key'")!.Length);
        Assert.Equal(Street.Database.Dump(), Vault.DumpOf(file));
    }

    [Theory]
    [InlineData("PRAGMA foreign_keys = OFF; UPDATE player SET client_id = 99;")]
    [InlineData("PRAGMA ignore_check_constraints = ON; UPDATE client SET name = '';")]
    public void Copy_that_does_not_pass_its_check_gets_no_name_and_is_said_to_have_failed(string damage)
    {
        _vault.Store.Tend();
        using (var other = new SqliteConnection($"Data Source={Street.Folder.DatabaseFile};Pooling=False"))
        {
            other.Open();
            other.Execute(damage);
        }
        Street.Time.Advance(TimeSpan.FromDays(1));

        Assert.Equal(BackupFault.Damaged, _vault.Store.Make(BackupFile.ByHand));

        Assert.Equal(["20261125-100000-nightly.db"], _vault.Own);
        Assert.Equal((Street.Time.GetUtcNow().AddDays(-1), BackupFault.Damaged), (_vault.Store.State().LastGood, _vault.Store.State().Fault));
    }

    [Fact]
    public void Fifty_tries_that_fail_leave_nothing_behind()
    {
        Street.Records.Change("UPDATE shop SET town = town");
        using (var other = new SqliteConnection($"Data Source={Street.Folder.DatabaseFile};Pooling=False"))
        {
            other.Open();
            other.Execute("PRAGMA foreign_keys = OFF; UPDATE player SET client_id = 99;");
        }

        for (var n = 0; n < 50; n++)
            _vault.Store.Make(BackupFile.ByHand);

        Assert.Empty(_vault.Own);
    }

    [Fact]
    public void What_a_program_that_was_ended_left_unfinished_goes_after_an_hour_and_the_owners_own_files_stay()
    {
        var (left, own) = (Path.Combine(Street.Folder.Backups, "20261125-090000-nightly.db.1a2b3c4d.new"), Path.Combine(Street.Folder.Backups, "before-christmas.db"));
        File.WriteAllText(own, "the owner's own");
        foreach (var part in new[] { left, left + "-journal" })
        {
            File.WriteAllText(part, "half");
            File.SetLastWriteTimeUtc(part, Street.Time.GetUtcNow().UtcDateTime.AddMinutes(-59));
        }

        _vault.Store.Tend();
        Assert.Contains(Path.GetFileName(left), _vault.Own);

        Street.Time.Advance(TimeSpan.FromDays(1));
        _vault.Store.Tend();
        Assert.Equal(["20261125-100000-nightly.db", "20261126-100000-nightly.db", "before-christmas.db"], _vault.Own);
    }

    [Fact]
    public void Second_folder_gets_each_and_catches_up_when_its_drive_is_back()
    {
        Assert.IsType<Outcome.Done>(_vault.Settings.Change(Who.Shop, new BackupSetting { Folder = _vault.Drive, Days = 2, Weeks = 0, Months = 0 }));
        _vault.Store.Tend();
        Assert.Equal(["20261125-100000-nightly.db"], _vault.OnDrive);

        Directory.Move(_vault.Drive, _vault.Drive + ".unplugged");
        Street.Time.Advance(TimeSpan.FromDays(1));
        _vault.Store.Tend();
        Assert.Equal((null, BackupFault.FolderMissing), (_vault.Store.State().Fault, _vault.Store.State().Second!.Fault));
        Assert.False(Directory.Exists(_vault.Drive));

        Directory.Move(_vault.Drive + ".unplugged", _vault.Drive);
        Street.Time.Advance(TimeSpan.FromMinutes(15));
        _vault.Store.Tend();
        Assert.Equal(["20261125-100000-nightly.db", "20261126-100000-nightly.db"], _vault.OnDrive);
        Assert.Equal((Street.Time.GetUtcNow().AddMinutes(-15), (BackupFault?)null), (_vault.Store.State().Second!.LastGood, _vault.Store.State().Second!.Fault));

        Street.Time.Advance(TimeSpan.FromDays(1));
        _vault.Store.Tend();
        Assert.Equal(["20261126-100000-nightly.db", "20261127-101500-nightly.db"], _vault.OnDrive);
    }

    [Fact]
    public void Second_folder_gets_only_what_was_made_for_the_long_run()
    {
        _vault.Settings.Change(Who.Shop, new BackupSetting { Folder = _vault.Drive });
        _vault.Store.Tend();
        foreach (var left in Directory.GetFiles(_vault.Drive))
            File.Delete(left);

        Assert.Null(_vault.Store.Make(BackupFile.BeforeImport));
        Assert.Empty(_vault.OnDrive);

        Assert.Null(_vault.Store.Make(BackupFile.ByHand));
        Assert.Equal(["20261125-100000-by-hand.db"], _vault.OnDrive);
    }

    [Fact]
    public void Database_whose_head_is_damaged_is_found_by_the_daily_check_and_by_the_backup()
    {
        Street.Database.Dispose();
        using (var file = new FileStream(Street.Folder.DatabaseFile, FileMode.Open))
            file.Write("scribbled over"u8);
        using var check = new DatabaseCheck(Street.Database, Street.Time, NullLogger<DatabaseCheck>.Instance);

        check.Look();

        Assert.False(check.IsSound);
        Assert.Equal(BackupFault.Damaged, BackupFaults.Of(new SqliteException("file is not a database", 26)));
    }

    [Fact]
    public void Folder_that_is_missing_or_lies_in_the_data_folder_is_refused()
    {
        Street.Refused<BackupFolderMissing>(() => _vault.Settings.Change(Who.Shop, new BackupSetting { Folder = "/media/not/there" }));
        Street.Refused<BackupFolderMissing>(() => _vault.Settings.Change(Who.Shop, new BackupSetting { Folder = "backups" }));
        Street.Refused<BackupFolderIsData>(() => _vault.Settings.Change(Who.Shop, new BackupSetting { Folder = Street.Folder.Backups }));
        Street.Refused<BackupFolderIsData>(() => _vault.Settings.Change(Who.Shop, new BackupSetting { Folder = Path.GetTempPath() }));
    }
}
