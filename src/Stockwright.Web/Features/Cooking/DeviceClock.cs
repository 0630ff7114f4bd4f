using System.Globalization;
using Stockwright.Web.Features.Cooking.Log;
using Stockwright.Web.Fields;

namespace Stockwright.Web.Features.Cooking;

/// <summary>
/// What a device said of its own clock. A phone minutes off still gets the moment right: both its times are wrong by the
/// same, so what it was ahead when it sent is taken off what it noted when the entry was made.
/// </summary>
/// <param name="Offset">How far ahead of the server's clock; null when it did not say.</param>
/// <param name="Made">When the entry was made, by the server's clock; null when it did not say.</param>
/// <param name="Zone">Its IANA zone; empty when it did not say.</param>
internal sealed record DeviceClock(TimeSpan? Offset, DateTimeOffset? Made, string Zone)
{
    private const int LongestZone = 64;

    /// <summary>Sending takes time; a difference this small is that, not the clock.</summary>
    private static readonly TimeSpan Transit = TimeSpan.FromSeconds(3);

    // Exact forms only: a lenient reader would take a bare time for one of today, by this machine's clock and zone.
    private static readonly string[] Forms = ["yyyy-MM-dd'T'HH:mm:ss.FFFFFFFK", "yyyy-MM-dd'T'HH:mm:ssK", "yyyy-MM-dd'T'HH:mmK"];

    public static DeviceClock Read(TypedForm form, DateTimeOffset now)
    {
        string zone = form[EntryFields.DeviceZone].Trim();
        zone = zone.Length <= LongestZone && zone.All(letter => char.IsAsciiLetterOrDigit(letter) || letter is '/' or '_' or '-' or '+') ? zone : "";
        DateTimeOffset? made = Moment(form[EntryFields.DeviceTime]);
        DateTimeOffset? sent = Moment(form[EntryFields.Sent]) ?? made;
        if (made is not { } then || sent is not { } at)
        {
            return new DeviceClock(null, null, zone);
        }

        TimeSpan ahead = TimeSpan.FromSeconds(Math.Round((at - now).TotalSeconds));
        TimeSpan offset = ahead.Duration() <= Transit ? TimeSpan.Zero : ahead;

        // A device whose clock was changed between making and sending cannot be helped, but nothing happens after it is told.
        DateTimeOffset happened = then - offset;
        return new DeviceClock(offset, happened > now ? now : happened, zone);
    }

    private static DateTimeOffset? Moment(string text) =>
        DateTimeOffset.TryParseExact(text.Trim(), Forms, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out DateTimeOffset moment) && moment.Year is >= 2000 and <= 2200
            ? moment
            : null;
}
