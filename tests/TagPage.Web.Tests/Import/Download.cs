using System.IO.Compression;
using System.Text;
using TagPage.Records.Privacy;
using TagPage.Web.Import;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Import;

/// <summary>What a client downloads.</summary>
internal static class Download
{
    /// <summary>One of its files, as it is.</summary>
    public static string Csv(TestShop shop, long client, string file)
    {
        using var zip = new MemoryStream();
        ExportZip.Write(zip, give => shop.Get<ExportStore>().Read(client, give));
        using var archive = new ZipArchive(zip);
        using var reader = new StreamReader(archive.GetEntry(file)!.Open(), Encoding.UTF8);
        return reader.ReadToEnd();
    }
}
