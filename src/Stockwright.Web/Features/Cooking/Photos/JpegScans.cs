using System.Buffers.Binary;

namespace Stockwright.Web.Features.Cooking.Photos;

/// <summary>
/// Counts the scans of a JPEG (ITU-T T.81, annex B) without unpacking any: a picture of several needs all of its coefficients in memory, and each scan is
/// another pass over them, so a small file may ask for any amount of work.
/// </summary>
internal static class JpegScans
{
    private const byte StartOfImage = 0xd8;
    private const byte EndOfImage = 0xd9;
    private const byte StartOfScan = 0xda;
    private const byte FirstRestart = 0xd0;
    private const byte LastRestart = 0xd7;
    private const byte Temporary = 0x01;

    /// <summary>Scans of the first picture in a file, as far as the file can be followed; what comes behind its end (a preview, a map of brightness) is not looked at.</summary>
    /// <param name="file">The whole file.</param>
    public static int Count(ReadOnlySpan<byte> file)
    {
        int scans = 0;
        while (true)
        {
            int at = file.IndexOf((byte)0xff);
            if (at < 0 || at + 1 >= file.Length)
            {
                return scans;
            }

            byte marker = file[at + 1];
            switch (marker)
            {
                case 0xff:
                    // Fill bytes stand before a marker.
                    file = file[(at + 1)..];
                    continue;
                case EndOfImage:
                    return scans;
                case 0 or StartOfImage or Temporary or (>= FirstRestart and <= LastRestart):
                    file = file[(at + 2)..];
                    continue;
                case StartOfScan:
                    scans++;
                    break;
            }

            // A segment: its length, without the marker, stands first.
            ReadOnlySpan<byte> segment = file[(at + 2)..];
            if (segment.Length < 2 || BinaryPrimitives.ReadUInt16BigEndian(segment) is var length && (length < 2 || length > segment.Length))
            {
                return scans;
            }

            file = segment[length..];
        }
    }
}
