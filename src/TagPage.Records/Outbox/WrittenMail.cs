namespace TagPage.Records.Outbox;

/// <summary>An email as written by those who know the words.</summary>
/// <param name="Subject">One line.</param>
/// <param name="Body">Its words in their pieces.</param>
public readonly record struct WrittenMail(string Subject, MailText Body);
