namespace TagPage.Web.Tests.Cast;

/// <summary>What the program prints, readable while it still prints.</summary>
public sealed class PrintedLines : StringWriter
{
    private readonly Lock _lock = new();

    public override void WriteLine(string? value)
    {
        lock (_lock)
            base.WriteLine(value);
    }

    public override string ToString()
    {
        lock (_lock)
            return base.ToString();
    }
}
