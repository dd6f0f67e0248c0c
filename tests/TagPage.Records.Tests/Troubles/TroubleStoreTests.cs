using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Records.Backups;
using TagPage.Records.Reminders;
using TagPage.Records.Stock;
using TagPage.Records.Storage;
using TagPage.Records.Tests.Cast;
using TagPage.Records.Troubles;

namespace TagPage.Records.Tests.Troubles;

public sealed class TroubleStoreTests : IDisposable
{
    private readonly Vault _vault = new();
    private readonly TroubleStore _troubles;

    public TroubleStoreTests() =>
        _troubles = new TroubleStore(_vault.Check, new GivenUpStore(_vault.Street.Database, _vault.Street.Clock), new StockStore(_vault.Street.Database, _vault.Street.Clock), _vault.Street.Folder, _vault.Street.Clock);

    public void Dispose() => _vault.Dispose();

    [Fact]
    public void String_that_runs_out_is_named_until_there_is_enough_again()
    {
        var stock = new StockStore(_vault.Street.Database, _vault.Street.Clock);
        var kind = _vault.Street.Records.Kind();
        stock.Keep(Who.Shop, kind, new StockEntry { RacketCm = 1_200, ReorderCm = 2_400 });
        Assert.Equal([new StringsLow(1)], All());

        stock.Buy(Who.Shop, kind, new BoughtEntry { FormKey = FormKey.New(), Centimetres = 2_401 });

        Assert.Empty(All());
    }

    /// <summary>All but the disk's, which is the machine's own.</summary>
    private List<Trouble> All() => [.. _troubles.All(_vault.Store.State()).Where(t => t is not DiskFilling)];

    [Fact]
    public void Backup_is_old_after_three_days_and_not_before()
    {
        Assert.Empty(All());
        _vault.Store.Tend();
        var made = _vault.Street.Time.GetUtcNow();

        _vault.Street.Time.Advance(TimeSpan.FromDays(3));
        Assert.Empty(All());

        _vault.Street.Time.Advance(TimeSpan.FromSeconds(1));
        Assert.Equal([new BackupOld(made)], All());
    }

    [Fact]
    public void Backup_that_failed_and_damage_are_grave_until_they_are_over()
    {
        _vault.Street.Records.Change("PRAGMA ignore_check_constraints = ON; UPDATE client SET name = ''; PRAGMA ignore_check_constraints = OFF;");
        _vault.Check.Look();
        _vault.Store.Tend();
        Assert.Equal([new DatabaseDamaged(), new BackupFailed(BackupFault.Damaged, null)], All());

        _vault.Street.Records.Change("UPDATE client SET name = 'Ilse Marrow'");
        _vault.Check.Look();
        _vault.Store.Tend();
        Assert.Empty(All());
    }

    /// <summary>Both look through the records, and the one that found something is believed until they were looked through again.</summary>
    [Fact]
    public void Backup_that_finds_damage_tells_of_the_records_too_before_the_daily_check()
    {
        BehindItsBack("UPDATE player SET client_id = 99");

        _vault.Store.Tend();
        Assert.Equal([new DatabaseDamaged(), new BackupFailed(BackupFault.Damaged, null)], All());
        _vault.Check.Look();
        Assert.Contains(new DatabaseDamaged(), All());

        BehindItsBack("UPDATE player SET client_id = 1");
        _vault.Check.Look();
        Assert.DoesNotContain(new DatabaseDamaged(), All());
    }

    /// <summary>What no connection of the program lets through.</summary>
    private void BehindItsBack(string sql)
    {
        using var other = new SqliteConnection($"Data Source={_vault.Street.Folder.DatabaseFile};Pooling=False");
        other.Open();
        other.Execute("PRAGMA foreign_keys = OFF; " + sql);
    }

