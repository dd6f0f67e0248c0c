using System.Collections;
using System.Reflection;
using System.Runtime.CompilerServices;
using Microsoft.AspNetCore.Http;
using TagPage.Records.Storage;

namespace TagPage.Web.Tests.Cast;

/// <summary>
/// What the running program remembers outside its file. A house is lent again without a restart, so each of these has to be
/// harmless to the next shop; whoever adds one says here why it is.
/// </summary>
public sealed class MemoryTests : IDisposable
{
    private static readonly string[] Known =
    [
        // Set once, while the program starts.
        "Database.BeforeCommit", "Changes.DeskChanged", "PublicAddress._listening", "Manual._pages", "LicenceTexts._files", "FolderLock._held",
        // Only grow.
        "Database._opened", "Changes._now", "Changes._ofAll",
        // Closed as a shop moves out, with its file.
        "Database._readers", "ReadConnections._resting", "ReadConnections._isClosed", "WriteConnection._open", "Database._watch", "ChangeWatch._isOn",
        // A file that is closed counts as changed in everything, and so does what was kept of it.
        "PublicStyle._kept", "ShopStore._kept", "AddressStore._kept", "TagCache._pages", "TagCache._bytes",
        "Changes._ofPlayers", "Changes._uncommitted", "Changes._desks", "Changes._allUncommitted",
        // Counts within a span of time, and the house's stopwatch has jumped past it.
        "SlidingLimit._takes", "SteadyLimit._keys",
        // Empty and free when a shop moves out; tests that keep turns for themselves have the house for themselves too.
        "Queue.Free", "Queue.Inside",
        // Written as soon as it can be, which tests that stop it see to.
        "Deliveries._unwritten",
        // Tests that break their file or its disk have the house to themselves.
        "BackupStore._tries", "DatabaseCheck._damaged", "WriteProbe._tried", "WriteProbe._works",
        // Codes and keys are drawn at random: no two shops have one in common.
        "OpenedPages._newer", "OpenedPages._older", "KeptPages._pages", "KeptPages._oldest", "KeptPages._bytes",
        // Marks only grow, and a tablet compares them with its own page's; ears go with their tablets.
        "LiveDesks._marks", "LiveDesks._ears",
    ];

    private readonly TestShop _shop = new();

    public void Dispose() => _shop.Dispose();

    [Fact]
    public void Whatever_the_program_remembers_is_known_here()
    {
        var seen = new HashSet<Type>();
        var found = Living().SelectMany(type => Memories(type, seen)).ToList();

        var (strange, gone) = (found.Except(Known).ToList(), Known.Except(found).ToList());
        Assert.True(strange.Count == 0, "Why is the next shop safe from " + string.Join(", ", strange));
        Assert.True(gone.Count == 0, "No longer there: " + string.Join(", ", gone));
    }

    /// <summary>What lives as long as the program: its single services and the steps of its pipeline.</summary>
    private IEnumerable<Type> Living() =>
        _shop.House.SingleServices.Select(s => s.GetType()).Concat(typeof(Program).Assembly.GetTypes().Where(IsStep)).Where(IsOurs);

    private static bool IsStep(Type type) => type.GetConstructors().Any(c => c.GetParameters().Any(p => p.ParameterType == typeof(RequestDelegate)));

    private static bool IsOurs(Type type) => type.Assembly == typeof(Database).Assembly || type.Assembly == typeof(Program).Assembly;

    private static IEnumerable<string> Memories(Type type, HashSet<Type> seen)
    {
        if (!seen.Add(type))
            yield break;
        foreach (var field in type.GetFields(BindingFlags.Instance | BindingFlags.Public | BindingFlags.NonPublic))
        {
            if (!field.IsInitOnly && !IsConstructorParameter(field) || IsMemory(field.FieldType))
                yield return $"{type.Name}.{NameOf(field)}";
            if (IsOurs(field.FieldType) && !field.FieldType.IsEnum)
                foreach (var inner in Memories(field.FieldType, seen))
                    yield return inner;
        }
    }

    /// <summary>Parameters of a primary constructor are fields that nothing stops from changing, and nothing does.</summary>
    private static bool IsConstructorParameter(FieldInfo field) => field.Name.EndsWith(">P", StringComparison.Ordinal);

    private static bool IsMemory(Type type) =>
        type == typeof(SemaphoreSlim)
        || (type != typeof(string) && !type.IsArray && type.IsAssignableTo(typeof(IEnumerable)) && type.GetMethod("Clear") is not null);

    private static string NameOf(FieldInfo field) => field.IsDefined(typeof(CompilerGeneratedAttribute)) ? field.Name.Split('<', '>')[1] : field.Name;
}
