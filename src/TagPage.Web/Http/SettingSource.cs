using Microsoft.Extensions.Configuration.CommandLine;
using Microsoft.Extensions.Configuration.EnvironmentVariables;
using Microsoft.Extensions.Configuration.Json;

namespace TagPage.Web.Http;

/// <summary>Where a setting comes from, in words for whoever wants to change it.</summary>
public sealed class SettingSource(IConfiguration configuration)
{
    /// <summary>Null for a setting that nothing sets.</summary>
    public string? Of(string name) => configuration is IConfigurationRoot root
        ? root.Providers.Reverse().Where(p => p.TryGet(name, out var value) && !string.IsNullOrWhiteSpace(value)).Select(p => Words(p, name)).FirstOrDefault()
        : null;

    private static string Words(IConfigurationProvider provider, string name) => provider switch
    {
        CommandLineConfigurationProvider => $"the command line, --{name}",
        EnvironmentVariablesConfigurationProvider => $"the environment, {name.Replace(":", "__", StringComparison.Ordinal)}",
        JsonConfigurationProvider { Source.Path: var file } => $"the file {file}",
        _ => "the way the program was started",
    };
}
