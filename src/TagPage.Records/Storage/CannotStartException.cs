namespace TagPage.Records.Storage;

/// <summary>A setting or a data folder with which the program cannot start; the message tells the owner what to do.</summary>
public sealed class CannotStartException : InvalidOperationException
{
    public CannotStartException(string sentence) : base(sentence)
    {
    }
}
