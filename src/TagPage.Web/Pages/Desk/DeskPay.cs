namespace TagPage.Web.Pages.Desk;

/// <summary>How a racket is paid for at the desk, as the buttons have it. Account: not now. Credit: from what whoever pays has in credit.</summary>
public enum DeskPay { Account, Cash, Card, Transfer, Credit }
