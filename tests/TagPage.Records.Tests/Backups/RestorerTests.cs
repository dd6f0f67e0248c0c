using Dapper;
using Microsoft.Data.Sqlite;
using Microsoft.Extensions.Logging.Abstractions;
using TagPage.Records.Accounts;
using TagPage.Records.Backups;
using TagPage.Records.Jobs;
using TagPage.Records.Shop;
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

    private Restorer Restorer => _vault.Restorer;

    /// <summary>That somebody went back is written down, and is all that is new.</summary>
    private string DumpButForTheNote()
    {
        Assert.Equal("1302 1", Street.Records.Text("SELECT event || ' ' || times FROM audit"));
        Street.Records.Change("DELETE FROM audit");
        return Street.Database.Dump();
    }

    [Fact]
    public void Everything_is_as_it_was_what_came_since_is_a_backup_of_its_own_and_going_back_can_be_taken_back()
    {
        var before = Street.Database.Dump();
        var file = _vault.BackUp();
        Street.Records.Client("Ilse Marrow");
        var since = Street.Database.Dump();
        var seen = Street.Database.Changes.OfAll;

        Restorer.Restore(file, null);
        Assert.NotEqual(seen, Street.Database.Changes.OfAll);
        Assert.Equal(before, DumpButForTheNote());
        Assert.Equal("ok", Street.Database.Read(c => c.ExecuteScalar<string>("PRAGMA integrity_check")));

        Street.Time.Advance(TimeSpan.FromMinutes(1));
        var aside = Assert.Single(_vault.Store.List(), b => b.Why == BackupFile.BeforeRestore);
        Restorer.Restore(aside.Path, null);
        Assert.Equal(since, DumpButForTheNote());
        Assert.Empty(Directory.GetDirectories(Path.Combine(Street.Folder.Root, "restoring")));
    }

    [Fact]
    public void Look_tells_what_is_in_it_and_changes_nothing()
    {
        var file = _vault.BackUp();
        Street.Records.Client("Ilse Marrow");
        var before = Street.Database.Dump();

        Assert.Equal((2, 3), (Restorer.Look(file, null).Clients, Restorer.Live().Clients));
        Assert.Equal(before, Street.Database.Dump());
    }

    [Fact]
    public void Database_that_the_running_program_cannot_read_is_gone_back_from_once_it_is_stopped()
    {
        var before = Street.Database.Dump();
        var file = _vault.BackUp();
        Street.Database.Dispose();
        using (var live = new FileStream(Street.Folder.DatabaseFile, FileMode.Open))
            live.Write("scribbled over"u8);

        Assert.Equal(RestoreFault.LiveUnreadable, Assert.Throws<NotRestoredException>(() => Restorer.Restore(file, null)).Fault);
        Assert.Equal([file], Directory.GetFiles(Street.Folder.Backups));

        Restorer.RestoreInto(Street.Folder, file, null, Migration.Embedded, Street.Time, NullLogger<Migrator>.Instance);
        Assert.Equal(before, DumpButForTheNote());
    }

    [Fact]
    public void Ticket_that_was_given_out_since_is_not_given_out_again()
    {
        var file = _vault.BackUp();
        Assert.Equal(("1002", "1003"), (NextTicket(), NextTicket()));

        Restorer.Restore(file, null);

        Assert.Equal("1004", NextTicket());
    }

    private string NextTicket()
    {
        var entry = new NewJobEntry { FormKey = FormKey.New(), MainsId = 1, MainsTension = 52, ReceivedOn = Street.Today };
        var made = Assert.IsType<Outcome.Done>(new NewJobStore(Street.Database, new ShopStore(Street.Database), Street.Clock).Add(Who.Shop, Street.Racket, entry));
        return Street.Records.Text($"SELECT ticket FROM job WHERE id = {made.Id}");
    }

    [Fact]
    public async Task What_is_written_meanwhile_is_in_the_records_or_in_what_was_put_aside()
    {
        var file = _vault.BackUp();
        using var begun = new ManualResetEventSlim();
        using var over = new CancellationTokenSource();
        var writing = Task.Run(() => Write(begun, over.Token), TestContext.Current.CancellationToken);
        Assert.True(begun.Wait(TimeSpan.FromSeconds(20), TestContext.Current.CancellationToken));

        Restorer.Restore(file, null);
        await over.CancelAsync();
        var written = await writing;

        using var aside = FullCheck.Open(Assert.Single(_vault.Store.List(), b => b.Why == BackupFile.BeforeRestore).Path);
        var held = aside.Query<string>("SELECT name FROM client").Concat(Street.Database.Read(c => c.Query<string>("SELECT name FROM client")));
        Assert.Empty(written.Except(held));
    }

    /// <summary>As somebody at the desk would, one after the other.</summary>
    private List<string> Write(ManualResetEventSlim begun, CancellationToken over)
    {
        var written = new List<string>();
        while (written.Count < 5000 && !over.IsCancellationRequested)
        {
            var name = $"Walker {written.Count}";
            Street.Records.Client(name);
            written.Add(name);
            begun.Set();
        }
        return written;
    }

    [Theory]
    [InlineData(0)]
    [InlineData(99)]
    public void Backup_whose_head_says_no_more_that_it_is_one_leaves_no_keys_in_the_records_and_the_next_is_made(int version)
    {
        KeyFiles.Write(Path.Combine(Street.Folder.Keys, "links.key"), new byte[32]);
        var file = _vault.BackUp();
        using (var backup = new SqliteConnection($"Data Source={file};Pooling=False"))
            backup.Execute($"PRAGMA user_version = {version}");

        Restorer.Restore(file, null);

        Assert.Equal(0, Street.Records.Count("sqlite_schema", "name = 'carried_key'"));
        Assert.Null(_vault.Store.Make(BackupFile.ByHand));
    }

    [Fact]
    public void Who_asked_to_be_forgotten_since_or_took_that_back_need_not_ask_again()
    {
        Street.Records.Change("UPDATE client SET forget_at = '2026-12-05T09:00:00.000Z' WHERE id = @Ewan", new { Street.Ewan });
        var file = _vault.BackUp();
        Street.Records.Change("UPDATE client SET forget_at = CASE WHEN id = @Ewan THEN NULL ELSE '2026-12-06T09:00:00.000Z' END", new { Street.Ewan });

        Restorer.Restore(file, null);

        Assert.Equal(["2026-12-06T09:00:00.000Z", null], Street.Database.Read(c => c.Query<string?>("SELECT forget_at FROM client ORDER BY id = @Ewan", new { Street.Ewan }).AsList()));
    }

    [Fact]
    public void Backup_whose_keys_are_rubbish_is_refused_where_they_would_be_needed()
    {
        KeyFiles.Write(Path.Combine(Street.Folder.Keys, "links.key"), new byte[32]);
        var file = _vault.BackUp();
        using (var backup = new SqliteConnection($"Data Source={file};Pooling=False"))
            backup.Execute("UPDATE carried_key SET bytes = x'00'");
        var machine = _vault.NewMachine;

        var refused = Assert.Throws<NotRestoredException>(() => Restorer.RestoreInto(machine, file, null, Migration.Embedded, Street.Time, NullLogger<Migrator>.Instance));

        Assert.Equal(RestoreFault.Damaged, refused.Fault);
        Assert.False(File.Exists(machine.DatabaseFile));
        Assert.False(KeyFiles.Any(machine));
    }

    [Fact]
    public void Backup_that_somebody_puts_into_a_new_folder_brings_its_keys()
    {
        KeyFiles.Write(Path.Combine(Street.Folder.Keys, "links.key"), new byte[32]);
        var machine = _vault.NewMachine;
        File.Copy(_vault.BackUp(), machine.DatabaseFile);

        using (var there = new Database(machine))
            Assert.Equal(0, there.Read(c => c.ExecuteScalar<int>("SELECT COUNT(*) FROM sqlite_schema WHERE name = 'carried_key'")));

        Assert.Equal(new byte[32], File.ReadAllBytes(Path.Combine(machine.Keys, "links.key")));
    }

    [Fact]
    public void New_machine_on_which_going_back_failed_is_as_it_was()
    {
        KeyFiles.Write(Path.Combine(Street.Folder.Keys, "links.key"), new byte[32]);
        var (file, machine) = (_vault.BackUp(), _vault.NewMachine);
        IReadOnlyList<Migration> broken = [.. Migration.Embedded, new("9999-broken.sql", "INSERT INTO nowhere VALUES (1)")];

        Assert.Throws<NotRestoredException>(() => Restorer.RestoreInto(machine, file, null, broken, Street.Time, NullLogger<Migrator>.Instance));

        Assert.Empty(Directory.GetFiles(machine.Root, "*", SearchOption.AllDirectories));
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
        var file = _vault.BackUp();
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
    public void Going_back_takes_neither_the_second_step_nor_a_passkey_away_and_brings_no_removed_one_back()
    {
        var passkeys = new PasskeyStore(Street.Database);
        passkeys.Save("a1", new PasskeyRow { Id = [1], Name = "lost phone" });
        var file = _vault.BackUp();
        passkeys.Remove("a1", [1]);
        passkeys.Save("a1", new PasskeyRow { Id = [2], Name = "new phone" });
        Street.Records.Change("UPDATE account SET two_factor = 1, authenticator_key = 'sealed', code_step = 7, recovery_hashes = 'hash'");

        Restorer.Restore(file, null);

        Assert.Equal("1 sealed 7 hash new phone", Street.Records.Text(
            "SELECT concat_ws(' ', two_factor, authenticator_key, code_step, recovery_hashes, (SELECT group_concat(name) FROM passkey)) FROM account"));
    }

    [Fact]
    public void Sealed_backup_of_the_second_folder_opens_with_its_passphrase_alone()
    {
        var seal = new BackupSeal(Street.Folder);
        seal.Set(Passphrase);
        _vault.Settings.Change(Who.Shop, new BackupSetting { Folder = _vault.Drive });
        var before = Street.Database.Dump();
        _vault.BackUp();
        seal.Remove();
        Street.Records.Client("Ilse Marrow");
        var file = Assert.Single(Directory.GetFiles(_vault.Drive, "*.sealed"));
        Assert.False(Vault.Says(file, "Odalys"));

        Assert.Equal(RestoreFault.NeedsPassphrase, Assert.Throws<NotRestoredException>(() => Restorer.Restore(file, null)).Fault);
        Restorer.Restore(file, Passphrase);

        Assert.Equal(before, DumpButForTheNote());
    }
}
