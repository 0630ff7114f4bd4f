namespace Stockwright.Web.Features.Cooking.Photos;

/// <summary>What a file is by its first bytes, whatever its name says.</summary>
internal enum PhotoKind
{
    Unknown,
    Jpeg,
    Png,
    WebP,

    /// <summary>HEIC and its like: what some phones write unless they are told not to.</summary>
    Heic,
}

/// <summary>Tells pictures apart (signatures: ITU-T T.81, W3C PNG, RFC 9649 for WebP, ISO/IEC 14496-12 for the family of HEIC).</summary>
internal static class PhotoSignature
{
    /// <summary>Bytes needed to tell.</summary>
    public const int Length = 12;

    private static readonly string[] HeicBrands = ["heic", "heix", "heim", "heis", "hevc", "hevx", "mif1", "msf1", "avif", "avis"];

    public static PhotoKind Of(ReadOnlySpan<byte> head)
    {
        if (head.StartsWith((ReadOnlySpan<byte>)[0xff, 0xd8, 0xff]))
        {
            return PhotoKind.Jpeg;
        }

        if (head.StartsWith((ReadOnlySpan<byte>)[0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]))
        {
            return PhotoKind.Png;
        }

        if (head.Length < Length)
        {
            return PhotoKind.Unknown;
        }

        if (head.StartsWith("RIFF"u8) && head[8..].StartsWith("WEBP"u8))
        {
            return PhotoKind.WebP;
        }

        return head[4..].StartsWith("ftyp"u8) && HeicBrands.Contains(System.Text.Encoding.ASCII.GetString(head[8..12]), StringComparer.Ordinal)
            ? PhotoKind.Heic
            : PhotoKind.Unknown;
    }
}
