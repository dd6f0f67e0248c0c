namespace TagPage.Records.Reminders;

/// <summary>Why a household of a batch is not reminded. Kept by name, except that it waits in a batch already.</summary>
public enum LeftOut { NothingDue, NoReminders, WishesSms, NoMail, QuietMonth, TooSoon, ShopHasNoMail, NotOnFile, Waits }
