using System.ComponentModel.DataAnnotations;
using TagPage.Core.Jobs;
using TagPage.Core.Units;
using TagPage.Records.Jobs;
using TagPage.Web.Pages.Shared;

namespace TagPage.Web.Pages.Shop.Jobs;

/// <summary>What is ordered and for when: the fields a new and a changed job share.</summary>
public record JobInput
{
    public long? MainsId { get; init; }

    /// <summary>Null for the same string as the mains; likewise for the crosses' tension, pre-stretch and supplier.</summary>
    public long? CrossesId { get; init; }

    public NewStringInput NewString { get; init; } = new();

    public Supplier MainsSuppliedBy { get; init; }

    public Supplier? CrossesSuppliedBy { get; init; }

    [Required(ErrorMessage = "Enter the tension of the mains.")]
    public decimal? MainsTension { get; init; }

    public decimal? CrossesTension { get; init; }

    public TensionUnit TensionUnit { get; init; }

    /// <summary>What the form asked about and the owner confirmed.</summary>
    public string? Confirmed { get; init; }

    [Range(0, 30, ErrorMessage = "Enter a pre-stretch between 0 and 30 %.")]
    public int? MainsPreStretch { get; init; }

    [Range(0, 30, ErrorMessage = "Enter a pre-stretch between 0 and 30 %.")]
    public int? CrossesPreStretch { get; init; }

    [Range(1, 2, ErrorMessage = "Choose one piece or two.")]
    public int Pieces { get; init; } = 2;

    [Required(ErrorMessage = "Enter the day it came in.")]
    public DateOnly? ReceivedOn { get; init; }

    [StringLength(60, ErrorMessage = "Keep the place within 60 characters.")]
    public string? ReceivedWhere { get; init; }

    /// <summary>The stop where it was left; null for the shop's own bench.</summary>
    public long? LeftAtId { get; init; }

    /// <summary>The stop where it is to be collected; 0 for the shop's own bench, null for where it was left.</summary>
    public long? CollectAtId { get; init; }

    public DateOnly? PromisedFor { get; init; }

    /// <summary>In the shop's currency, 24.50.</summary>
    public decimal? Price { get; init; }

    [StringLength(500, ErrorMessage = "Keep the note within 500 characters.")]
    [DataType(DataType.MultilineText)]
    public string? Note { get; init; }

    /// <summary>Puts what both forms share into an entry, once all of it holds.</summary>
    protected T Fill<T>(T entry) where T : JobEntry => (T)((JobEntry)entry with
    {
        MainsId = MainsId,
        CrossesId = CrossesId,
        NewString = NewString.ToEntry(),
        MainsSuppliedBy = MainsSuppliedBy,
        CrossesSuppliedBy = CrossesSuppliedBy,
        MainsTension = MainsTension!.Value,
        CrossesTension = CrossesTension,
        TensionUnit = TensionUnit,
        MainsPreStretch = MainsPreStretch,
        CrossesPreStretch = CrossesPreStretch,
        Pieces = Pieces,
        ReceivedOn = ReceivedOn!.Value,
        ReceivedWhere = ReceivedWhere,
        LeftAtId = LeftAtId,
        CollectAtId = CollectAtId,
        PromisedFor = PromisedFor,
        Price = Price,
        Note = Note,
        Confirmed = !string.IsNullOrEmpty(Confirmed),
    });

    /// <summary>As far as it was typed.</summary>
    public JobOrder ToOrder() => new()
    {
        MainsId = MainsId,
        CrossesId = CrossesId,
        Pieces = Pieces,
        NewString = NewString.ToEntry(),
        MainsSuppliedBy = MainsSuppliedBy,
        CrossesSuppliedBy = CrossesSuppliedBy,
        MainsTension = MainsTension is { } mains ? new Tension(mains, TensionUnit) : null,
        CrossesTension = CrossesTension is { } crosses ? new Tension(crosses, TensionUnit) : null,
        Price = Price,
    };
}
