namespace TagPage.Web.Start.CommandLine;

/// <summary>What the program is asked to do.</summary>
public enum Command { Serve, Demo, Import, SetUpLink, Copy, Backup, Restore, Check, NewKeys, Help, Version }
