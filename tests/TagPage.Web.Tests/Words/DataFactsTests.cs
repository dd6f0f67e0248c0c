using System.Text.RegularExpressions;
using Dapper;
using TagPage.Web.Tests.Cast;
using TagPage.Web.Words;

namespace TagPage.Web.Tests.Words;

/// <summary>docs/data.md, which the manual and the record of processing are made of.</summary>
public sealed partial class DataFactsTests
{
    /// <summary>They hold the shop’s own words, numbers and files.</summary>
    private static readonly string[] AboutNobody =
    [
        "shop", "opening_span", "closed_days", "message", "backup_setting", "write_probe", "used_form_key", "frame", "label_setting", "label_logo", "tag_roll", "string_kind", "chosen_address",
        "used_address", "care_guide", "instrument", "stringing_list", "stringing_list_record", "stringing_list_heading", "money_setting", "string_price", "extra_price", "string_stock", "stock_move", "stock_again", "stop", "due_again", "due_day", "name_order", "demo", "migration",
    ];

    private static readonly DataFacts Facts = new();

    [Fact]
    public void Every_table_stands_in_the_manual_once_with_what_it_holds_and_for_how_long()
    {
        using var empty = new EmptyDatabase();
        empty.Migrator([.. TagPage.Records.Storage.Migration.Embedded]).Run();
        var tables = empty.Database.Read(c => c.Query<string>("SELECT name FROM pragma_table_list WHERE schema = 'main' AND type IN ('table', 'virtual') AND name NOT LIKE 'sqlite_%'").ToList());

        Assert.Equal(tables.Order(StringComparer.Ordinal), Facts.Kept.SelectMany(k => k.Tables).Order(StringComparer.Ordinal));
        Assert.All(Facts.Kept, kept => Assert.True(kept is { What.Length: > 0, Public.Length: > 0, HowLong.Length: > 0 }, kept.ToString()));
    }

    [Fact]
    public void Whatever_is_about_a_person_is_kept_for_something()
    {
        var forSomething = Facts.Purposes.SelectMany(p => p.Data).SelectMany(k => k.Tables).ToHashSet();

        Assert.Equal([], Facts.Kept.SelectMany(k => k.Tables).Except(forSomething).Except(AboutNobody));
        Assert.Equal([], AboutNobody.Intersect(forSomething));
        Assert.All(Facts.Purposes, p => Assert.True(p is { What.Length: > 0, Whom.Length: > 0, Gets.Length: > 0, Data.Count: > 0 }, p.What));
    }

    [Fact]
    public void Words_are_those_of_the_manual_without_its_marks() =>
        Assert.DoesNotContain(Facts.Kept.Select(k => k.What + k.HowLong + k.Public).Concat(Facts.Purposes.Select(p => p.What + p.Gets)), words => Marks().IsMatch(words));

    [Fact]
    public void Table_that_nobody_describes_is_found() =>
        Assert.Throws<InvalidDataException>(() => new DataFacts("| table | what |\n| --- | --- |\n| `a` | b | c | d |\n\n| what for | who |\n| --- | --- |\n| x | y | `secret_table` | z |\n"));

    [GeneratedRegex(@"[`\[\]|]|\.md")]
    private static partial Regex Marks();
}
