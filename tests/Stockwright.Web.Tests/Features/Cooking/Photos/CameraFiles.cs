using System.Buffers.Binary;
using System.Text;
using SkiaSharp;

namespace Stockwright.Web.Tests.Features.Cooking.Photos;

/// <summary>Pictures as a phone's camera would send them, made here.</summary>
internal static class CameraFiles
{
    public const string Maker = "PhoneMaker Deluxe 9";
    public const string Taken = "2026:06:01 14:20:33";

    /// <summary>Quarters of red, green, blue and yellow: top left, top right, bottom left, bottom right.</summary>
    public static byte[] Quarters(int width, int height, SKEncodedImageFormat format = SKEncodedImageFormat.Jpeg)
    {
        using SKBitmap bitmap = new(width, height);
        using (SKCanvas canvas = new(bitmap))
        {
            Fill(canvas, 0, 0, width / 2f, height / 2f, SKColors.Red);
            Fill(canvas, width / 2f, 0, width, height / 2f, SKColors.Lime);
            Fill(canvas, 0, height / 2f, width / 2f, height, SKColors.Blue);
            Fill(canvas, width / 2f, height / 2f, width, height, SKColors.Yellow);
        }

        using SKData data = bitmap.Encode(format, 95);
        return data.ToArray();
    }

    /// <summary>Noise, which no encoder makes small.</summary>
    public static byte[] Noise(int width, int height)
    {
        using SKBitmap bitmap = new(width, height);
        Span<byte> pixels = bitmap.GetPixelSpan();
        new Random(1).NextBytes(pixels);
        using SKData data = bitmap.Encode(SKEncodedImageFormat.Jpeg, 100);
        return data.ToArray();
    }

    /// <summary>The same JPEG with what cameras add: Exif with orientation, maker, time and place (CIPA DC-008), and an XMP packet.</summary>
    public static byte[] WithExif(byte[] jpeg, ushort orientation)
    {
        byte[] exif = Segment(0xe1, [.. "Exif\0\0"u8, .. Tiff(orientation)]);
        byte[] xmp = Segment(0xe1, Encoding.ASCII.GetBytes(
            "http://ns.adobe.com/xap/1.0/\0<x:xmpmeta xmlns:x=\"adobe:ns:meta/\"><exif:GPSLatitude>52,31.2N</exif:GPSLatitude><xmp:CreatorTool>" + Maker + "</xmp:CreatorTool></x:xmpmeta>"));
        byte[] comment = Segment(0xfe, Encoding.ASCII.GetBytes("shot at home by " + Maker));
        return [.. jpeg[..2], .. exif, .. xmp, .. comment, .. jpeg[2..]];
    }

    /// <summary>A PNG that states a size, and holds next to nothing.</summary>
    public static byte[] PngBomb(int width, int height)
    {
        byte[] header = new byte[17];
        "IHDR"u8.CopyTo(header);
        BinaryPrimitives.WriteInt32BigEndian(header.AsSpan(4), width);
        BinaryPrimitives.WriteInt32BigEndian(header.AsSpan(8), height);
        header[12] = 8;
        header[13] = 2;
        return [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, .. Chunk(header), .. Chunk("IDAT"u8.ToArray().Concat(new byte[] { 0x78, 0x9c, 3, 0, 0, 0, 0, 1 }).ToArray()), .. Chunk("IEND"u8.ToArray())];
    }

    /// <summary>First bytes of a file of the family of HEIC (ISO/IEC 14496-12, file type box).</summary>
    public static byte[] Heic(string brand) => [0, 0, 0, 24, .. "ftyp"u8, .. Encoding.ASCII.GetBytes(brand), 0, 0, 0, 0, .. "mif1"u8, .. new byte[200]];

    private static byte[] Chunk(byte[] typed)
    {
        byte[] chunk = new byte[typed.Length + 8];
        BinaryPrimitives.WriteInt32BigEndian(chunk, typed.Length - 4);
        typed.CopyTo(chunk, 4);
        BinaryPrimitives.WriteUInt32BigEndian(chunk.AsSpan(typed.Length + 4), Crc(typed));
        return chunk;
    }

    /// <summary>CRC-32 as in ISO 3309, which PNG closes its chunks with.</summary>
    private static uint Crc(ReadOnlySpan<byte> bytes)
    {
        uint crc = 0xffffffff;
        foreach (byte value in bytes)
        {
            crc ^= value;
            for (int bit = 0; bit < 8; bit++)
            {
                crc = (crc & 1) == 1 ? (crc >> 1) ^ 0xedb88320 : crc >> 1;
            }
        }

        return ~crc;
    }

    private static byte[] Tiff(ushort orientation)
    {
        // Little-endian TIFF: header, IFD0 with five tags, their texts, and the IFD of the place with two.
        byte[] maker = Encoding.ASCII.GetBytes(Maker + "\0");
        byte[] taken = Encoding.ASCII.GetBytes(Taken + "\0");
        const int Directory = 8;
        const int Tags = 5;
        int texts = Directory + 2 + (Tags * 12) + 4;
        int place = texts + maker.Length + taken.Length;
        int degrees = place + 2 + (2 * 12) + 4;
        byte[] tiff = new byte[degrees + 24];
        "II*\0"u8.CopyTo(tiff);
        Write32(tiff, 4, Directory);
        Write16(tiff, Directory, Tags);
        Tag(tiff, Directory + 2, 0x010f, 2, maker.Length, texts);
        Tag(tiff, Directory + 14, 0x0110, 2, maker.Length, texts);
        Tag(tiff, Directory + 26, 0x0112, 3, 1, orientation);
        Tag(tiff, Directory + 38, 0x0132, 2, taken.Length, texts + maker.Length);
        Tag(tiff, Directory + 50, 0x8825, 4, 1, place);
        maker.CopyTo(tiff, texts);
        taken.CopyTo(tiff, texts + maker.Length);
        Write16(tiff, place, 2);
        Tag(tiff, place + 2, 1, 2, 2, 'N');
        Tag(tiff, place + 14, 2, 5, 3, degrees);
        foreach ((int index, int value) in new[] { 52, 1, 31, 1, 12, 1 }.Index())
        {
            Write32(tiff, degrees + (4 * index), value);
        }

        return tiff;
    }

    private static void Tag(byte[] tiff, int at, int tag, int type, int count, int value)
    {
        Write16(tiff, at, tag);
        Write16(tiff, at + 2, type);
        Write32(tiff, at + 4, count);
        Write32(tiff, at + 8, value);
    }

    private static void Write16(byte[] bytes, int at, int value) => BinaryPrimitives.WriteUInt16LittleEndian(bytes.AsSpan(at), (ushort)value);

    private static void Write32(byte[] bytes, int at, int value) => BinaryPrimitives.WriteInt32LittleEndian(bytes.AsSpan(at), value);

    private static byte[] Segment(byte marker, byte[] content) => [0xff, marker, (byte)((content.Length + 2) >> 8), (byte)(content.Length + 2), .. content];

    private static void Fill(SKCanvas canvas, float left, float top, float right, float bottom, SKColor colour)
    {
        using SKPaint paint = new() { Color = colour };
        canvas.DrawRect(new SKRect(left, top, right, bottom), paint);
    }
}
