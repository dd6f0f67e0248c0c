using System.Globalization;
using System.Text;
using CsCheck;
using TagPage.Records.Import;
using TagPage.Records.Storage;
using TagPage.Records.StringingLists;
using TagPage.Web.StringingLists;
using TagPage.Web.Tests.Cast;
using TagPage.Web.Tests.Import;

namespace TagPage.Web.Tests.StringingLists;

/// <summary>
/// Hostile lists: never an exception, every line accounted for, and what the check promises is what comes in. LIST_FILES=10000 tries
/// as many.
/// </summary>
public sealed class ListFuzzTests
{
    private static readonly int Files = int.Parse(Environment.GetEnvironmentVariable("LIST_FILES") ?? "500", CultureInfo.InvariantCulture);

    private static readonly string[] Cells =
    [
        "Tamsin Quill", "2025-03-14", "14 Mar 2025", "Tamsin Quill", "Odalys Ferran", "Zoë Łukasz", "鷺沢 澪", "?", "", "-", "=1+1", "@x", "'=1", "52", "52/50", "24x25 kg", "16x19", "23,5", "1.234", "1,234.50", "£24.50", "2025-03-14", "14/03/2025", "03/14/2025",
        "01/02/2025", "14. März 2025", "31/02/2025", "9999-12-31", "0001-01-01", "Heron Spin 1.25", "Heron Spin / Heron Soft", "Pellmore Meadow 98", "020 7946 0958", "a@b.example", "\"", "\"\"", ",", ";", "\t", "\n", "\r\n",
        "\u202Eabc", "\u200B", "😀", "ﷺ", "NaN", "1e308", "99999999999999999999", "'; DROP TABLE client; --", "<script>", "{0}", "%s", "2", "red", "tennis", "Badminton",
    ];

    private static readonly Gen<string> Cell = Gen.Frequency((12, Gen.OneOf(Cells)), (1, Gen.String[0, 40]), (1, Gen.Char.Select(c => new string(c, 300))));

    private static readonly Gen<string> Heading = Gen.OneOf("Client", "Racket", "Date", "String", "Tension", "Price", "Phone", "Email", "Player", "Ticket", "Sport", "Kunde", "日付", "Loyalty", "", "\"");

    private static readonly Gen<byte[]> List = Gen.Select(Gen.Frequency((1, Heading.Array[1, 9]), (1, Gen.Const(new[] { "Client", "Date", "Racket", "String", "Tension", "Price", "Ticket" }))), Cell.Array[1, 9].Array[0, 12], Gen.OneOf(",", ";", "\t"), Gen.Bool, Gen.Int[0, 3]).Select((headings, lines, mark, quoted, encoding) =>
    {
        var text = string.Join("\n", lines.Prepend(headings).Select(cells => string.Join(mark, cells.Select(cell => quoted ? $"\"{cell.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : cell))));
        return encoding switch
        {
            0 => Encoding.UTF8.GetBytes(text),
            1 => [0xFF, 0xFE, .. Encoding.Unicode.GetBytes(text)],
            2 => [0xFE, 0xFF, .. Encoding.BigEndianUnicode.GetBytes(text)],
            _ => Encoding.Latin1.GetBytes(text),
        };
    });

    [Fact]
    public void Hostile_list_never_throws_and_loses_no_line()
    {
        using var shop = new TestShop();
        ImportedShop.SetUp(shop);
        var (read, written) = (0, 0);

        var chance = PCG.Parse("0N0XIzNsQ0O2");
        for (var file = 0; file < Files; file++)
        {
            var bytes = List.Generate(chance, null, out _);
            if (ListText.Read(bytes).Text is not { } text || ListTable.Of(text) is not { Wrong: null } table)
                continue;
            read++;
            var settings = OldLists.Settings(table, s => s with { Days = DayOrder.DayMonthYear, Decimals = DecimalMark.Point, Unit = TagPage.Core.Units.TensionUnit.Lb, OtherRackets = read % 2 == 0 ? RacketQuestion.One : RacketQuestion.Several });
            var first = Plan(shop, table, settings);
            var plan = Plan(shop, table, OldLists.Polyester(settings, first.Strings.Select(q => q.Key)));
            Assert.Equal(table.Rows.Count, plan.Lines.Count);
            Assert.All(plan.Lines, line => Assert.True(line.State is LineState.Refused or LineState.There == line.Write is null && (line.Write is not null || line.Reasons.Count > 0)));
            if (read % 5 == 0 && plan.IsComplete)
                written += Write(shop, plan);
        }

        // A test that read nothing, or wrote nothing, would have tried little.
        Assert.True(read > Files / 2 && written > 0, $"{read} read, {written} lines written");
    }

    private static ListPlan Plan(TestShop shop, ListTable table, ListSettings settings) =>
        shop.Get<ListPlanner>().Plan(ListReader.Read(table, settings, shop.Get<Records.Shop.ShopStore>().Get(), TestShop.Today), settings, new ImportChoices { Others = OtherMatches.KeepApart });

    private static int Write(TestShop shop, ListPlan plan)
    {
        var lines = plan.Lines.Select(line => line.Write).OfType<StringingLine>().ToList();
        var before = shop.Records.Count("job");
        var list = ((Outcome.Done)shop.Get<StringingListStore>().Begin(Who.Shop, new StringingListEntry { FormKey = FormKey.New(), Lines = lines, Headings = "[]" })).Id;
        shop.Get<StringingListWorker>().Round();
        Assert.Equal(before + lines.Count, shop.Records.Count("job"));
        Assert.IsType<Outcome.Done>(shop.Get<TakeBackStore>().Begin(Who.Shop, list));
        shop.Get<StringingListWorker>().Round();
        Assert.Equal(before, shop.Records.Count("job"));
        return lines.Count;
    }
}
