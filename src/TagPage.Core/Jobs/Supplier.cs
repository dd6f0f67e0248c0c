namespace TagPage.Core.Jobs;

/// <summary>Who brought the string.</summary>
public enum Supplier { Shop, Client }
