namespace TagPage.Core.Rackets;

/// <summary>What is looked at when a racket comes in: the frame for cracks, the grommets, the bumper guard, the grip.</summary>
public enum RacketPart { Frame, Grommets, Bumper, Grip }
