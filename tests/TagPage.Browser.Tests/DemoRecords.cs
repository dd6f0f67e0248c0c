using Microsoft.Extensions.DependencyInjection;
using TagPage.Browser.Tests;
using TagPage.Records.Storage;
using TagPage.Web.Http.SignIn;
using TagPage.Web.Start.Demo;

[assembly: AssemblyFixture(typeof(DemoRecords))]

namespace TagPage.Browser.Tests;

/// <summary>The invented shop's data folder with an owner who can sign in: filled once, copied for each class of tests.</summary>
public sealed class DemoRecords : IAsyncLifetime
{
    private static readonly string Folder = StartedShop.NewFolder();

    public async ValueTask InitializeAsync()
    {
        await using var shop = new StartedShop(Folder);
        shop.Services.GetRequiredService<DemoShop>().Prepare();
        using (var scope = shop.Services.CreateScope())
            await scope.ServiceProvider.GetRequiredService<Owners>().Add(Stage.OwnerName, Stage.OwnerPassword);
        // Closing the last connection writes the log into the file.
        shop.Services.GetRequiredService<Database>().Dispose();
    }

    public static void CopyTo(string folder)
    {
        foreach (var file in Directory.EnumerateFiles(Folder, "*", SearchOption.AllDirectories))
        {
            var copy = Path.Combine(folder, Path.GetRelativePath(Folder, file));
            Directory.CreateDirectory(Path.GetDirectoryName(copy)!);
            File.Copy(file, copy);
        }
    }

    public ValueTask DisposeAsync()
    {
        Directory.Delete(Folder, recursive: true);
        return ValueTask.CompletedTask;
    }
}
