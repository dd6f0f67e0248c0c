using TagPage.Records.Backups;
using TagPage.Records.Storage;
using TagPage.Records.Tests.Cast;

namespace TagPage.Records.Tests.Backups;

/// <summary>A seal that is damaged lets nothing travel unsealed.</summary>
public sealed class BackupSealTests : IDisposable
{
    private readonly Vault _vault = new();
    private readonly BackupSeal _seal;
    private readonly string _file;

    public BackupSealTests()
    {
        _seal = new BackupSeal(_vault.Street.Folder);
        _seal.Set("four grey herons walking");
        _file = Path.Combine(_vault.Street.Folder.Keys, "backups.seal");
        Assert.IsType<Outcome.Done>(_vault.Settings.Change(Who.Shop, new BackupSetting { Folder = _vault.Drive }));
    }

    public void Dispose() => _vault.Dispose();

    [Theory]
    [InlineData(0)]
    [InlineData(47)]
    [InlineData(49)]
    public void Nothing_reaches_the_second_folder_while_the_seal_is_damaged(int bytes)
    {
        File.WriteAllBytes(_file, new byte[bytes]);

        Assert.Null(_vault.Store.Make(BackupFile.ByHand));

        Assert.Empty(_vault.OnDrive);
        Assert.Equal(BackupFault.Other, _vault.Store.State().Second!.Fault);
        Assert.Contains("backups.seal is damaged", Assert.Throws<CannotStartException>(() => KeyFiles.RefuseDamaged(_vault.Street.Folder)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Whole_seal_seals_and_lets_the_program_start()
    {
        KeyFiles.RefuseDamaged(_vault.Street.Folder);

        Assert.Null(_vault.Store.Make(BackupFile.ByHand));

        Assert.Equal(["20261125-100000-by-hand.sealed"], _vault.OnDrive);
    }

    [Fact]
    public void Passphrase_that_could_not_be_written_leaves_the_one_before()
    {
        var before = File.ReadAllBytes(_file);
        Directory.CreateDirectory(_file + ".new");

        Assert.ThrowsAny<Exception>(() => _seal.Set("otters under bridges"));

        Assert.Equal(before, File.ReadAllBytes(_file));
    }

    [Fact]
    public void New_passphrase_takes_the_place_of_the_one_before()
    {
        var before = File.ReadAllBytes(_file);

        _seal.Set("otters under bridges");

        Assert.NotEqual(before, File.ReadAllBytes(_file));
    }
}
