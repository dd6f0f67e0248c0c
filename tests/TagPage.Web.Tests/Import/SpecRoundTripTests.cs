using Dapper;
using TagPage.Records.Import;
using TagPage.Records.Storage;
using TagPage.Web.Import;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Import;

/// <summary>Specs leave a shop with a client's download and come back as they were.</summary>
public sealed class SpecRoundTripTests : IDisposable
{
    private readonly TestShop _shop = new();

    public void Dispose() => _shop.Dispose();

    [Fact]
    public void Kind_units_pendulum_and_what_is_open_come_back_identically()
    {
        ImportedShop.SetUp(_shop);
        Assert.Empty(Import(new Spreadsheet().Without("specs.csv")).Problems);
        var (client, racket) = _shop.Database.Read(c => c.QueryFirst<(long, long)>("SELECT p.client_id, r.id FROM player p JOIN racket r ON r.player_id = p.id ORDER BY r.id"));
        _shop.Records.Change("""
            INSERT INTO spec (racket_id, measured_on, kind, weight, weight_unit, length, length_unit, balance, balance_unit, tip_weight, swing_weight, swing_source, pendulum_axis,
                              pendulum_period_s, pendulum_off_s, weight_off_g, balance_off_mm, swing_weight_off, weight_balance_r, weight_swing_r, balance_swing_r, stiffness, stiffness_scale, strung, grip_on, dampener_on, note)
            VALUES (@racket, '2026-10-01', 'Received', 11.2, 'Oz', 27, 'In', 8, 'Points', NULL, 319, 'Machine', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, 64.5, '=bench', 0, 1, 1, '-first' || char(10) || 'and "second"; third'),
                   (@racket, '2026-10-02', 'Customised', 318.3, 'G', 685, 'Mm', 320.7, 'Mm', NULL, 301.5, 'WorkedOut', NULL, NULL, NULL, 0.223606797749979, 1.31, 1.06, 0.0315, -0.25, 0.123456789012345, NULL, '', 1, 1, 0, ''),
                   (@racket, '2026-10-03', 'Remeasured', 318, 'G', 68.5, 'Cm', 323.3, 'Mm', 150.25, 290.8, 'Pendulum', 6.35, 1.3512, 0.0021, NULL, NULL, NULL, NULL, NULL, NULL, NULL, '', 1, 0, 0, ''),
                   (@racket, '2026-10-04', 'Remeasured', NULL, 'G', NULL, 'Mm', 12.64, 'In', NULL, NULL, 'Machine', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, '', 1, 1, 0, '')
            """, new { racket });
        var before = Rows();
        Assert.Equal(4, before.Count);
        var files = new Spreadsheet { ["spec.csv"] = Download.Csv(_shop, client, "spec.csv") }.Without("specs.csv").Keyed("R1", racket);
        _shop.Records.Change("DELETE FROM spec");

        var report = Import(files);

        Assert.Empty(report.Problems);
        Assert.Equal(before, Rows());
        Assert.Empty(Import(files).Problems);
        Assert.Equal(before, Rows());
    }

    [Theory]
    [InlineData("weight,weight_unit", "1,oz", "specs.csv:2:weight: A racket weighs between 50 and 500 g.")]
    [InlineData("weight_g,weight", "300,11", "specs.csv:2:weight: Fill in either weight_g or weight.")]
    [InlineData("weight_g,weight_unit", "300,oz", "specs.csv:2:weight_unit: weight_g has its own unit. Write it into weight.")]
    [InlineData("balance,balance_unit", "8,points", "specs.csv:2:balance: Enter the length as well: points count from the frame’s middle.")]
    [InlineData("balance,balance_unit", "50,cm", null)]
    [InlineData("balance,balance_unit", "51,cm", "specs.csv:2:balance: A balance point is between 100 and 500 mm from the butt.")]
    [InlineData("length,length_unit", "10,in", "specs.csv:2:length: A racket is between 300 and 800 mm long.")]
    [InlineData("swing_weight", "0", "specs.csv:2:swing_weight: Enter a swing weight of more than 0 and at most 10000 kg·cm².")]
    [InlineData("swing_weight,swing_source", "300,pendulum", "specs.csv:2:pendulum_period_s: Enter how long a swing took: the swing weight comes from a pendulum.")]
    [InlineData("weight_g,tip_weight", "300,150", "specs.csv:2:tip_weight: Enter weight and length as well: the balance follows from all three.")]
    [InlineData("weight_g,length_mm,tip_weight", "300,685,300", "specs.csv:2:tip_weight: The tip carries only part of the weight. Enter what the scale under the tip shows.")]
    [InlineData("weight_g,length_mm,tip_weight", "300,685,40", "specs.csv:2:tip_weight: A balance point is between 100 and 500 mm from the butt.")]
    [InlineData("weight_g,pendulum_axis,pendulum_period_s", "300,0,1.35", "specs.csv:2:pendulum_period_s: Enter weight, balance and where it hangs as well: the swing weight follows from all four.")]
    [InlineData("weight_g,balance_mm,length_mm,pendulum_axis,pendulum_period_s", "320,320,685,700,1.35", "specs.csv:2:pendulum_period_s: It cannot hang beyond its tip. Measure from the butt.")]
    [InlineData("weight_g,balance_mm,pendulum_axis,pendulum_period_s", "320,320,0,0.6", "specs.csv:2:pendulum_period_s: No racket swings like that. Count whole swings, there and back, and check where it hangs.")]
    [InlineData("weight_g,balance_mm,pendulum_axis,length_unit,pendulum_period_s", "320,320,81,cm,1.35", "specs.csv:2:pendulum_axis: It hangs between 0 and 800 mm from the butt.")]
    [InlineData("weight_g,kind", "300,new", "specs.csv:2:kind: Enter received, customised or remeasured, not “new”.")]
    public void Impossible_figures_are_refused_in_every_unit(string columns, string cells, string? problem)
    {
        ImportedShop.SetUp(_shop);

        var report = Import(new Spreadsheet { ["specs.csv"] = $"racket,measured_on,{columns}\nR1,2026-01-05,{cells}\n" });

        Assert.Equal(problem is null ? [] : [problem], report.Problems.Select(p => p.ToString()));
        Assert.Equal(problem is null ? 1 : 0, ImportedRows.Count(_shop.Database, "spec"));
    }

