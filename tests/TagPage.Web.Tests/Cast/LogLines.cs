using System.Collections.Concurrent;
using Microsoft.Extensions.Logging;

namespace TagPage.Web.Tests.Cast;

/// <summary>Keeps every line the program logs, for tests that look for what must not be there.</summary>
public sealed class LogLines : ILoggerProvider, ILogger
{
    private readonly ConcurrentQueue<string> _lines = new();

    public IReadOnlyCollection<string> All => _lines;

    public ILogger CreateLogger(string categoryName) => this;

    public IDisposable? BeginScope<TState>(TState state) where TState : notnull => null;

    public bool IsEnabled(LogLevel logLevel) => true;

    public void Log<TState>(LogLevel logLevel, EventId eventId, TState state, Exception? exception, Func<TState, Exception?, string> formatter) =>
        _lines.Enqueue($"{logLevel} {formatter(state, exception)} {exception}");

    public void Dispose()
    {
    }
}
