using System.Net;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.Logging;

namespace TagPage.Bench.PageSpeed;

/// <summary>The least a server can do for the same bytes and headers: it has them in memory and sends them.</summary>
public static class BareEndpoint
{
    /// <summary>Saves an answer as this endpoint reads it: a line a header, an empty line, the body.</summary>
    public static async Task Save(Uri address, string file)
    {
        using var client = new HttpClient(new HttpClientHandler { AutomaticDecompression = DecompressionMethods.None });
        using var request = new HttpRequestMessage(HttpMethod.Get, address) { Headers = { { "Accept-Encoding", "gzip, br" } } };
        using var answer = await client.SendAsync(request);
        await using var saved = File.Create(file);
        await using (var head = new StreamWriter(saved, leaveOpen: true))
        {
            foreach (var (name, values) in answer.Headers.Concat(answer.Content.Headers).Where(h => h.Key is not ("Date" or "Transfer-Encoding")))
                await head.WriteLineAsync($"{name}: {string.Join(", ", values)}");
            await head.WriteLineAsync();
        }
        await answer.Content.CopyToAsync(saved);
    }

    public static void Serve(string file, string[] settings)
    {
        var (headers, body) = Read(File.ReadAllBytes(file));
        var builder = WebApplication.CreateBuilder(settings);
        builder.Logging.ClearProviders();
        builder.WebHost.ConfigureKestrel(k => k.AddServerHeader = false);
        var app = builder.Build();
        app.MapGet("/", async (HttpContext context) =>
        {
            foreach (var (name, value) in headers)
                context.Response.Headers[name] = value;
            await context.Response.Body.WriteAsync(body);
        });
        app.Run();
    }

    private static (List<(string Name, string Value)> Headers, byte[] Body) Read(byte[] saved)
    {
        var end = Environment.NewLine + Environment.NewLine;
        var head = saved.AsSpan().IndexOf(System.Text.Encoding.ASCII.GetBytes(end));
        var lines = System.Text.Encoding.ASCII.GetString(saved, 0, head).Split(Environment.NewLine);
        return (lines.Select(l => l.Split(": ", 2)).Select(l => (l[0], l[1])).ToList(), saved[(head + end.Length)..]);
    }
}
