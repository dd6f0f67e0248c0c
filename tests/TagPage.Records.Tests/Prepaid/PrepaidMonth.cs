using System.Globalization;
using System.Text.RegularExpressions;
using TagPage.Core.Jobs;
using TagPage.Core.Money;
using TagPage.Records.Jobs;
using TagPage.Records.Money;
using TagPage.Records.Prepaid;
using TagPage.Records.Storage;
using TagPage.Records.Tests.Cast;
using TagPage.Records.Tests.Money;
using TagPage.Web.Tests.Cast;

namespace TagPage.Records.Tests.Prepaid;

/// <summary>The prepaid restrings that the manual works out by hand, with the numbers that stand there.</summary>
internal sealed class PrepaidMonth : IDisposable
{
    private static readonly string Manual = File.ReadAllText(Path.Combine(Repository.Folder, "docs", "money.md")).Split("## Prepaid restrings worked out by hand")[1];

    private readonly Street _street = new();
    private readonly Till _till;

    public PrepaidMonth() => _till = new Till(_street);

    private PrepaidStore Store => new(_street.Database, _street.Clock);

    private Party Party => Party.Client(_street.Odalys);

    public void Dispose() => _street.Dispose();

    public void Check()
    {
        var before = new FigureStore(_street.Database).Year(Who.Shop, 2026)[10];
        _till.Prices.Save(Who.Shop, new PriceList { LabourMinor = Said("Labour is"), TaxBp = (int)Said("strings 9.00, tax"), Strings = new Dictionary<long, StringPrice> { [_street.Records.Kind()] = new(Said("a set of strings"), null) } });
        Store.Sell(Who.Shop, Party, new PrepaidEntry { FormKey = FormKey.New(), BoughtOn = new DateOnly(2026, 11, 2), Restrings = int.Parse(Match(@"buys (\d+) restrings"), CultureInfo.InvariantCulture), AmountMinor = Said("labour only, for") });
        var jobs = Rows().ToDictionary(row => row[0], Ticket);
        _till.Payments.PayJob(Who.Shop, jobs["111"], Till.Paid() with { PaidOn = new DateOnly(2026, 11, 12) });

        var month = new FigureStore(_street.Database).Year(Who.Shop, 2026)[10];
        Assert.Equal(Said("80.00 + 9.00 ="), month.IncomeMinor - before.IncomeMinor);
        Assert.Equal(Said("80.00 + 9.00 + 0.00 =") + Said("89.00, with"), month.ChargedMinor - before.ChargedMinor);
        Assert.Equal(long.Parse(Match(@"and (\d+) restrings are left"), CultureInfo.InvariantCulture), Store.Of(Who.Shop, Party).Sum(row => row.Left));
        Assert.NotNull(_till.Job(jobs["112"]).PaidOn);
        Assert.Equal(Said("rounded to"), Tax.Within(Said("80.00 + 9.00 ="), 2000));
        Assert.Equal(Said("of which"), Tax.Within(Said("labour only, for"), 2000));
    }

    private long Ticket(string[] row)
    {
        var own = row[4].Contains("own string", StringComparison.Ordinal) || row[0] == "113";
        var job = Assert.IsType<Outcome.Done>(_till.News.Add(Who.Shop, _street.Racket, new NewJobEntry
        {
            FormKey = FormKey.New(),
            MainsId = _street.Records.Kind(),
            MainsSuppliedBy = own ? Supplier.Client : Supplier.Shop,
            MainsTension = 50,
            ReceivedOn = Street.Today,
        })).Id;
        _till.Moves.MarkStrung(Who.Shop, job, new StrungEntry { StrungOn = Street.Today });
        Assert.Equal(Minor(row[1]), _till.Job(job).PriceMinor);
        Assert.IsType<Outcome.Done>(Store.Use(Who.Shop, job));
        _till.Moves.Collect(Who.Shop, job, new HandOutEntry { CollectedOn = Street.Today });
        if (row[4].Contains("taken back", StringComparison.Ordinal))
            new BackStore(_street.Database, _street.Time).Back(Who.Shop, job, JobState.Collected);
        Assert.Equal((Minor(row[2]), Minor(row[3])), (_till.Sheet(job).Lines.Where(line => line.Kind == ChargeKind.Prepaid).Sum(line => -line.AmountMinor), _till.Job(job).PriceMinor!.Value));
        return job;
    }

    private static List<string[]> Rows() =>
    [
        .. Manual[Manual.IndexOf("| prepaid ticket", StringComparison.Ordinal)..].Split('\n').TakeWhile(line => line.StartsWith('|')).Skip(2)
            .Select(line => line.Trim('|').Split('|').Select(cell => cell.Trim()).ToArray()),
    ];

    private static long Said(string words) => Minor(Match(Regex.Escape(words) + @"\s+([\d.]*\d)"));

    private static string Match(string pattern) => Regex.Match(Manual, pattern) is { Success: true } match ? match.Groups[1].Value : throw new InvalidOperationException($"The manual no longer says “{pattern}”.");

    private static long Minor(string amount) => (long)(decimal.Parse(amount, CultureInfo.InvariantCulture) * 100);
}
