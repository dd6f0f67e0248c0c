namespace TagPage.Records.Clients;

/// <summary>How a client wants to be reminded: by mail, or by SMS from the owner's own phone.</summary>
public enum RemindBy { Mail, Sms }
