namespace TagPage.Core.Strings;

/// <summary>What a string is made of; decides its starting values in the forecast.</summary>
public enum Material { NaturalGut, Multifilament, SyntheticGut, Polyester, Aramid }
