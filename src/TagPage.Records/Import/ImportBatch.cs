using TagPage.Records.Shop;

namespace TagPage.Records.Import;

/// <summary>All that a set of files holds, read and checked but not yet saved.</summary>
public sealed class ImportBatch
{
    /// <summary>Of a shop.csv: the shop as it is to be made; null where the files bring none.</summary>
    public ShopDetails? Shop { get; set; }

    /// <summary>The day the files were written for; null for today.</summary>
    public DateOnly? AsOf { get; set; }

    public Keyed<ClientRow> Clients { get; } = new();

    public Keyed<PlayerRow> Players { get; } = new();

    public Keyed<StringRow> Strings { get; } = new();

    public List<FrameRow> Frames { get; } = [];

    public Keyed<RacketRow> Rackets { get; } = new();

    public List<SpecRow> Specs { get; } = [];

    public List<PlaceRow> Places { get; } = [];

    public List<PieceRow> Pieces { get; } = [];

    public List<JobRow> Jobs { get; } = [];

    /// <summary>Jobs that are new, once it was found out what is on file.</summary>
    public IEnumerable<JobRow> NewJobs => Jobs.Where(job => !job.IsThere);

    public IEnumerable<TagRow> Tags => Rackets.Rows.SelectMany(r => r.Tags);

    public int Count =>
        Clients.Rows.Count + Players.Rows.Count + Strings.Rows.Count + Frames.Count + Rackets.Rows.Count + Specs.Count + Places.Count + Pieces.Count + Jobs.Count;
}
