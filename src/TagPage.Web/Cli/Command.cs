namespace TagPage.Web.Cli;

/// <summary>What the program is asked to do.</summary>
public enum Command { Serve, Demo, Import, SetUpLink, Copy, NewKeys, Help, Version }
