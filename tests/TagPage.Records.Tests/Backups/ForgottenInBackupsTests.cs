using Dapper;
using Microsoft.Extensions.Logging.Abstractions;
using TagPage.Records.Backups;
using TagPage.Records.Storage;
using TagPage.Records.Tests.Cast;

namespace TagPage.Records.Tests.Backups;

/// <summary>Whoever was forgotten stays forgotten, whatever comes back.</summary>
public sealed class ForgottenInBackupsTests : IDisposable
{
    private readonly Vault _vault = new();

    public void Dispose() => _vault.Dispose();

    private Street Street => _vault.Street;

    private Restorer Restorer => _vault.Restorer;

    [Fact]
    public void Whoever_was_forgotten_since_is_forgotten_again_and_nobody_else()
    {
        var file = _vault.BackUp();
        _vault.Forget(Street.Odalys);
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
        _vault.BackUp();
        var file = Assert.Single(Directory.GetFiles(_vault.Drive, "*.db"));
        File.Copy(file, file + ".kept");
        _vault.Forget(Street.Odalys);
        _vault.Store.Tend();
        File.Move(file + ".kept", file, overwrite: true);
        var machine = _vault.NewMachine;

        Restorer.RestoreInto(machine, file, null, Migration.Embedded, Street.Time, NullLogger<Migrator>.Instance);

        using (var there = new Database(machine))
            Assert.Equal(["Ewan Lockyer"], there.Read(c => c.Query<string>("SELECT name FROM client").AsList()));
        Assert.False(Vault.Says(machine.DatabaseFile, "Odalys"));
    }

    [Fact]
    public void Whoever_was_deleted_today_stays_forgotten_where_the_database_is_lost_before_the_next_backup()
    {
        var file = _vault.BackUp();
        _vault.Forget(Street.Odalys);
        var machine = _vault.NewMachine;
        foreach (var beside in Directory.GetFiles(Street.Folder.Backups))
            File.Copy(beside, Path.Combine(machine.Backups, Path.GetFileName(beside)));

        Restorer.RestoreInto(machine, Path.Combine(machine.Backups, Path.GetFileName(file)), null, Migration.Embedded, Street.Time, NullLogger<Migrator>.Instance);

        using var there = new Database(machine);
        Assert.Equal(["Ewan Lockyer"], there.Read(c => c.Query<string>("SELECT name FROM client").AsList()));
    }

    [Fact]
    public void Backup_by_hand_brings_its_marks_along()
    {
        _vault.Forget(Street.Odalys);
        File.Delete(Path.Combine(Street.Folder.Backups, "forgotten.txt"));

        _vault.BackUp();

        Assert.Single(File.ReadAllLines(Path.Combine(Street.Folder.Backups, "forgotten.txt")));
    }

    [Fact]
    public void Next_night_forgets_in_older_backups_too_and_they_stay_sound() => ForgetsByMorning(_vault.BackUp());

    [Fact]
    public void Next_night_forgets_in_the_second_folder_too_where_nothing_is_sealed()
    {
        _vault.Settings.Change(Who.Shop, new BackupSetting { Folder = _vault.Drive });
        _vault.BackUp();

        ForgetsByMorning(Assert.Single(Directory.GetFiles(_vault.Drive, "*.db")));
    }

    private void ForgetsByMorning(string file)
    {
        _vault.Forget(Street.Odalys);
        Assert.True(Vault.Says(file, "Odalys"));

        Street.Time.Advance(TimeSpan.FromDays(1));
        _vault.Store.Tend();

        Assert.False(Vault.Says(file, "Odalys"));
        Restorer.Restore(file, null);
        Assert.Equal(["Ewan Lockyer"], Street.Database.Read(c => c.Query<string>("SELECT name FROM client").AsList()));
    }

    [Fact]
    public void Old_backup_that_is_damaged_keeps_no_other_from_forgetting()
    {
        var older = _vault.BackUp();
        Street.Time.Advance(TimeSpan.FromDays(1));
        var damaged = _vault.BackUp();
        File.WriteAllText(damaged, "scribbled over");
        _vault.Forget(Street.Odalys);

        Street.Time.Advance(TimeSpan.FromDays(1));
        _vault.Store.Tend();

        Assert.False(Vault.Says(older, "Odalys"));
        Assert.True(Vault.Says(damaged, "scribbled over"));
    }
}
