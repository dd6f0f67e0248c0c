namespace TagPage.Web.Pages.Shop.Jobs;

/// <summary>The day a job was paid; null to mark it as not paid.</summary>
public sealed record PaidInput
{
    public DateOnly? PaidOn { get; init; }
}
