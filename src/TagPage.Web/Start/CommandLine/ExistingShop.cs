using TagPage.Records.Storage;

namespace TagPage.Web.Start.CommandLine;

/// <summary>What is said and done about a shop needs one: a data folder that was mistyped would otherwise become a new, empty shop.</summary>
internal static class ExistingShop
{
    /// <exception cref="CannotStartException">There is none; nothing was made.</exception>
    public static void Demand(string[] settings)
    {
        var folder = Path.GetFullPath(App.DataFolderOf(settings));
        if (!DataFolder.HasShop(folder))
            throw new CannotStartException($"There is no shop in {folder}. Name its data folder: --TagPage:DataFolder=…");
    }
}
