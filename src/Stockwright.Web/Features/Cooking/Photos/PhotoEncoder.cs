using System.Globalization;
using SkiaSharp;

namespace Stockwright.Web.Features.Cooking.Photos;

/// <summary>Unpacks a picture, turns it the right way up, makes it smaller, and writes it as a plain JPEG: pixels and nothing else.</summary>
internal static class PhotoEncoder
{
    /// <summary>
    /// Most pixels, checked on the stated size before any are unpacked: of a JPEG of one scan, as cameras write them, which unpacks straight to a smaller size;
    /// and of everything else, which is in memory at its full size once.
    /// </summary>
    public const long MostPixels = 50_000_000;
    public const long MostPixelsWhole = 20_000_000;

    /// <summary>Most scans of a JPEG: programs write about ten.</summary>
    public const int MostScans = 32;

    private const int LongestSide = 1600;
    private const int SmallestSide = 400;
    private const int LargestFile = 600_000;

    private static readonly int[] Qualities = [80, 70, 60, 50];

    /// <summary>The picture as it is stored, or why it cannot be.</summary>
    /// <param name="file">JPEG, PNG or WebP.</param>
    /// <param name="cancellationToken">Ends it between two passes over the picture.</param>
    public static (StoredPhoto? Photo, string Problem) Make(byte[] file, CancellationToken cancellationToken)
    {
        int scans = PhotoSignature.Of(file) == PhotoKind.Jpeg ? JpegScans.Count(file) : 0;
        if (scans > MostScans)
        {
            return (null, $"This picture is put together from {scans} layers; up to {MostScans} are taken. Open it on your device and save it anew as a plain JPEG.");
        }

        using SKData data = SKData.CreateCopy(file);
        using SKCodec? codec = SKCodec.Create(data);
        if (codec is null || codec.Info.Width <= 0 || codec.Info.Height <= 0)
        {
            return (null, "This picture is damaged: it cannot be opened.");
        }

        long pixels = (long)codec.Info.Width * codec.Info.Height;
        long most = scans == 1 ? MostPixels : MostPixelsWhole;
        if (pixels > most)
        {
            string kind = scans == 1 ? "" : " of this kind";
            return (null, string.Create(CultureInfo.InvariantCulture, $"This picture has {Math.Ceiling(pixels / 1e6):0} million pixels; up to {most / 1e6:0} million{kind} are taken. Take it at a smaller size."));
        }

        cancellationToken.ThrowIfCancellationRequested();

        using SKBitmap? unpacked = Unpack(codec);
        if (unpacked is null)
        {
            return (null, "This picture is damaged or was cut short on its way. Send it again.");
        }

        // Shared with the image drawn from, not copied.
        unpacked.SetImmutable();
        StoredPhoto? photo = Pack(unpacked, codec.EncodedOrigin, cancellationToken);
        return photo is null ? (null, "This picture could not be made small enough to keep. Take it again.") : (photo, "");
    }

    private static SKBitmap? Unpack(SKCodec codec)
    {
        // JPEG and WebP can unpack straight to a smaller size; PNG gives its own size back.
        float wanted = Math.Min(1f, (float)LongestSide / Math.Max(codec.Info.Width, codec.Info.Height));
        SKSizeI size = codec.GetScaledDimensions(wanted);
        while (wanted < 1 && Math.Max(size.Width, size.Height) < LongestSide && size != codec.Info.Size)
        {
            wanted = Math.Min(1, wanted + 0.125f);
            size = codec.GetScaledDimensions(wanted);
        }

        // Colours of wide-gamut cameras are brought into sRGB, for the profile does not go along.
        using SKColorSpace colours = SKColorSpace.CreateSrgb();
        SKBitmap bitmap = new();
        if (bitmap.TryAllocPixels(new SKImageInfo(size.Width, size.Height, SKColorType.Rgba8888, SKAlphaType.Premul, colours))
            && codec.GetPixels(bitmap.Info, bitmap.GetPixels()) == SKCodecResult.Success)
        {
            return bitmap;
        }

        bitmap.Dispose();
        return null;
    }

    private static StoredPhoto? Pack(SKBitmap unpacked, SKEncodedOrigin origin, CancellationToken cancellationToken)
    {
        int longest = Math.Min(LongestSide, Math.Max(unpacked.Width, unpacked.Height));
        for (; longest >= Math.Min(SmallestSide, Math.Max(unpacked.Width, unpacked.Height)); longest = longest * 4 / 5)
        {
            cancellationToken.ThrowIfCancellationRequested();
            using SKBitmap upright = Upright(unpacked, origin, longest);
            foreach (int quality in Qualities)
            {
                using SKPixmap pixels = upright.PeekPixels();
                using SKData? jpeg = pixels.Encode(new SKJpegEncoderOptions(quality));
                if (jpeg is { Size: > 0 and <= LargestFile })
                {
                    return new StoredPhoto(jpeg.ToArray(), upright.Width, upright.Height);
                }
            }
        }

        return null;
    }

    /// <summary>Draws it at a size, turned and mirrored as the camera said it was held (Exif 2.32, tag Orientation), on white.</summary>
    private static SKBitmap Upright(SKBitmap unpacked, SKEncodedOrigin origin, int longest)
    {
        double scale = (double)longest / Math.Max(unpacked.Width, unpacked.Height);
        float width = Math.Max(1, (int)Math.Round(unpacked.Width * scale));
        float height = Math.Max(1, (int)Math.Round(unpacked.Height * scale));

        // Rows of x' = a x + b y + c and y' = d x + e y + f, before turning to after.
        SKMatrix turn = origin switch
        {
            SKEncodedOrigin.TopRight => new SKMatrix(-1, 0, width, 0, 1, 0, 0, 0, 1),
            SKEncodedOrigin.BottomRight => new SKMatrix(-1, 0, width, 0, -1, height, 0, 0, 1),
            SKEncodedOrigin.BottomLeft => new SKMatrix(1, 0, 0, 0, -1, height, 0, 0, 1),
            SKEncodedOrigin.LeftTop => new SKMatrix(0, 1, 0, 1, 0, 0, 0, 0, 1),
            SKEncodedOrigin.RightTop => new SKMatrix(0, -1, height, 1, 0, 0, 0, 0, 1),
            SKEncodedOrigin.RightBottom => new SKMatrix(0, -1, height, -1, 0, width, 0, 0, 1),
            SKEncodedOrigin.LeftBottom => new SKMatrix(0, 1, 0, -1, 0, width, 0, 0, 1),
            _ => SKMatrix.Identity,
        };
        bool onItsSide = origin is SKEncodedOrigin.LeftTop or SKEncodedOrigin.RightTop or SKEncodedOrigin.RightBottom or SKEncodedOrigin.LeftBottom;
        SKBitmap upright = new(new SKImageInfo((int)(onItsSide ? height : width), (int)(onItsSide ? width : height), SKColorType.Rgba8888, SKAlphaType.Opaque));
        using SKCanvas canvas = new(upright);
        using SKImage image = SKImage.FromBitmap(unpacked);
        canvas.Clear(SKColors.White);
        canvas.SetMatrix(turn);
        canvas.DrawImage(image, new SKRect(0, 0, width, height), new SKSamplingOptions(SKFilterMode.Linear, SKMipmapMode.Linear));
        return upright;
    }
}
