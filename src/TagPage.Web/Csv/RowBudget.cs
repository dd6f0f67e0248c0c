namespace TagPage.Web.Csv;

/// <summary>Hands out a file's text and throws a <see cref="RowTooLongException"/> if one line is too long.</summary>
internal sealed class RowBudget(string text) : StringReader(text)
{
    /// <summary>Characters of one line: many times what all fields of a sheet may hold.</summary>
    private const int Most = 100_000;

    private int _left = Most;

    /// <summary>The next line has an allowance of its own.</summary>
    public void Renew() => _left = Most;

    public override int Read(char[] buffer, int index, int count)
    {
        if (_left == 0 && Peek() >= 0)
            throw new RowTooLongException();
        var read = base.Read(buffer, index, Math.Min(count, _left));
        _left -= read;
        return read;
    }
}

internal sealed class RowTooLongException : Exception;
