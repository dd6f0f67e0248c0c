using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Import;

namespace TagPage.Web.Import;

/// <summary>
/// A zip that may be larger than memory bears: written into the data folder, sent from there, and gone once it is sent.
/// </summary>
internal static class ZipDownload
{
    private const string Type = "application/zip";

    /// <summary>What <paramref name="write"/> writes; null where it says that there is nothing to have.</summary>
    public static async Task<FileStreamResult?> Of(HttpContext http, Uploads uploads, string name, Func<Stream, bool> write)
    {
        var has = false;
        var key = await uploads.Keep(stream =>
        {
            has = write(stream);
            return Task.CompletedTask;
        });
        http.Response.OnCompleted(() =>
        {
            uploads.Remove(key);
            return Task.CompletedTask;
        });
        return has ? new FileStreamResult(File.OpenRead(uploads.SentOf(key)), Type) { FileDownloadName = name } : null;
    }
}
