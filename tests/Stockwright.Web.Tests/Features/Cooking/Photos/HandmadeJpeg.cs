namespace Stockwright.Web.Tests.Features.Cooking.Photos;

/// <summary>
/// Plain JPEGs of any size and any number of scans, written byte by byte (ITU-T T.81, annexes B, F and G): every code is a single zero bit, so a picture of many
/// millions of pixels is a small file.
/// </summary>
internal static class HandmadeJpeg
{
    private const byte Colours = 3;
    private const byte EndOfBlock = 0x00;
    private const byte EndOfManyBlocks = 0xe0;

    /// <summary>As cameras write them: one scan.</summary>
    public static byte[] Baseline(int width, int height) => [.. Head(0xc0, width, height, EndOfBlock), .. Scan(Colours, 0, 63, 2L * Colours * Blocks(width, height)), 0xff, 0xd9];

    /// <summary>A first scan of all three colours and any number of passes over one of them.</summary>
    public static byte[] Progressive(int width, int height, int scans)
    {
        // One code of a bit and fourteen bits of zero tells of 16,384 blocks in which nothing changes (G.1.2.2).
        long bits = 15L * ((Blocks(width, height) + 16_383) / 16_384);
        byte[] pass = Scan(1, 1, 63, bits);
        return [.. Head(0xc2, width, height, EndOfManyBlocks), .. Scan(Colours, 0, 0, (long)Colours * Blocks(width, height)), .. Enumerable.Repeat(pass, scans - 1).SelectMany(bytes => bytes), 0xff, 0xd9];
    }

    private static long Blocks(int width, int height) => (long)((width + 7) / 8) * ((height + 7) / 8);

    private static byte[] Head(byte frame, int width, int height, byte code) =>
    [
        0xff, 0xd8,
        .. Segment(0xdb, [0, .. Enumerable.Repeat((byte)1, 64)]),
        .. Segment(frame, [8, (byte)(height >> 8), (byte)height, (byte)(width >> 8), (byte)width, Colours, 1, 0x11, 0, 2, 0x11, 0, 3, 0x11, 0]),
        .. Segment(0xc4, [0x00, 1, .. new byte[15], 0]),
        .. Segment(0xc4, [0x10, 1, .. new byte[15], code]),
    ];

    private static byte[] Scan(int colours, byte from, byte to, long bits) =>
    [
        .. Segment(0xda, [(byte)colours, .. Enumerable.Range(1, colours).SelectMany(colour => (byte[])[(byte)colour, 0x00]), from, to, 0]),
        .. new byte[(bits + 7) / 8],
    ];

    private static byte[] Segment(byte marker, byte[] content) => [0xff, marker, (byte)((content.Length + 2) >> 8), (byte)(content.Length + 2), .. content];
}
