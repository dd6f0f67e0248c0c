using Microsoft.Extensions.Time.Testing;
using TagPage.Records.Search;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Web.Tests.Cast;

namespace TagPage.Records.Tests.Cast;

/// <summary>A database of its own with two households, the family of Odalys and Ewan, and everybody who may try something there.</summary>
public sealed class Street : IDisposable
{
    /// <param name="empty">True for a file with nobody on it, not even the shop.</param>
    public Street(bool empty = false)
    {
        Directory.CreateDirectory(Folder.Root);
        Template.CopyTo(Folder.Root);
        Database = new Database(Folder);
        new NameKeeper(Database).Attach();
        Clock = new ShopClock(Time, new ShopStore(Database));
        Records = new OnFile(Database);
        if (empty)
            return;
        Records.Shop();
        (Odalys, Pim, Racket, _, Strung) = Records.Family();
        Ewan = Records.Client("Ewan Lockyer");
    }

    /// <summary>The shop's day when a test begins.</summary>
    public static DateOnly Today { get; } = new(2026, 11, 25);

    public DataFolder Folder { get; } = TestFolders.Lend();

    public Database Database { get; }

    public FakeTimeProvider Time { get; } = new(new DateTimeOffset(2026, 11, 25, 10, 0, 0, TimeSpan.Zero));

    public ShopClock Clock { get; }

    public OnFile Records { get; }

    public long Odalys { get; }

    public long Pim { get; }

    /// <summary>Pim's.</summary>
    public long Racket { get; }

    /// <summary>The job whose strings are in it, put in on 1 November 2026.</summary>
    public long Strung { get; }

    /// <summary>Another client.</summary>
    public long Ewan { get; }

    public Who Be(Actor actor) => actor switch
    {
        Actor.Shop => Who.Shop,
        Actor.Bench => Who.Bench(null),
        Actor.Owner => Who.Client(Odalys),
        Actor.OtherClient => Who.Client(Ewan),
        Actor.Helper => Who.Helper(1),
        Actor.OtherHelper => Who.Helper(2),
        Actor.Finder => Who.Finder,
        _ => Who.Program,
    };

    /// <summary>Anybody without permission is told that there is no such thing, and no row has changed afterwards.</summary>
    public void Check(bool allowed, Func<Outcome> act)
    {
        var before = Database.Dump();
        var outcome = act();
        if (allowed)
            Assert.IsType<Outcome.Done>(outcome);
        else
            Assert.IsType<Outcome.Absent>(outcome);
        Assert.Equal(allowed, before != Database.Dump());
    }

    /// <summary>Refused for this reason, and nothing was written.</summary>
    public T Refused<T>(Func<Outcome> act) where T : Refusal
    {
        var before = Database.Dump();
        var why = Assert.IsType<T>(Assert.IsType<Outcome.Refused>(act()).Why);
        Assert.Equal(before, Database.Dump());
        return why;
    }

    public void Dispose()
    {
        Database.Dispose();
        TestFolders.TakeBack(Folder);
    }
}

/// <summary>Helper: at the desk of event 1; the other one at that of another event.</summary>
public enum Actor { Shop, Bench, Owner, OtherClient, Helper, OtherHelper, Finder, Program }
