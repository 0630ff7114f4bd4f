using System.Collections.Concurrent;
using Microsoft.Extensions.Logging;

namespace Stockwright.Web.Tests.Shell;

/// <summary>Keeps every warning and error of the program.</summary>
internal sealed class RememberingLog : ILoggerProvider
{
    public ConcurrentQueue<string> Lines { get; } = [];

    public ILogger CreateLogger(string categoryName) => new Logger(Lines, categoryName);

    public void Dispose()
    {
    }

    private sealed class Logger(ConcurrentQueue<string> lines, string category) : ILogger
    {
        public IDisposable? BeginScope<TState>(TState state)
            where TState : notnull => null;

        public bool IsEnabled(LogLevel logLevel) => logLevel >= LogLevel.Warning;

        public void Log<TState>(LogLevel logLevel, EventId eventId, TState state, Exception? exception, Func<TState, Exception?, string> formatter)
        {
            if (IsEnabled(logLevel))
            {
                lines.Enqueue($"{category}: {formatter(state, exception)} {exception}");
            }
        }
    }
}
