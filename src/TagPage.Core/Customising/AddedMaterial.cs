namespace TagPage.Core.Customising;

/// <summary>What an added mass is made of.</summary>
public enum AddedMaterial { Lead, Tungsten, Silicone, Other }
