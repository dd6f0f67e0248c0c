using TagPage.Core.Strings;

namespace TagPage.Records.Jobs;

/// <summary>Where a string typed in with a job goes.</summary>
public enum NewStringPlace { Both, Mains, Crosses }

/// <summary>A string that is not in the catalogue yet, entered with the job that needs it.</summary>
public sealed record NewStringEntry
{
    public string? Name { get; init; }
    public Material? Material { get; init; }
    public decimal? GaugeMm { get; init; }
    public NewStringPlace Place { get; init; }

    public bool IsGiven => !string.IsNullOrWhiteSpace(Name) || Material is not null || GaugeMm is not null;
}
