using Dapper;
using TagPage.Records.Import;
using TagPage.Records.Storage;
using TagPage.Web.Import;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Import;

/// <summary>Places and pieces leave a shop with a client's download and come back as they were.</summary>
public sealed class PieceRoundTripTests : IDisposable
{
    private readonly TestShop _shop = new();

    public PieceRoundTripTests() => ImportedShop.SetUp(_shop);

    public void Dispose() => _shop.Dispose();

    [Fact]
    public void What_was_exported_and_imported_is_exported_identically()
    {
        Assert.Empty(Import(new Spreadsheet().Without("specs.csv")).Problems);
        var (client, racket) = _shop.Database.Read(c => c.QueryFirst<(long, long)>("SELECT p.client_id, r.id FROM player p JOIN racket r ON r.player_id = p.id ORDER BY r.id"));
        _shop.Records.Change("""
            INSERT INTO frame_place (racket_id, name, at, off_axis, length_unit, paired, most, weight_unit, on_strings)
            VALUES (@racket, 'Collar', 8.375, 0, 'In', 0, 0.352739619495804, 'Oz', 0), (@racket, '=three, "nine"', 531.5, 125, 'Mm', 1, 6, 'G', 0), (@racket, 'Crosses', 40, 0, 'Cm', 0, 0, 'G', 1);
            INSERT INTO added_mass (racket_id, place, at, off_axis, length_unit, on_strings, weight, weight_unit, material, added_on, removed_on, by_plan, noted_after, off_by_plan, off_noted_after)
            VALUES (@racket, '-twelve', 26.57, 0, 'In', 0, 0.0705, 'Oz', 'Lead', '2026-10-01', '2026-10-04', 1, 2, 0, 3),
                   (@racket, 'Three and nine', 53, 12.5, 'Cm', 0, 2.333333333333333, 'G', 'Tungsten', '2026-10-02', NULL, 0, 1, 0, 0),
                   (@racket, 'Three and nine', 53, 12.5, 'Cm', 0, 2, 'G', 'Tungsten', '2026-10-02', NULL, 0, 1, 0, 0),
                   (@racket, 'Crosses', 400, 0, 'Mm', 1, 3, 'G', 'Silicone', '2026-10-03', '2026-10-03', 0, 0, 1, 0);
            """, new { racket });
        var (places, pieces) = Exported(client);
        var files = Files(racket, Download.Csv(_shop, client, "frame_place.csv"), Download.Csv(_shop, client, "added_mass.csv"));
        Assert.Equal((4, 5), (places.Split("\r\n", StringSplitOptions.RemoveEmptyEntries).Length, pieces.Split("\r\n", StringSplitOptions.RemoveEmptyEntries).Length));
        _shop.Records.Change("DELETE FROM frame_place; DELETE FROM added_mass");

        Assert.Empty(Import(files).Problems);

        Assert.Equal(places, Exported(client).Places);
        Assert.Equal(pieces, Exported(client).Pieces);
        Assert.Empty(Import(files).Problems);
        Assert.Equal(places, Exported(client).Places);
        Assert.Equal(pieces, Exported(client).Pieces);
    }

    [Theory]
    [InlineData("pieces.csv", "at,weight,material,added_on", "31.6,3,lead,2026-01-05", null)]
    [InlineData("pieces.csv", "at,length_unit,weight,material,added_on", "31.6,in,3,lead,2026-01-05", "pieces.csv:2:at: A place is between 0 and 80 cm (31.5 in) from the butt.")]
    [InlineData("pieces.csv", "at,weight,material,added_on", "8,0,lead,2026-01-05", "pieces.csv:2:weight: A piece weighs more than 0 and at most 100 g (3.5 oz).")]
    [InlineData("pieces.csv", "at,weight,weight_unit,material,added_on", "8,4,oz,lead,2026-01-05", "pieces.csv:2:weight: A piece weighs more than 0 and at most 100 g (3.5 oz).")]
    [InlineData("pieces.csv", "at,weight,material,added_on,removed_on", "8,4,lead,2026-01-05,2026-01-04", "pieces.csv:2:removed_on: This is before the day it was put on, 5 Jan 2026. Correct one of the two.")]
    [InlineData("pieces.csv", "at,weight,material,added_on", "8,4,gold,2026-01-05", "pieces.csv:2:material: Enter lead, tungsten, silicone or other, not “gold”.")]
    [InlineData("places.csv", "at,off_axis", "8,201", "places.csv:2:off_axis: Enter a number from 0 to 200, not 201.")]
    [InlineData("places.csv", "at,off_axis", "8,21", "places.csv:2:off_axis: It is between 0 and 20 cm (7.9 in) from the middle.")]
    [InlineData("places.csv", "at,most,weight_unit", "8,4,oz", "places.csv:2:most: A place carries between 0 and 100 g.")]
    [InlineData("places.csv", "at", "8", null)]
    public void Impossible_lines_are_refused_and_nothing_comes_in(string file, string columns, string cells, string? problem)
    {
        var report = Import(new Spreadsheet { [file] = $"racket,{(file == "pieces.csv" ? "place" : "name")},{columns}\nR1,Collar,{cells}\n" });

        Assert.Equal(problem is null ? [] : [problem], report.Problems.Select(p => p.ToString()));
        Assert.Equal(problem is null ? 1 : 0, ImportedRows.Count(_shop.Database, "frame_place") + ImportedRows.Count(_shop.Database, "added_mass"));
    }

    [Fact]
    public void Same_list_under_both_its_names_is_told()
    {
        var folder = Directory.CreateTempSubdirectory("tagpage-twice-").FullName;
        foreach (var name in new[] { "places.csv", "frame_place.csv" })
            File.WriteAllText(Path.Combine(folder, name), "racket,name,at\nR1,Collar,8\n");

        var problems = _shop.Get<Importer>().Import(ImportFiles.From(folder), new ImportChoices { Others = OtherMatches.Merge }, FormKey.New()).Problems;

        Directory.Delete(folder, recursive: true);
        Assert.Contains("frame_place.csv: This is a second places.csv. Remove one of the two.", problems.Select(p => p.ToString()));
        Assert.Equal(0, ImportedRows.Count(_shop.Database, "frame_place"));
    }

    private static Spreadsheet Files(long racket, string places, string pieces) =>
        new Spreadsheet { ["frame_place.csv"] = places, ["added_mass.csv"] = pieces }.Without("specs.csv").Keyed("R1", racket);

    // Without what counts the rows of the shop that gave them away.
    private (string Places, string Pieces) Exported(long client) => (Rows("frame_place.csv", client), Rows("added_mass.csv", client));

    private string Rows(string file, long client) => string.Join("\r\n", Download.Csv(_shop, client, file).Split("\r\n").Select(line => line[(line.IndexOf(',', StringComparison.Ordinal) + 1)..]));

    private ImportReport Import(Spreadsheet sheet) => _shop.Get<Importer>().Import(sheet.ToFiles(), new ImportChoices { Others = OtherMatches.Merge }, FormKey.New());
}
