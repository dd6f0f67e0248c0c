namespace TagPage.Web.Pages.Shop.Jobs;

/// <summary>How a job is paid for, as the buttons have it. Account: not now.</summary>
public enum PayHow { Account, Cash, Card, Transfer, Credit }
