using System.Net;
using System.Net.Sockets;
using System.Threading.RateLimiting;
using Microsoft.AspNetCore.Http.Timeouts;
using Microsoft.AspNetCore.Server.Kestrel.Core;

namespace Stockwright.Web.Shell;

/// <summary>
/// Bounds on what anybody may ask of the machine, so that an entry made at the stove never waits for it: plans and cooling cases few at a time and ten
/// seconds at most, and from one address no more writes than a busy kitchen makes. Pages of batches, entries and events stand outside the first.
/// </summary>
internal static class WorkLimits
{
    /// <summary>Policy of pages and interfaces that work out plans and cooling cases, for the limiter and for the time.</summary>
    public const string Dear = "dear";

    /// <summary>As many wait for their turn; at some 50 ms a plan that is under a second.</summary>
    public const int Waiting = 16;

    /// <summary>Writes one address may make at once: the outboxes of several phones after an evening without a network, and the kitchen's own besides.</summary>
    public const int WritesAtOnce = 400;

    /// <summary>Writes one address may make a minute from then on.</summary>
    public const int WritesPerMinute = 300;

    public static readonly TimeSpan Longest = TimeSpan.FromSeconds(10);

    /// <summary>Asked to come back when too many wait.</summary>
    private static readonly TimeSpan Again = TimeSpan.FromSeconds(2);

    private static readonly TimeSpan Refill = TimeSpan.FromSeconds(1);

    /// <summary>One core is left for entries and pages of batches where there is more than one.</summary>
    public static int AtOnce => Math.Max(1, Environment.ProcessorCount - 1);

    public static void AddWorkLimits(this IServiceCollection services)
    {
        services.AddRateLimiter(limiter =>
        {
            limiter.AddPolicy(Dear, _ => RateLimitPartition.GetConcurrencyLimiter(Dear, _ => new ConcurrencyLimiterOptions
            {
                PermitLimit = AtOnce,
                QueueLimit = Waiting,
                QueueProcessingOrder = QueueProcessingOrder.OldestFirst,
            }));
            limiter.GlobalLimiter = PartitionedRateLimiter.Create<HttpContext, string>(WritesOf);
            limiter.OnRejected = (rejected, cancellationToken) =>
            {
                bool writes = IsWrite(rejected.HttpContext.Request) && rejected.Lease.TryGetMetadata(MetadataName.RetryAfter, out _);
                TimeSpan after = rejected.Lease.TryGetMetadata(MetadataName.RetryAfter, out TimeSpan known) ? known : Again;
                return new ValueTask(writes
                    ? BusyAnswer.WriteAsync(rejected.HttpContext, StatusCodes.Status429TooManyRequests, after, "Too much at once", "More was sent from this address in a minute than a kitchen writes down. Nothing of this one was taken; what you typed is still in the form: go back and send it once more.", cancellationToken)
                    : BusyAnswer.WriteAsync(rejected.HttpContext, StatusCodes.Status503ServiceUnavailable, after, "Busy just now", "Too many plans are being worked out at the same time. Entries at the stove go on.", cancellationToken));
            };
        });
        services.AddRequestTimeouts(timeouts => timeouts.AddPolicy(Dear, new RequestTimeoutPolicy
        {
            Timeout = Longest,
            TimeoutStatusCode = StatusCodes.Status503ServiceUnavailable,
            WriteTimeoutResponse = context => BusyAnswer.WriteAsync(
                context, StatusCodes.Status503ServiceUnavailable, Again, "That took too long", "It was not worked out within ten seconds, so it was stopped. Try again, or ask for less at once.", CancellationToken.None),
        }));

        // A whole page fits, so that a slow reader does not keep the next plan waiting.
        services.Configure<KestrelServerOptions>(server => server.Limits.MaxResponseBufferSize = 1024 * 1024);
    }

    public static void UseWorkLimits(this WebApplication app)
    {
        app.UseRequestTimeouts();
        app.Use(async (context, next) =>
        {
            try
            {
                await next(context);
            }
            catch (WorkStoppedException stopped) when (context.RequestAborted.IsCancellationRequested)
            {
                // Known to those who answer for it.
                throw new OperationCanceledException(stopped.Message, stopped, context.RequestAborted);
            }

            if (!context.RequestAborted.IsCancellationRequested)
            {
                return;
            }

            // The limiter ends without an answer when the time is up while a request waits for its turn; half a page is no answer either.
            if (context.Response.HasStarted)
            {
                // Whoever hung up is gone already.
                if (context.Features.Get<IHttpRequestTimeoutFeature>()?.RequestTimeoutToken.IsCancellationRequested == true)
                {
                    context.Abort();
                }

                return;
            }

            context.RequestAborted.ThrowIfCancellationRequested();
        });
        app.UseRateLimiter();
    }

    /// <summary>Puts an interface that works out plans or cooling cases under the limits.</summary>
    public static TBuilder WithWorkLimits<TBuilder>(this TBuilder endpoint)
        where TBuilder : IEndpointConventionBuilder
    {
        endpoint.WithRequestTimeout(Dear);
        endpoint.ProducesProblem(StatusCodes.Status429TooManyRequests);
        endpoint.ProducesProblem(StatusCodes.Status503ServiceUnavailable);
        return endpoint.RequireRateLimiting(Dear);
    }

    private static RateLimitPartition<string> WritesOf(HttpContext context) => IsWrite(context.Request) && Sender(context.Connection.RemoteIpAddress) is { } sender
        ? RateLimitPartition.GetTokenBucketLimiter(sender, _ => new TokenBucketRateLimiterOptions
        {
            TokenLimit = WritesAtOnce,
            TokensPerPeriod = WritesPerMinute / 60,
            ReplenishmentPeriod = Refill,
            QueueLimit = 0,
        })
        : RateLimitPartition.GetNoLimiter("");

    private static bool IsWrite(HttpRequest request) =>
        !HttpMethods.IsGet(request.Method) && !HttpMethods.IsHead(request.Method) && !HttpMethods.IsOptions(request.Method);

    /// <summary>Who sent it: the address, of IPv6 the network of 64 bits, for one device has as many addresses in it as it likes. Null when it is not known.</summary>
    internal static string? Sender(IPAddress? address)
    {
        if (address is null)
        {
            return null;
        }

        if (address.IsIPv4MappedToIPv6)
        {
            return address.MapToIPv4().ToString();
        }

        return address.AddressFamily == AddressFamily.InterNetworkV6 && !IPAddress.IsLoopback(address)
            ? Convert.ToHexString(address.GetAddressBytes().AsSpan(0, 8))
            : address.ToString();
    }
}
