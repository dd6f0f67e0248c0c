namespace TagPage.Web.Csv;

/// <summary>A column of a sheet, known to the reader, the help page and the templates alike.</summary>
/// <param name="name">As the header writes it.</param>
/// <param name="meaning">For people who fill it in.</param>
public abstract class Column(string name, string meaning)
{
    public string Name => name;

    public string Meaning => meaning;

    /// <summary>The header must name it and every line fill it.</summary>
    public bool Needed { get; init; }

    /// <summary>What the same column is called in files that this program gives away; null for the same.</summary>
    public string? GivenAs { get; init; }

    public bool IsNamed(string plain) => plain == Name || plain == GivenAs;

    /// <summary>What a cell holds, for people: "yes or no".</summary>
    public abstract string Takes { get; }
}

/// <typeparam name="T">A type that has null, for the empty cell.</typeparam>
public sealed class Column<T>(string name, CellKind<T> kind, string meaning) : Column(name, meaning)
{
    public CellKind<T> Kind => kind;

    public override string Takes => kind.Takes;
}

/// <summary>How the text of a cell becomes a value.</summary>
/// <param name="Takes">What a cell holds, for people.</param>
/// <param name="Read">Gets text that is not empty and has no space around it.</param>
public sealed record CellKind<T>(string Takes, Func<string, Cell<T>> Read);

/// <summary>A cell that was read: its value, or the sentence that says what to write instead.</summary>
public readonly record struct Cell<T>(T? Value, string? Wrong);
