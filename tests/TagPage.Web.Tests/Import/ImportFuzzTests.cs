using System.Text;
using CsCheck;
using TagPage.Records.Import;
using TagPage.Records.Storage;
using TagPage.Web.Import;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Import;

/// <summary>Hostile files: cut, repeated, swapped and filled with what breaks parsers. Either all of a file comes in or nothing, and never an exception.</summary>
public sealed class ImportFuzzTests
{
    private static readonly string[] Nasty =
    [
        "\"", "\"\"", ",", ";", "\n", "\r", "\r\n", "\0", "\t", "\uFFFE", "\uFFFF", "'", "'=1+1", "=cmd|' /C calc'!A0", "\uFEFF", "\u202E", "é", "é", "😀",
        "NaN", "1e308", "-0", "99999999999999999999999999999999", "0,5,5", "2026-02-30", "9999-12-31", "0001-01-01", "﷽", "ﬀ", "C1", "R1", "S1", "P1", "901",
        "yes", "lb", "0MWF2SBY7KE", "+999999999999999999", "a@b", "'; DROP TABLE client; --", new string('x', 3000), "<script>", "{{", "%s%n",
    ];

    private static readonly Gen<string> Piece = Gen.Frequency((5, Gen.OneOf(Nasty)), (1, Gen.String), (1, Gen.Char.Select(c => c.ToString())));

    private static readonly Gen<(string File, int At, int Cut, string Piece)> Slip =
        Gen.Select(Gen.OneOf<string>([.. Spreadsheet.Names]), Gen.Int[0, 1000], Gen.Frequency((3, Gen.Const(0)), (2, Gen.Int[1, 40])), Piece);

    private static readonly Gen<(string File, byte[] Bytes)> Noise = Gen.Select(Gen.OneOf<string>([.. Spreadsheet.Names]), Gen.Byte.Array[0, 200]);

    [Fact]
    public void Hostile_text_never_throws_and_saves_all_or_nothing()
    {
        using var shop = new TestShop();
        ImportedShop.SetUp(shop);
        var importer = shop.Get<Importer>();
        var (refused, saved) = (0, 0);

        Slip.Array[1, 6].Sample(slips =>
        {
            var sheet = new Spreadsheet();
            foreach (var (file, at, cut, piece) in slips)
                sheet[file] = Spoil(sheet[file], at, cut, piece);
            var before = ImportedRows.Count(shop.Database);
            var choices = new ImportChoices { Others = saved % 2 == 0 ? OtherMatches.KeepApart : OtherMatches.Merge, SettledBefore = new DateOnly(2026, 9, 10) };
            var report = importer.Import(Files(Spreadsheet.Names.Select(n => (n, Encoding.UTF8.GetBytes(sheet[n])))), choices, FormKey.New());
            if (report.IsClean)
                saved++;
            else
            {
                refused++;
                Assert.Equal(before, ImportedRows.Count(shop.Database));
            }
        }, iter: 1000, threads: 1);

        // A test that refused everything, or nothing, would have tried little.
        Assert.True(refused > 500, $"{refused} refused, {saved} saved");
    }

    [Fact]
    public void Random_bytes_never_throw_and_save_nothing()
    {
        using var shop = new TestShop();
        ImportedShop.SetUp(shop);
        var importer = shop.Get<Importer>();
        var before = ImportedRows.Count(shop.Database);

        Noise.Array[1, 3].Sample(noise =>
            Assert.NotEmpty(importer.Import(Files(noise.DistinctBy(n => n.File)), new ImportChoices(), FormKey.New()).Problems), iter: 1000, threads: 1);

        Assert.Equal(before, ImportedRows.Count(shop.Database));
    }

    private static string Spoil(string text, int at, int cut, string piece)
    {
        var start = Math.Min(at, text.Length);
        return text[..start] + piece + text[Math.Min(text.Length, start + cut)..];
    }

    private static ImportFiles Files(IEnumerable<(string Name, byte[] Bytes)> named)
    {
        var files = new ImportFiles();
        foreach (var (name, bytes) in named)
            files.TryAdd(name, bytes);
        return files;
    }
}