    [Fact]
    public void File_where_backups_should_go_is_named()
    {
        File.WriteAllText(_vault.Street.Folder.BackupsPath, "not a folder");

        _vault.Store.Tend();

        Assert.Equal([new BackupFailed(BackupFault.NotAFolder, null)], All());
    }

    /// <summary>Root may look into everything.</summary>
    [Fact]
    public void Folder_that_may_not_be_looked_into_is_told_and_breaks_nothing()
    {
        if (OperatingSystem.IsWindows() || Environment.IsPrivilegedProcess)
        {
            Assert.Skip("No folder is closed to this user.");
            return;
        }
        File.SetUnixFileMode(_vault.Street.Folder.Backups, UnixFileMode.None);

        _vault.Store.Tend();

        Assert.Equal([new BackupFailed(BackupFault.NotWritable, null)], All());
        File.SetUnixFileMode(_vault.Street.Folder.Backups, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
    }

    [Theory]
    [InlineData("ClientNotice", 8, "", 1)]
    [InlineData("FoundNotice", 1, "", 1)]
    [InlineData("ClientNotice", 8, "UPDATE outbox SET let_go = 1", 0)]
    [InlineData("ClientNotice", 0, "", 0)]
    [InlineData("OwnPageCode", 8, "", 0)]
    public void Emails_given_up_after_they_were_tried_stand_there_until_they_are_let_go(string kind, int tries, string since, int seen)
    {
        GivenUp(kind, tries);
        _vault.Street.Records.Change(since.Length > 0 ? since : "UPDATE shop SET town = town");

        Assert.Equal(seen, All().OfType<MailGivenUp>().Sum(m => m.All));
    }

    [Fact]
    public void Finders_news_that_did_not_get_through_is_grave_and_all_are_tried_again_in_one_press()
    {
        GivenUp("FoundNotice", 1);
        GivenUp("ClientNotice", 8);
        Assert.Equal([new MailGivenUp(2, 1)], All());

        var outcome = new GivenUpStore(_vault.Street.Database, _vault.Street.Clock).RetryAll(Who.Shop);

        Assert.Equal(new Outcome.Done(2), outcome);
        Assert.Equal(2, _vault.Street.Records.Count("outbox", "state = 'Queued' AND tries = 0"));
        Assert.Empty(All());
    }

    [Theory]
    [InlineData("UPDATE client SET reminders = 0")]
    [InlineData("UPDATE reminder_racket SET answer = 'NotYet', answered_at = '2026-11-25T09:30:00.000Z'")]
    public void Reminder_that_nobody_wants_any_more_or_that_was_answered_is_no_trouble(string since)
    {
        _vault.Street.Records.Reminder(_vault.Street.Odalys, _vault.Street.Racket);
        GivenUp("Reminder", 8);
        _vault.Street.Records.Change("UPDATE outbox SET reminder_id = 1");
        Assert.Equal([new MailGivenUp(1, 0)], All());

        _vault.Street.Records.Change(since);

        Assert.Empty(All());
    }

    [Theory]
    [InlineData(1_000_000_000, 1_000_000, null)]
    [InlineData(500_000_000, 1_000_000, null)]
    [InlineData(499_999_999, 1_000_000, false)]
    [InlineData(49_999_999, 1_000_000, true)]
    [InlineData(2_000_000_000, 900_000_000, false)]
    [InlineData(800_000_000, 900_000_000, true)]
    public void Disk_is_filling_where_little_is_left_or_no_backup_fits(long free, long database, bool? isGrave) =>
        Assert.Equal(isGrave, DiskRoom.Judge(free, database)?.IsGrave);

    private void GivenUp(string kind, int tries) => _vault.Street.Records.Change("""
        INSERT INTO outbox (kind, to_client_id, message_id, state, tries, not_before, made_at)
        VALUES (@kind, @Odalys, @kind, 'Failed', @tries, '2026-11-25T09:00:00.000Z', '2026-11-25T09:00:00.000Z')
        """, new { kind, tries, _vault.Street.Odalys });
}
