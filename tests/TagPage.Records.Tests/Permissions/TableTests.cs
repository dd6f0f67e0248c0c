using System.Reflection;
using TagPage.Records.Storage;

namespace TagPage.Records.Tests.Permissions;

public sealed class TableTests
{
    /// <summary>A new one is forgotten in no table: it is found by what it takes.</summary>
    [Fact]
    public void Every_call_in_somebodys_name_stands_in_the_table_once()
    {
        var all = typeof(Who).Assembly.GetTypes().Where(type => type.Name.EndsWith("Store", StringComparison.Ordinal))
            .SelectMany(type => type.GetMethods(BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly))
            .Where(method => method.GetParameters().Any(parameter => parameter.ParameterType == typeof(Who)))
            .Select(method => $"{method.DeclaringType!.Name}.{method.Name}").Order(StringComparer.Ordinal).ToList();

        Assert.True(all.Count > 50, $"Only {all.Count} were found.");
        Assert.Equal(all, Table.Rows.Select(row => row.Name).Order(StringComparer.Ordinal));
    }

    /// <summary>Whoever opens one of these has the account's one-time link in hand, which is the permission.</summary>
    private static readonly string[] ByOneTimeLink = ["InvitationStore.Accept", "NewPasswordStore.Set", "SetUpStore.SetUp"];

    [Fact]
    public void Whatever_can_be_refused_asks_who_acts()
    {
        var withoutWho = typeof(Who).Assembly.GetTypes().Where(type => type.Name.EndsWith("Store", StringComparison.Ordinal))
            .SelectMany(type => type.GetMethods(BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly))
            .Where(method => method.ReturnType == typeof(Outcome) && method.GetParameters().All(parameter => parameter.ParameterType != typeof(Who)))
            .Select(method => $"{method.DeclaringType!.Name}.{method.Name}").Order(StringComparer.Ordinal);

        Assert.Equal(ByOneTimeLink, withoutWho);
    }
}
