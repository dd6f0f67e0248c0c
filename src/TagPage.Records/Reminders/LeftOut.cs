namespace TagPage.Records.Reminders;

/// <summary>Why a household of a batch is not reminded. Kept by name.</summary>
public enum LeftOut { NothingDue, NoReminders, WishesSms, NoMail, QuietMonth, TooSoon, ShopHasNoMail, NotOnFile }
