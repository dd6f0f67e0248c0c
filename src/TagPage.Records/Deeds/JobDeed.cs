namespace TagPage.Records.Deeds;

/// <summary>What somebody of the shop did about a job.</summary>
public enum JobDeed { TakenIn, Came, Started, Strung, HandedOut, Cancelled, TakenBack, Changed, Moved, Told, Measured, Inspected, Photographed, PhotoRemoved, Fetched, Brought, Done }
