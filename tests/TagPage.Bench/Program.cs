using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Running;
using BenchmarkDotNet.Toolchains.InProcess.Emit;
using Perfolizer.Horology;

namespace TagPage.Bench;

/// <summary>Run by hand: dotnet run -c Release --project tests/TagPage.Bench -- --filter "*"</summary>
public static class Program
{
    public static void Main(string[] args)
    {
        // In this process: the shops are filled once, and the tables they are read from stay warm as in a running shop.
        var job = Job.Default.WithToolchain(InProcessEmitToolchain.Instance)
            .WithWarmupCount(3).WithIterationCount(12).WithMinIterationTime(TimeInterval.FromMilliseconds(100));
        BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args, DefaultConfig.Instance.AddJob(job).WithArtifactsPath(Path.Combine(Path.GetTempPath(), "tagpage-bench")));
    }
}
