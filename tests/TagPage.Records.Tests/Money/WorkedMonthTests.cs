using System.Globalization;
using System.Text.RegularExpressions;
using TagPage.Core.Jobs;
using TagPage.Core.Money;
using TagPage.Records.Jobs;
using TagPage.Records.Money;
using TagPage.Records.Storage;
using TagPage.Records.Tests.Cast;
using TagPage.Web.Tests.Cast;

namespace TagPage.Records.Tests.Money;

/// <summary>The month that the manual works out by hand, done once more by the program with the numbers that stand there.</summary>
public sealed class WorkedMonthTests : IDisposable
{
    private static readonly string Manual = File.ReadAllText(Path.Combine(Repository.Folder, "docs", "money.md")).Split("## A month")[1];

    private readonly Street _street = new();
    private readonly Till _till;
    private readonly Dictionary<string, long> _jobs = [];

    public WorkedMonthTests()
    {
        _till = new Till(_street);
        _till.Academy();
    }

    public void Dispose() => _street.Dispose();

    [Fact]
    public void Program_comes_to_what_the_manual_worked_out_by_hand()
    {
        Price();
        foreach (var row in Rows("ticket | labour").SkipLast(1))
            TakeIn(row);
        Assert.Equal(5, _jobs.Count);
        Sums();
        foreach (var row in Rows("day | ticket"))
            Pay(row);
        Owed();
    }

    private void Price()
    {
        var (first, second, third) = (_street.Records.Kind(), _street.Records.Kind("Marram Reel"), _street.Records.Kind("Marram Gut", "NaturalGut"));
        _till.Prices.Save(Who.Shop, new PriceList
        {
            LabourMinor = Said("Labour is"),
            TaxBp = (int)Said("rush 5.00, and tax"),
            Strings = new Dictionary<long, StringPrice> { [first] = new(Said("a set of the first string"), null), [second] = new(null, Said("a metre of the second")), [third] = new(Said("a set of the third"), null) },
            Extras = [new ExtraPrice { Kind = ChargeKind.Grip, AmountMinor = Said("a grip") }, new ExtraPrice { Kind = ChargeKind.Rush, AmountMinor = Said("rush") }],
        });
    }

    /// <summary>Each ticket is ordered as the last column says; what it then costs is the program's.</summary>
    private void TakeIn(string[] row)
    {
        var (first, second, third) = (_street.Records.Kind(), _street.Records.Kind("Marram Reel"), _street.Records.Kind("Marram Gut", "NaturalGut"));
        var extras = _till.Prices.Get().Extras;
        var order = new NewJobEntry { FormKey = FormKey.New(), MainsId = first, MainsTension = 50, ReceivedOn = Street.Today };
        order = row[0] switch
        {
            "102" => order with { MainsId = second },
            "103" => order with { MainsSuppliedBy = Supplier.Client, Extras = [extras[0].Id] },
            "104" => order with { MainsId = third, CrossesId = first, Extras = [extras[1].Id] },
            "105" => order with { Price = Decimal(row[4]) },
            _ => order,
        };
        var job = Assert.IsType<Outcome.Done>(_till.News.Add(Who.Shop, _street.Racket, order)).Id;
        _jobs.Add(row[0], job);
        var lines = _till.Sheet(job).Lines;
        Assert.Equal(Minor(row[1]), lines.Where(l => l.Kind == ChargeKind.Labour).Sum(l => l.AmountMinor));
        Assert.Equal(Minor(row[2]), lines.Where(l => l.Kind is ChargeKind.Strings or ChargeKind.Mains or ChargeKind.Crosses).Sum(l => l.AmountMinor));
        Assert.Equal(Minor(row[3]), lines.Where(l => l.Kind is ChargeKind.Grip or ChargeKind.Rush or ChargeKind.Adjustment).Sum(l => l.AmountMinor));
        Assert.Equal(Minor(row[4]), _till.Job(job).PriceMinor);
    }

    private void Sums()
    {
        var all = _jobs.Values.SelectMany(job => _till.Sheet(job).Lines).ToList();
        Assert.Equal(Minor(Rows("ticket | labour")[^1][4]), all.Sum(l => l.AmountMinor));
        var part = Assert.Single(Tax.Of(all.Select(l => (l.AmountMinor, l.TaxBp))));
        Assert.Equal((Said("rounded to"), Said("without tax the sum is")), (part.Amount, part.Net));
        Assert.Equal(Minor(Match(@"4\.17 = ([\d.]+)")), _jobs.Values.Sum(job => Tax.Within(_till.Job(job).PriceMinor!.Value, part.BasisPoints)));
    }

    private void Pay(string[] row)
    {
        var job = _jobs[row[1]];
        if (row[2].StartsWith('-'))
            Assert.IsType<Outcome.Done>(_till.Payments.TakeBack(Who.Shop, _till.Payments.OfJob(Who.Shop, job)[^1].Id));
        else
            Assert.IsType<Outcome.Done>(_till.Payments.PayJob(Who.Shop, job, Till.Paid(Minor(row[2]), Enum.Parse<PaymentMethod>(row[3])) with
            {
                PaidOn = new DateOnly(2026, 11, int.Parse(row[0], CultureInfo.InvariantCulture)),
            }));
    }

    private void Owed()
    {
        Assert.Equal(Said("In all"), long.Parse(_street.Records.Text("SELECT CAST(SUM(amount_minor) AS TEXT) FROM payment"), CultureInfo.InvariantCulture));
        var owed = Rows("ticket | owed");
        foreach (var (ticket, job) in _jobs)
            Assert.Equal(owed.FirstOrDefault(row => row[0] == ticket) is { } row ? Minor(row[1]) : 0, _till.Job(job).OpenMinor);
        Assert.Equal(Minor(owed[^1][1]), _jobs.Values.Sum(job => _till.Job(job).OpenMinor));
        Assert.Equal(_jobs.Keys.Except(owed.Select(row => row[0])), _jobs.Where(j => _till.Job(j.Value).PaidOn is not null).Select(j => j.Key));
    }

    /// <summary>The cells of the table whose head begins so, without its head.</summary>
    private static List<string[]> Rows(string head) =>
    [
        .. Manual[Manual.IndexOf("| " + head, StringComparison.Ordinal)..].Split('\n').TakeWhile(line => line.StartsWith('|')).Skip(2)
            .Select(line => line.Trim('|').Split('|').Select(cell => cell.Trim()).ToArray()),
    ];

    /// <summary>The first amount after these words; a rate in per cent comes out in basis points the same way.</summary>
    private static long Said(string words) => Minor(Match(Regex.Escape(words) + @"\s+([\d.]+\d)"));

    private static string Match(string pattern) => Regex.Match(Manual, pattern) is { Success: true } match ? match.Groups[1].Value : throw new InvalidOperationException($"The manual no longer says “{pattern}”.");

    private static long Minor(string amount) => (long)(Decimal(amount) * 100);

    private static decimal Decimal(string amount) => decimal.Parse(amount, CultureInfo.InvariantCulture);
}