    [Theory]
    [InlineData("weight_g,balance_mm,swing_weight", "318,390,200", "specs.csv:2:swing_weight: No racket of 318 g that balances at 390 mm has a swing weight of 200 kg·cm²: even with all its mass at that point it would have 267.4. It is brought in as it is.")]
    [InlineData("balance,length", "390,380", "specs.csv:2:balance: The balance point, 390 mm from the butt, lies beyond the tip at 380 mm. It is brought in as it is.")]
    [InlineData("swing_weight", "29", "specs.csv:2:swing_weight: 29 kg·cm² is unusual for tennis. It is brought in as it is.")]
    [InlineData("swing_weight", "3000", "specs.csv:2:swing_weight: 3000 kg·cm² is unusual for tennis. It is brought in as it is.")]
    [InlineData("weight,weight_unit", "5.3,oz", "specs.csv:2:weight: 150.25 g is unusual for tennis. It is brought in as it is.")]
    [InlineData("weight_g,length_mm,tip_weight", "300,685,180", "specs.csv:2:tip_weight: 411 mm from the butt is unusual for tennis. It is brought in as it is.")]
    [InlineData("weight_g,balance_mm,pendulum_axis,pendulum_period_s", "320,320,0,1.6", "specs.csv:2:pendulum_period_s: 478.4 kg·cm² is unusual for tennis. It is brought in as it is.")]
    [InlineData("length_mm", "750", "specs.csv:2:length_mm: 750 mm is longer than the 737 mm of the ITF Rules of Tennis, Appendix II. It is brought in as it is.")]
    public void What_the_form_asks_about_is_pointed_out_and_comes_in(string columns, string cells, string notice)
    {
        ImportedShop.SetUp(_shop);

        var report = Import(new Spreadsheet { ["specs.csv"] = $"racket,measured_on,{columns}\nR1,2026-01-05,{cells}\n" });

        Assert.Equal([notice], report.Notices.Where(n => n.File == "specs.csv").Select(n => n.ToString()));
        Assert.Empty(report.Problems);
        Assert.Equal(1, ImportedRows.Count(_shop.Database, "spec"));
    }

    [Fact]
    public void Row_without_balance_and_swing_weight_gets_what_follows_from_its_scales_and_its_pendulum()
    {
        ImportedShop.SetUp(_shop);

        // As on the form: 165 g of 350 g on 27 in; 320 g that balance at 320 mm and swing in 1.35 s. Recomputed independently with NumPy.
        Import(new Spreadsheet { ["specs.csv"] = "racket,measured_on,weight_g,length_mm,balance_mm,tip_weight,pendulum_axis,pendulum_period_s\nR1,2026-01-05,350,685.8,,165,,\nR1,2026-01-06,320,,320,,0,1.35\n" });

        Assert.Equal(["323.3 Mm 165.0 none Machine", "320.0 Mm none 290.8 Pendulum"], _shop.Database.Read(c => c.Query<string>(
            "SELECT CAST(balance AS REAL) || ' ' || balance_unit || ' ' || COALESCE(CAST(tip_weight AS REAL), 'none') || ' ' || COALESCE(CAST(swing_weight AS REAL), 'none') || ' ' || swing_source FROM spec ORDER BY measured_on").ToList()));
    }

    private ImportReport Import(Spreadsheet sheet) => _shop.Get<Importer>().Import(sheet.ToFiles(), new ImportChoices { Others = OtherMatches.Merge }, FormKey.New());

    private List<string> Rows() => _shop.Database.Read(c => c.Query<string>("""
        SELECT json_array(racket_id, measured_on, kind, weight, weight_unit, weight_g, length, length_unit, length_mm, balance, balance_unit, balance_mm, tip_weight, swing_weight,
                          swing_source, pendulum_axis, pendulum_axis_mm, pendulum_period_s, pendulum_off_s, weight_off_g, balance_off_mm, swing_weight_off, weight_balance_r, weight_swing_r, balance_swing_r, stiffness,
                          stiffness_scale, strung, grip_on, dampener_on, note)
        FROM spec
        ORDER BY measured_on
        """).ToList());
}
