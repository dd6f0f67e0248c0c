using System.Runtime.CompilerServices;
using TagPage.Records.Storage;

namespace TagPage.Web.Start.Demo;

/// <summary>The invented shop is written as any other is, and nothing of it may be refused.</summary>
internal static class DemoWrites
{
    /// <summary>The number of what was written.</summary>
    /// <exception cref="InvalidOperationException">It was not; the program is at fault.</exception>
    public static long Done(Outcome outcome, [CallerArgumentExpression(nameof(outcome))] string write = "") =>
        outcome is Outcome.Done { Id: var id } ? id : throw new InvalidOperationException($"The demo was not written: {outcome}, by {write}");
}
