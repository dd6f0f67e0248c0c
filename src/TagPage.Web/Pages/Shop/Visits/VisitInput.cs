using System.ComponentModel.DataAnnotations;
using TagPage.Core.Jobs;
using TagPage.Records.Jobs;
using TagPage.Records.Visits;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.Shop.Visits;

/// <summary>What the visit forms post.</summary>
public sealed record VisitInput
{
    public string FormKey { get; init; } = "";

    public int Version { get; init; }

    /// <summary>Of a new one: it waits on the bench, whatever the day says on which it was done.</summary>
    public bool Waits { get; init; }

    [LikelyYear]
    public DateOnly? DoneOn { get; init; }

    [LikelyYear]
    public DateOnly? PromisedFor { get; init; }

    public long? LeftAtId { get; init; }

    public long? CollectAtId { get; init; }

    public List<VisitWork> Works { get; init; } = [];

    [StringLength(500, ErrorMessage = "Keep the note within 500 characters.")]
    [DataType(DataType.MultilineText)]
    public string? Note { get; init; }

    /// <summary>Numbers of what the price list has, as far as they were ticked.</summary>
    public List<long> Extras { get; init; } = [];

    /// <summary>In the shop's currency; null for what was ticked.</summary>
    public decimal? Price { get; init; }

    /// <summary>What the form asked about and somebody confirmed.</summary>
    public string? Confirmed { get; init; }

    /// <summary>As far as it was typed.</summary>
    public JobDays ToDays() => new() { PromisedFor = Waits ? PromisedFor : null };

    public VisitEntry ToEntry() => new() { FormKey = FormKey, Version = Version, DoneOn = Waits ? null : DoneOn, PromisedFor = PromisedFor, LeftAtId = LeftAtId, CollectAtId = CollectAtId, Works = Works, Note = Note, Extras = Extras, Price = Price };
}
