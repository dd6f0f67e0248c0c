namespace TagPage.Core.Sports;

/// <summary>A racket sport the shop strings for.</summary>
public enum Sport { Tennis, Badminton, Squash }
