namespace TagPage.Records.Stops;

/// <summary>Another bench of the shop, somebody's desk, or a box that nobody watches.</summary>
public enum StopKind { Bench, Desk, DropBox }
