using System.Text;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Import;

/// <summary>Files sent with the form of the import page.</summary>
internal static class SentFiles
{
    public static Task<WebPage> Send(Visitor visitor, Spreadsheet sheet, params (string Name, string Value)[] fields) =>
        Upload(visitor, Spreadsheet.Names.Select(n => (n, Encoding.UTF8.GetBytes(sheet[n]))), fields);

    public static Task<WebPage> SendFrom(string address, Visitor visitor, Spreadsheet sheet) =>
        Upload(visitor, Spreadsheet.Names.Select(n => (n, Encoding.UTF8.GetBytes(sheet[n]))), [], address);

    public static Task<WebPage> Upload(Visitor visitor, IEnumerable<(string Name, byte[] Bytes)> files, params (string Name, string Value)[] fields) =>
        Upload(visitor, files, fields, "/shop/import");

    private static async Task<WebPage> Upload(Visitor visitor, IEnumerable<(string Name, byte[] Bytes)> files, (string Name, string Value)[] fields, string address)
    {
        var page = await visitor.Open(address);
        var values = FormValues.Of(page.Document.QuerySelector<IHtmlFormElement>("main form")!);
        foreach (var (name, value) in fields)
            values.Set(name, value);
        using var content = new MultipartFormDataContent();
        foreach (var (name, value) in values.Pairs.Where(p => p.Key != "Files"))
            content.Add(new StringContent(value), name);
        foreach (var (name, bytes) in files)
            content.Add(new ByteArrayContent(bytes), "Files", name);
        return await visitor.Follow(await WebPage.Of(await visitor.Client.PostAsync(new Uri("/shop/import", UriKind.Relative), content, TestContext.Current.CancellationToken), page.Path));
    }
}
