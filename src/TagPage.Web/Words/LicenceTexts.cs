using System.Security.Cryptography;

namespace TagPage.Web.Words;

/// <summary>The texts that licences demand to be shipped: the files of licences/ that travel with the program.</summary>
public sealed class LicenceTexts
{
    private readonly string _folder = Path.Combine(AppContext.BaseDirectory, "licences");
    private readonly Dictionary<string, string> _files;

    public LicenceTexts()
    {
        _files = Directory.EnumerateFiles(_folder, "*", SearchOption.AllDirectories)
            .ToDictionary(file => Path.GetRelativePath(_folder, file).Replace('\\', '/'), File.ReadAllText);
        All = [.. _files.GroupBy(f => Convert.ToHexString(SHA256.HashData(System.Text.Encoding.UTF8.GetBytes(f.Value)))).Select(Of).OrderBy(t => t.Libraries.Count > 0).ThenBy(t => t.Title, StringComparer.OrdinalIgnoreCase)];
    }

    /// <summary>Each text once, those of whole licences first.</summary>
    public IReadOnlyList<LicenceText> All { get; }

    /// <summary>Null for what is not among the files.</summary>
    public string? Find(string name) => _files.GetValueOrDefault(name);

    private static LicenceText Of(IGrouping<string, KeyValuePair<string, string>> same)
    {
        var names = same.Select(f => f.Key).Order(StringComparer.Ordinal).ToList();
        var libraries = names.Where(n => n.Contains('/', StringComparison.Ordinal)).Select(n => n.Split('/')[0]).ToList();
        var title = libraries.Count == 0 ? Path.GetFileNameWithoutExtension(names[0])
            : Path.GetFileName(names[0]).StartsWith("THIRD", StringComparison.OrdinalIgnoreCase) ? "What is inside " + string.Join(", ", libraries)
            : string.Join(", ", libraries);
        return new LicenceText(names[0], title, libraries);
    }
}

/// <param name="Name">Of the file, as a path.</param>
/// <param name="Title">What it is for.</param>
/// <param name="Libraries">Those that bring it along; none for a licence as everybody words it.</param>
public sealed record LicenceText(string Name, string Title, IReadOnlyList<string> Libraries);
