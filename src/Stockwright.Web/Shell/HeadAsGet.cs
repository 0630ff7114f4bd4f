using Microsoft.AspNetCore.Http.Features;

namespace Stockwright.Web.Shell;

/// <summary>
/// Answers HEAD wherever GET is answered, with the same headers and no body (RFC 9110, section 9.3.2). It stands before routing, because
/// neither pages nor most endpoints name HEAD among their methods.
/// </summary>
internal sealed class HeadAsGet : IStartupFilter
{
    public Action<IApplicationBuilder> Configure(Action<IApplicationBuilder> next) => app =>
    {
        app.Use(AnswerAsync);
        next(app);
    };

    /// <summary>True when the answer goes out without its body.</summary>
    public static bool Holds(HttpContext context) => context.Features.Get<Asked>() is not null;

    private static async Task AnswerAsync(HttpContext context, RequestDelegate next)
    {
        if (!HttpMethods.IsHead(context.Request.Method))
        {
            await next(context);
            return;
        }

        IHttpResponseBodyFeature sent = context.Features.GetRequiredFeature<IHttpResponseBodyFeature>();
        await using CountingStream counted = new();
        StreamResponseBodyFeature unsent = new(counted, sent);
        context.Features.Set<IHttpResponseBodyFeature>(unsent);
        context.Features.Set(new Asked());
        context.Request.Method = HttpMethods.Get;

        // Ranges are defined for GET alone (section 14.2).
        context.Request.Headers.Range = default;
        try
        {
            await next(context);
            await unsent.CompleteAsync();
        }
        finally
        {
            context.Request.Method = HttpMethods.Head;
            context.Features.Set(sent);
        }

        if (!context.Response.HasStarted && counted.Length > 0)
        {
            context.Response.ContentLength ??= counted.Length;
        }
    }

    private sealed record Asked;

    /// <summary>Takes everything, keeps its length alone.</summary>
    private sealed class CountingStream : Stream
    {
        private long length;

        public override bool CanRead => false;

        public override bool CanSeek => false;

        public override bool CanWrite => true;

        public override long Length => length;

        public override long Position
        {
            get => length;
            set => throw new NotSupportedException();
        }

        public override void Flush()
        {
        }

        public override int Read(byte[] buffer, int offset, int count) => throw new NotSupportedException();

        public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

        public override void SetLength(long value) => throw new NotSupportedException();

        public override void Write(byte[] buffer, int offset, int count) => length += count;

        public override Task WriteAsync(byte[] buffer, int offset, int count, CancellationToken cancellationToken)
        {
            length += count;
            return Task.CompletedTask;
        }

        public override ValueTask WriteAsync(ReadOnlyMemory<byte> buffer, CancellationToken cancellationToken = default)
        {
            length += buffer.Length;
            return ValueTask.CompletedTask;
        }
    }
}
