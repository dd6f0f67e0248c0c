using System.Runtime.CompilerServices;

namespace TagPage.Web.Tests.Cast;

/// <summary>
/// The framework watches the settings files of each host, and Linux lets a user watch so many at a time: enough for a
/// program, not for a suite of them.
/// </summary>
internal static class FewWatchers
{
    [ModuleInitializer]
    internal static void Set() => Environment.SetEnvironmentVariable("DOTNET_hostBuilder__reloadConfigOnChange", "false");
}
