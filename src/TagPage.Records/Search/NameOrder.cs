using System.Globalization;
using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Core.Text;

namespace TagPage.Records.Search;

/// <summary>The order that names of people stand in: of a language's letters, by the name as written or by the family name.</summary>
public sealed class NameOrder
{
    private readonly CompareInfo _letters;
    private readonly bool _byLastWord;

    /// <param name="language">ISO 639-1. The root's order where the platform knows none of its own.</param>
    /// <param name="byLastWord">The family name comes first: see <see cref="PersonName"/>.</param>
    public NameOrder(string language, bool byLastWord)
    {
        (_letters, _byLastWord) = (CultureInfo.GetCultureInfo(language).CompareInfo, byLastWord);
        Identity = $"{language} {(byLastWord ? "family name" : "as written")} {_letters.Version.FullVersion} {_letters.Version.SortId}";
    }

    /// <summary>Keys made under another one cannot be compared: it names the version of the letters’ order too.</summary>
    public string Identity { get; }

    /// <summary>The shop's, as its settings stand now.</summary>
    public static NameOrder Of(SqliteConnection connection) =>
        connection.QuerySingleOrDefault<Setting>(SettingSql) is { } setting ? new(setting.Language, setting.ByLastWord) : new("en", byLastWord: false);

    private sealed record Setting
    {
        public string Language { get; init; } = "";
        public bool ByLastWord { get; init; }
    }

    private const string SettingSql = "SELECT COALESCE(names_in, language) AS language, by_last_word FROM shop WHERE id = 1";

    /// <summary>Bytes that sort as the name does. Capitals count as small letters.</summary>
    public byte[] Key(string name) => KeyOfLetters(_byLastWord ? PersonName.FamilyFirst(name) : name.Replace(PersonName.Tie, ' '));

    /// <summary>The same for the first letters of a list: what was typed is taken as it stands.</summary>
    public byte[] KeyOfLetters(string letters) => letters.Length == 0 ? [] : _letters.GetSortKey(letters, CompareOptions.IgnoreCase).KeyData;
}
