using System.Diagnostics;
using System.Reflection;
using System.Runtime.Loader;
using System.Security.Cryptography;
using System.Text.Json;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Style;

/// <summary>The bill that deploy/publish.sh puts into what an owner installs, as deploy/bom.sh writes it.</summary>
public sealed class BillOfMaterialsTests : IDisposable
{
    private const string Kind = "linux-x64";

    private readonly string _folder = Directory.CreateTempSubdirectory("tagpage-bill-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public async Task The_bill_keeps_to_the_schema_of_CycloneDX_and_names_every_locked_library_NET_itself_and_the_files_of_others()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "It is a shell script.");
        await File.WriteAllTextAsync(Path.Combine(_folder, "TagPage.Web.runtimeconfig.json"), """
            { "runtimeOptions": { "includedFrameworks": [ { "name": "Microsoft.NETCore.App", "version": "10.0.99" }, { "name": "Microsoft.AspNetCore.App", "version": "10.0.98" } ] } }
            """, TestContext.Current.CancellationToken);

        await Write();

        var json = await File.ReadAllTextAsync(Path.Combine(_folder, "bom.json"), TestContext.Current.CancellationToken);
        Assert.Empty(FaultsBySchema(json));
        Assert.NotEmpty(FaultsBySchema(json.Replace("\"name\":", "\"nmae\":", StringComparison.Ordinal)));
        using var bill = JsonDocument.Parse(json);
        var components = bill.RootElement.GetProperty("components").EnumerateArray().ToList();
        var named = components.Where(c => c.GetProperty("type").GetString() != "file").Select(c => c.GetProperty("purl").GetString()!).Order(StringComparer.OrdinalIgnoreCase);
        Assert.Equal(Locked().Append($"pkg:nuget/Microsoft.NETCore.App.Runtime.{Kind}@10.0.99").Append($"pkg:nuget/Microsoft.AspNetCore.App.Runtime.{Kind}@10.0.98").Order(StringComparer.OrdinalIgnoreCase), named);
        Assert.Equal(FilesOfOthers(), components.Where(c => c.GetProperty("type").GetString() == "file").Select(c => c.GetProperty("hashes")[0].GetProperty("content").GetString()!).Order(StringComparer.Ordinal));
    }

    /// <summary>The reader for cameras, and the fonts.</summary>
    private static IEnumerable<string> FilesOfOthers() =>
        Directory.EnumerateFiles(Path.Combine(Repository.Folder, "wwwroot", "zxing"))
            .Concat(Directory.EnumerateFiles(Path.Combine(Repository.Folder, "src", "TagPage.Labels", "Fonts"), "*.ttf"))
            .Select(file => Convert.ToHexStringLower(SHA256.HashData(File.ReadAllBytes(file)))).Order(StringComparer.Ordinal);

    private async Task Write()
    {
        var start = new ProcessStartInfo("bash") { RedirectStandardOutput = true, RedirectStandardError = true };
        foreach (var argument in (string[])[Path.Combine(Repository.Folder, "deploy", "bom.sh"), _folder, Kind, "1.2-3"])
            start.ArgumentList.Add(argument);
        using var script = Process.Start(start)!;
        var said = await script.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken) + await script.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        await script.WaitForExitAsync(TestContext.Current.CancellationToken);
        Assert.True(script.ExitCode == 0, said);
    }

    private static IEnumerable<string> Locked()
    {
        using var locked = JsonDocument.Parse(File.ReadAllText(Path.Combine(Repository.Folder, "src", "TagPage.Web", "packages.lock.json")));
        return [.. locked.RootElement.GetProperty("dependencies").GetProperty("net10.0").EnumerateObject()
            .Where(library => library.Value.GetProperty("type").GetString() != "Project")
            .Select(library => $"pkg:nuget/{library.Name}@{library.Value.GetProperty("resolved").GetString()}")];
    }

    /// <summary>By the schema of CycloneDX 1.6 (ECMA-424) itself, which travels with the tool that .config/dotnet-tools.json names.</summary>
    private static IEnumerable<string> FaultsBySchema(string json)
    {
        var packages = Environment.GetEnvironmentVariable("NUGET_PACKAGES") ?? Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.UserProfile), ".nuget", "packages");
        using var tools = JsonDocument.Parse(File.ReadAllText(Path.Combine(Repository.Folder, ".config", "dotnet-tools.json")));
        var version = tools.RootElement.GetProperty("tools").GetProperty("cyclonedx").GetProperty("version").GetString()!;
        var tool = new AssemblyLoadContext("CycloneDX", isCollectible: true);
        var folder = Path.Combine(packages, "cyclonedx", version, "tools", "net10.0", "any");
        tool.Resolving += (context, name) => File.Exists(Path.Combine(folder, name.Name + ".dll")) ? context.LoadFromAssemblyPath(Path.Combine(folder, name.Name + ".dll")) : null;
        var core = tool.LoadFromAssemblyPath(Path.Combine(folder, "CycloneDX.Core.dll"));
        var validate = core.GetType("CycloneDX.Json.Validator")!.GetMethod("Validate", [typeof(string), core.GetType("CycloneDX.SpecificationVersion")!])!;
        var result = validate.Invoke(null, BindingFlags.Default, null, [json, Enum.Parse(validate.GetParameters()[1].ParameterType, "v1_6")], null)!;
        var (valid, messages) = ((bool)result.GetType().GetProperty("Valid")!.GetValue(result)!, (IEnumerable<string>?)result.GetType().GetProperty("Messages")!.GetValue(result));
        return valid ? [] : [.. messages ?? [], "not valid"];
    }
}
