namespace TagPage.Core.Money;

/// <summary>What a restring that was paid in advance covers, as the shop said when it sold it.</summary>
public enum PrepaidCover { Labour, LabourAndStrings }
