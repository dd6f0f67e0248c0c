namespace TagPage.Web.Setup;

/// <summary>One thing that was looked at.</summary>
/// <param name="What">In one or two words.</param>
/// <param name="State">How it is.</param>
/// <param name="Sentence">What was found, and what to do about it where it is not well.</param>
public sealed record SetupFinding(string What, SetupState State, string Sentence)
{
    public string Mark => State == SetupState.Good ? "✓" : "▲";
}

/// <summary>Good; works, but not as it should; does not work.</summary>
public enum SetupState { Good, Soon, Over }
