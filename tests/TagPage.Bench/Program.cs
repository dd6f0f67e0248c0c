using System.Globalization;
using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Running;
using BenchmarkDotNet.Toolchains.InProcess.Emit;
using Perfolizer.Horology;
using TagPage.Bench.PageSpeed;

namespace TagPage.Bench;

/// <summary>Run by hand, always for release; docs/speed.md has the commands and what they printed.</summary>
public static class Program
{
    public static async Task Main(string[] args)
    {
        switch (args)
        {
            case ["bare", var file, .. var settings]:
                BareEndpoint.Serve(file, settings);
                break;
            case ["pages", .. var rest]:
                await PagesRun.Go(Number(rest, 0, 5), TimeSpan.FromSeconds(Number(rest, 1, 3)));
                break;
            case ["scale", .. var sizes]:
                await ScaleRun.Go([.. (sizes.Length > 0 ? sizes : ["1000", "10000", "100000"]).Select(s => int.Parse(s, CultureInfo.InvariantCulture))], TimeSpan.FromSeconds(1));
                break;
            default:
                Stores(args);
                break;
        }
    }

    private static int Number(string[] args, int at, int otherwise) => args.Length > at ? int.Parse(args[at], CultureInfo.InvariantCulture) : otherwise;

    private static void Stores(string[] args)
    {
        // In this process: the shops are filled once, and the tables they are read from stay warm as in a running shop.
        var job = Job.Default.WithToolchain(InProcessEmitToolchain.Instance)
            .WithWarmupCount(3).WithIterationCount(12).WithMinIterationTime(TimeInterval.FromMilliseconds(100));
        BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args, DefaultConfig.Instance.AddJob(job).WithArtifactsPath(Path.Combine(Path.GetTempPath(), "tagpage-bench")));
    }
}
