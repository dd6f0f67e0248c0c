namespace TagPage.Records.LostAndFound;

/// <summary>What a finder did: had the contact shown, pressed a ready-made answer, or wrote.</summary>
public enum FoundKind { Shown, AtDesk, HaveIt, StillThere, Message }
