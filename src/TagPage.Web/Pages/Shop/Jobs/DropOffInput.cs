using System.ComponentModel.DataAnnotations;
using Microsoft.AspNetCore.Mvc.ModelBinding.Validation;
using TagPage.Records.Jobs;

namespace TagPage.Web.Pages.Shop.Jobs;

/// <summary>What the form for several rackets posts.</summary>
public sealed record DropOffInput
{
    public string FormKey { get; init; } = "";

    public string? Confirmed { get; init; }

    [Required(ErrorMessage = "Enter the day they came in.")]
    public DateOnly? ReceivedOn { get; init; }

    public DateOnly? PromisedFor { get; init; }

    [StringLength(60, ErrorMessage = "Keep the place within 60 characters.")]
    public string? ReceivedWhere { get; init; }

    /// <summary>As in <see cref="JobInput"/>.</summary>
    public long? LeftAtId { get; init; }

    public long? CollectAtId { get; init; }

    /// <summary>Those that are left out need not hold; the page looks at the others.</summary>
    [ValidateNever]
    public List<DropOffRacket> Rackets { get; init; } = [];

    public DropOffEntry ToEntry() => new()
    {
        FormKey = FormKey,
        ReceivedOn = ReceivedOn!.Value,
        PromisedFor = PromisedFor,
        Lines = [.. Rackets.Index().Where(line => line.Item.Ticked).Select(line => Filled(line.Item).ToLine(Place(line.Index), !string.IsNullOrEmpty(Confirmed)))],
    };

    /// <summary>The beginning of a racket's fields' names.</summary>
    public static string Place(int index) => FormattableString.Invariant($"{nameof(Rackets)}[{index}]");

    /// <summary>With the days and the place that all of them share.</summary>
    public DropOffRacket Filled(DropOffRacket racket) => racket with { ReceivedOn = ReceivedOn, PromisedFor = PromisedFor, ReceivedWhere = ReceivedWhere, LeftAtId = LeftAtId, CollectAtId = CollectAtId };
}

/// <summary>One of the rackets.</summary>
public sealed record DropOffRacket : JobInput
{
    public long RacketId { get; init; }

    public bool Ticked { get; init; }

    /// <summary>Its ticket waits for it to be brought, and was ordered already.</summary>
    public bool Announced { get; init; }

    /// <summary>Numbers of what the price list has on top, as far as they were ticked.</summary>
    public List<long> Extras { get; init; } = [];

    public DropOffLine ToLine(string place, bool confirmed) => new()
    {
        Place = place,
        RacketId = RacketId,
        Job = Announced ? null : Fill(new NewJobEntry { Extras = Extras }) with { Confirmed = confirmed },
    };
}
