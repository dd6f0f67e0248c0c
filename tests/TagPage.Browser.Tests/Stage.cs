using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.Extensions.DependencyInjection;

namespace TagPage.Browser.Tests;

/// <summary>The whole program on a real port with a data folder of its own, for the tests of one class.</summary>
public class Stage : IAsyncLifetime
{
    public const string OwnerName = "runa";
    public const string OwnerPassword = "seven slow herons wade";

    private readonly StartedShop _shop;

    public Stage() => _shop = new StartedShop(Folder);

    protected string Folder { get; } = StartedShop.NewFolder();

    public string Address { get; private set; } = "";

    public T Get<T>() where T : notnull => _shop.Services.GetRequiredService<T>();

    public virtual ValueTask InitializeAsync()
    {
        _shop.UseKestrel(0);
        _shop.StartServer();
        Address = Get<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.First().Replace("127.0.0.1", "localhost", StringComparison.Ordinal);
        return ValueTask.CompletedTask;
    }

    public async ValueTask DisposeAsync()
    {
        await _shop.DisposeAsync();
        Directory.Delete(Folder, recursive: true);
        GC.SuppressFinalize(this);
    }
}

/// <summary>The same with the invented shop's records.</summary>
public sealed class DemoStage : Stage
{
    public override ValueTask InitializeAsync()
    {
        DemoRecords.CopyTo(Folder);
        return base.InitializeAsync();
    }
}
