using Dapper;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.Data.Sqlite;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Time.Testing;
using TagPage.Records.Storage;

namespace TagPage.Web.Tests.Cast;

/// <summary>A whole shop of its own: the real program on a real SQLite file in a folder of its own, with a clock under control.</summary>
public sealed class TestShop : IDisposable, IAsyncDisposable
{
    public static readonly DateOnly Today = new(2026, 11, 25);

    private readonly string? _folder;
    private House? _house;

    public FakeTimeProvider Clock { get; } = new(new DateTimeOffset(2026, 11, 25, 10, 0, 0, TimeSpan.Zero));

    public LogLines Log { get; } = new();

    /// <summary>What the program prints as it starts.</summary>
    public PrintedLines Output { get; } = new();

    /// <summary>The data folder; one that is named here outlives the shop.</summary>
    public string Folder
    {
        get => _folder ?? House.Folder;
        init => _folder = value;
    }

    public IServiceProvider Services => House.Services;

    public Database Database => Get<Database>();

    public OnFile Records => new(Database);

    public T Get<T>() where T : notnull => Services.GetRequiredService<T>();

    /// <summary>Settings beside the cast's own, or instead of them; before the first request.</summary>
    public Dictionary<string, string> Settings { get; } = new() { ["TagPage:Address"] = "https://tag.example" };

    /// <summary>Few, so that tests are quick; null for as many as the program asks for.</summary>
    public int? HashRounds { get; init; } = 1_000;

    /// <summary>For tests of what happens as the program starts, and for those that break it.</summary>
    public bool IsNew { get; init; }

    /// <summary>The running program, from the first time that it is asked for.</summary>
    public House House => _house ??= IsNew || _folder is not null ? new House(this, _folder) : Houses.Rent(this);

    /// <summary>Somebody with nothing but an address.</summary>
    public Visitor Stranger() => new(House.CreateClient(Plain));

    /// <summary>The same from a network address and over a scheme of the test's choice.</summary>
    public Visitor Stranger(string source, string at = "https://localhost")
    {
        var client = House.CreateClient(new() { AllowAutoRedirect = false, BaseAddress = new Uri(at) });
        client.DefaultRequestHeaders.Add(TestSource.Header, source);
        return new Visitor(client);
    }

    /// <summary>The shop's owner, signed in.</summary>
    public Visitor Owner() => SignedIn("Owner");

    /// <summary>Somebody who helps at the bench, signed in.</summary>
    public Visitor Helper() => SignedIn("Bench");

    private Visitor SignedIn(string role)
    {
        var client = House.CreateClient(Plain);
        client.DefaultRequestHeaders.Add(TestSignIn.Header, role);
        return new Visitor(client);
    }

    private static WebApplicationFactoryClientOptions Plain => new() { AllowAutoRedirect = false, BaseAddress = new Uri("https://localhost") };

    /// <summary>A write by another process, which the program does not see.</summary>
    public void ChangeFromOutside(string sql)
    {
        using var other = new SqliteConnection($"Data Source={Path.Combine(Folder, "tagpage.db")};Pooling=False");
        other.Open();
        other.Execute(sql);
    }

    public void Dispose()
    {
        if (Interlocked.Exchange(ref _house, null) is not { } house)
            return;
        if (house.IsShared)
            Houses.Return(house, this);
        else
            house.Dispose();
    }

    public ValueTask DisposeAsync()
    {
        Dispose();
        return ValueTask.CompletedTask;
    }
}
