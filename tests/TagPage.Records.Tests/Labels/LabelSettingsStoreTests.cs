using Dapper;
using TagPage.Records.Labels;
using TagPage.Records.Storage;
using TagPage.Web.Tests.Cast;

namespace TagPage.Records.Tests.Labels;

public sealed class LabelSettingsStoreTests : IDisposable
{
    private static readonly LabelSettings Other = new()
    {
        TapeMm = 24.5m,
        MarginMm = 2.1m,
        Dpi = 360,
        LongestMm = 90.3m,
        LargestPoints = 11.5m,
        SmallestModuleMm = 0.27m,
        FineModuleMm = 0.35m,
        LargestModuleMm = 0.61m,
        FoldGapMm = 31.7m,
        LongestFoldMm = 130.5m,
        NameLeads = true,
        AddressInWords = true,
        TapeColour = "yellow",
        InkColour = "red",
        ReturnWords = "Scan \"me\"; I'm <lost> {link}",
        SheetPaper = "Letter",
        SheetColumns = 4,
        SheetRows = 9,
        SheetWidthMm = 50.8m,
        SheetHeightMm = 25.4m,
        SheetLeftMm = 10.1m,
        SheetTopMm = 20.2m,
        SheetPitchXMm = 52.3m,
        SheetPitchYMm = 27.9m,
    };

    private readonly EmptyDatabase _home = new();

    public LabelSettingsStoreTests() => _home.Migrator(Migration.Embedded).Run();

    private LabelSettingsStore Store => new(_home.Database);

    public void Dispose() => _home.Dispose();

    [Fact]
    public void Every_setting_comes_back_as_it_was_saved()
    {
        Assert.IsType<Outcome.Done>(Store.Save(Who.Shop, Other));

        Assert.Equal(Other with { Version = 1 }, Store.Get());
        var start = new LabelSettings();
        Assert.All(typeof(LabelSettings).GetProperties().Where(p => p.Name != nameof(LabelSettings.Version)),
            p => Assert.NotEqual(p.GetValue(start), p.GetValue(Other)));
    }

    [Fact]
    public void Second_of_two_who_read_the_same_settings_changes_nothing()
    {
        Store.Save(Who.Shop, Other);
        var read = Store.Get();
        Store.Save(Who.Shop, read with { TapeMm = 9 });

        Assert.Equal(Outcome.Stale, Store.Save(Who.Shop, read with { TapeMm = 36 }));

        Assert.Equal(Other with { TapeMm = 9, Version = 2 }, Store.Get());
    }

    [Fact]
    public void Setting_an_older_document_does_not_have_takes_its_starting_value()
    {
        _home.Database.Write(c => c.Execute("INSERT INTO label_setting (id, settings) VALUES (1, @document)", new { document = """{"TapeMm":18}""" }));

        Assert.Equal(new LabelSettings { TapeMm = 18, Version = 1 }, Store.Get());
    }
}
