using TagPage.Core.Money;
using TagPage.Core.Sports;

namespace TagPage.Records.Money;

/// <summary>What the shop charges. A new job's lines are filled from it.</summary>
public sealed record PriceList
{
    /// <summary>For a sport that has no price of its own.</summary>
    public long? LabourMinor { get; init; }
    public long? TennisMinor { get; init; }
    public long? BadmintonMinor { get; init; }
    public long? SquashMinor { get; init; }

    /// <summary>Basis points; prices include it.</summary>
    public int TaxBp { get; init; }

    /// <summary>On bills; empty without one.</summary>
    public string TaxNumber { get; init; } = "";

    /// <summary>In capitals, without spaces; null without an account.</summary>
    public string? Iban { get; init; }

    /// <summary>Whose account it is; empty for the shop's own name.</summary>
    public string AccountName { get; init; } = "";
    public int Version { get; init; }

    /// <summary>By the string's number.</summary>
    public IReadOnlyDictionary<long, StringPrice> Strings { get; init; } = new Dictionary<long, StringPrice>();

    public IReadOnlyList<ExtraPrice> Extras { get; init; } = [];

    public long? LabourFor(Sport sport) => (sport switch
    {
        Sport.Tennis => TennisMinor,
        Sport.Badminton => BadmintonMinor,
        _ => SquashMinor,
    }) ?? LabourMinor;

    /// <summary>Whether a job of that sport has a price without anybody typing one.</summary>
    public bool Prices(Sport sport) => LabourFor(sport) is not null;

    /// <summary>A price as one line.</summary>
    public ChargeLine Whole(long price) => Line(ChargeKind.Whole, price);

    /// <summary>
    /// The lines of a job: labour, the shop's strings (the client's own cost nothing), extras. With a price that was agreed, a
    /// line that makes up the difference; where the list has nothing, that price alone.
    /// </summary>
    public IReadOnlyList<ChargeLine> Lines(PricedJob job, long? agreed)
    {
        List<ChargeLine> lines = [.. Labour(job.Sport), .. StringLines(job), .. Extras.Where(extra => job.Extras.Contains(extra.Id)).Select(extra => Line(extra.Kind, extra.AmountMinor, extra.Name))];
        if (agreed is not { } price)
            return lines;
        if (lines.Count == 0)
            return [Whole(price)];
        return [.. lines, .. Difference(price - lines.Sum(line => line.AmountMinor))];
    }

    /// <summary>The lines of a visit: extras, and a price that was agreed as in a job. Nothing for one that costs nothing.</summary>
    public IReadOnlyList<ChargeLine> OfVisit(IReadOnlyList<long> extras, long? agreed)
    {
        List<ChargeLine> lines = [.. Extras.Where(extra => extras.Contains(extra.Id)).Select(extra => Line(extra.Kind, extra.AmountMinor, extra.Name))];
        return agreed is not { } price ? lines
            : lines.Count > 0 ? [.. lines, .. Difference(price - lines.Sum(line => line.AmountMinor))]
            : price == 0 ? [] : [Line(ChargeKind.Visit, price)];
    }

    /// <summary>Lines that come to another price by one that makes up the difference; one whole price stays one.</summary>
    public IReadOnlyList<ChargeLine> Agreed(IReadOnlyList<ChargeLine> lines, long? price)
    {
        if (price is not { } agreed)
            return [];
        if (lines.Sum(line => line.AmountMinor) == agreed && lines.Count > 0)
            return lines;
        List<ChargeLine> kept = [.. lines.Where(line => line.Kind is not (ChargeKind.Whole or ChargeKind.Adjustment))];
        return kept.Count == 0 ? [Whole(agreed)] : [.. kept, .. Difference(agreed - kept.Sum(line => line.AmountMinor))];
    }

    /// <summary>What the shop's strings of a job come to.</summary>
    public long StringsMinor(PricedJob job) => StringLines(job).Sum(line => line.AmountMinor);

    private IEnumerable<ChargeLine> Labour(Sport sport) => LabourFor(sport) is { } labour ? [Line(ChargeKind.Labour, labour)] : [];

    private IEnumerable<ChargeLine> StringLines(PricedJob job)
    {
        if (job is { MainsByShop: true, CrossesByShop: true } && job.MainsId == job.CrossesId)
            return Of(job.MainsId, ChargeKind.Strings, job.Sport);
        return
        [
            .. job.MainsByShop ? Of(job.MainsId, ChargeKind.Mains, job.Sport) : [],
            .. job.CrossesByShop ? Of(job.CrossesId, ChargeKind.Crosses, job.Sport) : [],
        ];
    }

    private IEnumerable<ChargeLine> Of(long stringId, ChargeKind kind, Sport sport)
    {
        if (!Strings.TryGetValue(stringId, out var price))
            return [];
        var all = kind == ChargeKind.Strings;
        if (price.SetMinor is { } set)
            return [Line(kind, all ? set : StringPrice.HalfOf(set))];
        var centimetres = StringPrice.UsualCentimetres(sport) / (all ? 1 : 2);
        return [Line(kind, StringPrice.ByMetre(price.MetreMinor!.Value, centimetres)) with { Centimetres = centimetres, MetreMinor = price.MetreMinor }];
    }

    private IEnumerable<ChargeLine> Difference(long minor) => minor == 0 ? [] : [Line(ChargeKind.Adjustment, minor)];

    private ChargeLine Line(ChargeKind kind, long amount, string words = "") => new() { Kind = kind, Words = words, AmountMinor = amount, TaxBp = TaxBp };
}

/// <summary>What can come on top of a job's price.</summary>
public sealed record ExtraPrice
{
    public long Id { get; init; }
    public ChargeKind Kind { get; init; }

    /// <summary>Of an extra that is the shop's own; empty for the others.</summary>
    public string Name { get; init; } = "";
    public long AmountMinor { get; init; }
}

/// <summary>What a job's price depends on.</summary>
public sealed record PricedJob
{
    public Sport Sport { get; init; }
    public long MainsId { get; init; }
    public long CrossesId { get; init; }
    public bool MainsByShop { get; init; }
    public bool CrossesByShop { get; init; }

    /// <summary>Numbers of extras.</summary>
    public IReadOnlyList<long> Extras { get; init; } = [];
}
