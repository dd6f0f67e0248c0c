using TagPage.Core.Forecast;
using TagPage.Core.Jobs;
using TagPage.Core.Money;
using TagPage.Core.Players;
using TagPage.Core.Rackets;
using TagPage.Core.Sports;
using TagPage.Core.Strings;
using TagPage.Core.Tags;
using TagPage.Core.Units;
using TagPage.Records.Frames;

namespace TagPage.Records.Import;

/// <summary>A line of a file. Its number in the database is known once it is saved. Enumerations are stored by name.</summary>
public abstract record ImportRow
{
    private long _id;

    public long Id
    {
        get => SameAs?.Id ?? _id;
        set => _id = value;
    }

    /// <summary>The record is on file, with the number <see cref="Id"/>, and stays as it is.</summary>
    public bool IsOnFile { get; set; }

    /// <summary>The line that brings the record, where this one means the same.</summary>
    public ImportRow? SameAs { get; set; }

    /// <summary>Nothing is added for this line.</summary>
    public bool IsThere => IsOnFile || SameAs is not null;

    /// <summary>The same for all lines that mean one record.</summary>
    internal string Mark => SameAs?.Mark ?? (IsOnFile ? MarkOf(_id) : $"line {Line}");

    internal static string MarkOf(long idOnFile) => $"on file {idOnFile}";

    /// <summary>Where it stands in its file.</summary>
    public int Line { get; init; }
}

public sealed record PayerRow(string Name, string? Phone, string? Mail);

public sealed record ClientRow : ImportRow
{
    public string Name { get; init; } = "";
    public string? Phone { get; init; }
    public string? Mail { get; init; }
    public string Language { get; init; } = "";
    public PayerRow? Payer { get; init; }
    public long? PayerId { get; set; }
    public bool Reminders { get; init; }
    public string Note { get; init; } = "";
}

public sealed record PlayerRow : ImportRow
{
    public ClientRow? Client { get; init; }
    public long ClientId => Client!.Id;
    public string Name { get; init; } = "";
    public bool Junior { get; init; }
    public decimal TimesAWeek { get; init; }
    public decimal HoursATime { get; init; }
    public Hitting Hitting { get; init; }
    public string HittingName => Hitting.ToString();
    public RestringRule? Rule { get; init; }
    public string? RuleName => Rule?.ToString();
    public int? EveryWeeks { get; init; }
    public string Note { get; init; } = "";
}

public sealed record StringRow : ImportRow
{
    public string Name { get; init; } = "";
    public Material Material { get; init; }
    public string MaterialName => Material.ToString();
    public decimal GaugeMm { get; init; }
    public string Note { get; init; } = "";
}

public sealed record FrameRow : ImportRow
{
    public string Name { get; init; } = "";
    public string Key => FrameCatalogue.KeyOf(Name);
    public Sport Sport { get; init; }
    public string SportName => Sport.ToString();
    public int? Mains { get; init; }
    public int? Crosses { get; init; }
    public string SkippedHoles { get; init; } = "";
    public string TieOffs { get; init; } = "";
    public decimal? Least { get; init; }
    public decimal? Most { get; init; }
    public TensionUnit TensionUnit { get; init; }
    public string TensionUnitName => TensionUnit.ToString();
    public string Note { get; init; } = "";
}

public sealed record RacketRow : ImportRow
{
    public PlayerRow? Player { get; init; }
    public long PlayerId => Player!.Id;
    public int Number { get; init; }
    public RacketState State { get; init; }
    public string StateName => State.ToString();
    public Sport Sport { get; init; }
    public string SportName => Sport.ToString();
    public string Frame { get; init; } = "";
    public string TapeColour { get; init; } = "";
    public decimal? HeadSize { get; init; }
    public string HeadSizeUnit { get; init; } = "";
    public int? Mains { get; init; }
    public int? Crosses { get; init; }
    public decimal? LengthCm { get; init; }
    public string Grip { get; init; } = "";
    public DateOnly? OwnDate { get; init; }
    public string OwnDateNote { get; init; } = "";
    public DateOnly? LostSince { get; init; }
    public IReadOnlyList<TagRow> Tags { get; init; } = [];
}

/// <summary>A tag of a racket, with the line and the column of the cell it stands in.</summary>
public sealed record TagRow(TagCode Code, bool IsLive, int Line, string Column)
{
    public long RacketId { get; set; }

    /// <summary>The racket has it already.</summary>
    public bool IsOnFile { get; set; }

    public DateTimeOffset MadeAt { get; set; }
    public DateTimeOffset? RetiredAt => IsLive ? null : MadeAt;
    public string State => IsLive ? "Live" : "Retired";
}

public sealed record JobRow : OfRacketRow
{
    public int Ticket { get; init; }
    public JobState State { get; init; }
    public string StateName => State.ToString();
    public StringRow? Mains { get; init; }
    public long MainsId => Mains!.Id;
    public StringRow? Crosses { get; init; }
    public long CrossesId => Crosses!.Id;
    public Supplier MainsSuppliedBy { get; init; }
    public string MainsSupplier => MainsSuppliedBy.ToString();
    public Supplier CrossesSuppliedBy { get; init; }
    public string CrossesSupplier => CrossesSuppliedBy.ToString();
    public decimal MainsTension { get; init; }
    public decimal CrossesTension { get; init; }
    public TensionUnit TensionUnit { get; init; }
    public string TensionUnitName => TensionUnit.ToString();
    public int MainsPreStretch { get; init; }
    public int CrossesPreStretch { get; init; }
    public int Pieces { get; init; }
    public DateOnly ReceivedOn { get; init; }
    public string ReceivedWhere { get; init; } = "";
    public DateOnly? PromisedFor { get; init; }
    public DateOnly? StrungOn { get; init; }
    public string StrungBy { get; init; } = "";
    public string Machine { get; init; } = "";
    public DateOnly? CollectedOn { get; init; }
    public long? PriceMinor { get; init; }
    public DateOnly? PaidOn { get; init; }
    public PaymentMethod PaidHow { get; init; } = PaymentMethod.Before;
    public decimal? Reading { get; init; }
    public string Instrument { get; init; } = "";
    public long InstrumentId { get; set; }
    public string Note { get; init; } = "";
    public DateOnly? EndedOn { get; init; }
    public BedEnd? EndedHow { get; init; }

    /// <summary>It counts as collected, or as paid, only because the owner chose so.</summary>
    public bool CountedAsCollected { get; init; }
    public bool CountedAsPaid { get; init; }

    /// <summary>Old, and left uncollected or unpaid.</summary>
    public bool LeftOpen { get; init; }
    public string? EndedHowName => EndedHow?.ToString();
}
