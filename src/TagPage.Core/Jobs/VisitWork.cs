namespace TagPage.Core.Jobs;

/// <summary>What is done on a racket whose strings stay in it. Measuring: of the string bed; Balance: weights added or taken off.</summary>
public enum VisitWork { Grip, Grommets, Bumper, Balance, Check, Measuring, Other }
