using Microsoft.Extensions.Logging;

namespace TagPage.Web.Tests.Cast;

/// <summary>Hands what the program logs to the shop that lives here.</summary>
public sealed class HouseLog : ILoggerProvider, ILogger
{
    public LogLines Lines { get; set; } = new();

    public ILogger CreateLogger(string categoryName) => this;

    public IDisposable? BeginScope<TState>(TState state) where TState : notnull => null;

    public bool IsEnabled(LogLevel logLevel) => true;

    public void Log<TState>(LogLevel logLevel, EventId eventId, TState state, Exception? exception, Func<TState, Exception?, string> formatter) =>
        Lines.Add($"{logLevel} {formatter(state, exception)} {exception}");

    public void Dispose()
    {
    }
}
