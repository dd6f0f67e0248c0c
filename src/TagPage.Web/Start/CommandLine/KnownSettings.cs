namespace TagPage.Web.Start.CommandLine;

/// <summary>Settings that are allowed on the command line. The framework would accept any name and hide a typo.</summary>
internal static class KnownSettings
{
    private static readonly string[] Names =
    [
        "urls", "http_ports", "https_ports", "environment", "contentRoot", "applicationName", "AllowedHosts",
        // A host for tests names each section, empty, beside the settings in it.
        "TagPage", "Logging", "Kestrel",
        "TagPage:DataFolder", "TagPage:Address", "TagPage:Proxies", "TagPage:Smtp",
    ];

    private static readonly string[] Sections = ["Logging:", "Kestrel:", "TagPage:Proxies:", "TagPage:Smtp:"];

    public static bool Contains(string name) =>
        Names.Contains(name, StringComparer.OrdinalIgnoreCase)
        || Array.Exists(Sections, s => name.StartsWith(s, StringComparison.OrdinalIgnoreCase));
}
