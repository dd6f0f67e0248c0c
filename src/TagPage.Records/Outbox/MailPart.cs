namespace TagPage.Records.Outbox;

/// <summary>A piece of a mail.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Text">Its words; empty for what is made when the mail is written.</param>
/// <param name="Link">Of a Link: what it may do.</param>
/// <param name="Row">Of a Link and of Digits: the record they are derived from.</param>
public sealed record MailPart(PartKind Kind, string Text = "", LinkPurpose? Link = null, long? Row = null);

/// <summary>
/// Words: of the template, by the owner or the product; Markdown in the mails that are. Typed: text that stays text,
/// whatever is in it. Quoted: the same, marked as somebody else's. Link and Digits: made when the mail is written.
/// </summary>
public enum PartKind { Words, Typed, Quoted, Link, Digits }
