namespace TagPage.Records.Jobs;

/// <summary>Where a racket is left and collected, as forms say it.</summary>
/// <param name="LeftAtId">A stop; null or 0 for the shop's own bench.</param>
/// <param name="CollectAtId">A stop; 0 for the shop's own bench, null for where it was left.</param>
internal sealed record StopChoice(long? LeftAtId, long? CollectAtId)
{
    public long? LeftAt => LeftAtId is > 0 ? LeftAtId : null;

    public long? CollectAt => CollectAtId is null ? LeftAt : CollectAtId is > 0 ? CollectAtId : null;
}
