namespace TagPage.Records.Outbox;

/// <summary>A mail as those write it who know words.</summary>
/// <param name="Subject">One line.</param>
/// <param name="Body">Its words in their pieces.</param>
public readonly record struct WrittenMail(string Subject, MailText Body);
