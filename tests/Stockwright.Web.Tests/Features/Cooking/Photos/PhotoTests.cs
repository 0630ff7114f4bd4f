using System.Text;
using CsCheck;
using Microsoft.AspNetCore.Http;
using SkiaSharp;
using Stockwright.Web.Fields;
using Stockwright.Web.Features.Cooking.Photos;
using Xunit;

namespace Stockwright.Web.Tests.Features.Cooking.Photos;

/// <summary>Pictures taken in: small, upright, and silent about place, device and time.</summary>
public sealed class PhotoTests
{
    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    /// <summary>
    /// Where the stored top left and top right corners are seen, by the tag Orientation (CIPA DC-008, Exif 2.32, tag 0x0112: which
    /// side row 0 and column 0 are on).
    /// </summary>
    [Theory]
    [InlineData(1, "top left", "top right")]
    [InlineData(2, "top right", "top left")]
    [InlineData(3, "bottom right", "bottom left")]
    [InlineData(4, "bottom left", "bottom right")]
    [InlineData(5, "top left", "bottom left")]
    [InlineData(6, "top right", "bottom right")]
    [InlineData(7, "bottom right", "top right")]
    [InlineData(8, "bottom left", "top left")]
    public async Task A_picture_held_any_way_is_stored_upright_and_says_nothing_of_where_and_when(int orientation, string red, string green)
    {
        byte[] file = CameraFiles.WithExif(CameraFiles.Quarters(800, 400), (ushort)orientation);
        using (SKCodec codec = SKCodec.Create(new MemoryStream(file)))
        {
            Assert.Equal(orientation, (int)codec.EncodedOrigin);
        }

        StoredPhoto photo = await TakenAsync(file);
        Assert.Equal(orientation >= 5 ? (400, 800) : (800, 400), (photo.Width, photo.Height));
        using SKBitmap seen = SKBitmap.Decode(photo.Jpeg);
        Assert.Equal((photo.Width, photo.Height), (seen.Width, seen.Height));
        AssertNear(SKColors.Red, At(seen, red));
        AssertNear(SKColors.Lime, At(seen, green));
        AssertSilent(photo.Jpeg);
    }

    [Theory]
    [InlineData(4000, 3000, 1600, 1200)]
    [InlineData(3000, 4000, 1200, 1600)]
    [InlineData(1601, 100, 1600, 100)]
    [InlineData(640, 480, 640, 480)]
    [InlineData(1, 1, 1, 1)]
    [InlineData(6000, 2, 1600, 1)]
    public async Task A_picture_is_made_smaller_and_never_larger(int width, int height, int storedWidth, int storedHeight)
    {
        StoredPhoto photo = await TakenAsync(CameraFiles.Quarters(width, height));
        Assert.Equal((storedWidth, storedHeight), (photo.Width, photo.Height));
    }

    [Fact]
    public async Task However_busy_the_picture_it_is_at_most_600_kilobytes()
    {
        byte[] noise = CameraFiles.Noise(2400, 1800);
        Assert.InRange(noise.Length, 3_000_000, PhotoService.MostBytes);
        StoredPhoto photo = await TakenAsync(noise);
        Assert.InRange(photo.Jpeg.Length, 100_000, 600_000);
        Assert.True(Math.Max(photo.Width, photo.Height) >= 400);
    }

    [Theory]
    [InlineData(SKEncodedImageFormat.Png)]
    [InlineData(SKEncodedImageFormat.Webp)]
    public async Task Png_and_webp_are_taken_too(SKEncodedImageFormat format)
    {
        StoredPhoto photo = await TakenAsync(CameraFiles.Quarters(2000, 1000, format));
        Assert.Equal((1600, 800), (photo.Width, photo.Height));
        using SKBitmap seen = SKBitmap.Decode(photo.Jpeg);
        AssertNear(SKColors.Blue, At(seen, "bottom left"));
        AssertSilent(photo.Jpeg);
    }

    [Fact]
    public async Task What_shows_through_is_white()
    {
        using SKBitmap clear = new(100, 100, SKColorType.Rgba8888, SKAlphaType.Premul);
        clear.Erase(SKColors.Transparent);
        using SKData png = clear.Encode(SKEncodedImageFormat.Png, 100);
        using SKBitmap seen = SKBitmap.Decode((await TakenAsync(png.ToArray())).Jpeg);
        AssertNear(SKColors.White, seen.GetPixel(50, 50));
    }

    [Theory]
    [InlineData("heic")]
    [InlineData("mif1")]
    [InlineData("avif")]
    public async Task Formats_of_some_phones_are_refused_with_what_to_do(string brand) =>
        Assert.Contains("Set the camera to JPEG", await RefusedAsync(CameraFiles.Heic(brand)), StringComparison.Ordinal);

    /// <summary>Fifty thousand by fifty thousand pixels would take 10 GB unpacked; the file has 69 bytes.</summary>
    [Fact]
    public async Task A_bomb_is_refused_by_its_stated_size_before_it_is_unpacked()
    {
        Assert.Contains("2500 million pixels", await RefusedAsync(CameraFiles.PngBomb(50_000, 50_000)), StringComparison.Ordinal);
        Assert.Contains("damaged", await RefusedAsync(CameraFiles.PngBomb(4400, 4500)), StringComparison.Ordinal);
        Assert.Contains("21 million pixels", await RefusedAsync(CameraFiles.PngBomb(4500, 4500)), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_file_too_large_is_refused_unread()
    {
        using ThrowingStream stream = new();
        (StoredPhoto? photo, IReadOnlyList<InputProblem> problems) = await Desk().ReadAsync(new FormFile(stream, 0, PhotoService.MostBytes + 1, "photo", "a.jpg"), Stop);
        Assert.Null(photo);
        Assert.Contains("up to 15 MB", Assert.Single(problems).Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Nothing_and_nonsense_are_refused()
    {
        Assert.Equal("Choose a picture.", Assert.Single((await Desk().ReadAsync(null, Stop)).Problems).Message);
        Assert.Equal("Choose a picture.", await RefusedAsync([]));
        Assert.Contains("not a picture", await RefusedAsync("<svg xmlns='http://www.w3.org/2000/svg' onload='alert(1)'/>"u8.ToArray()), StringComparison.Ordinal);
        Assert.Contains("not a picture", await RefusedAsync("GIF89a"u8.ToArray()), StringComparison.Ordinal);
        Assert.Contains("damaged", await RefusedAsync([0xff, 0xd8, 0xff, 0xe0]), StringComparison.Ordinal);
        byte[] whole = CameraFiles.Quarters(800, 600);
        Assert.Contains("cut short", await RefusedAsync(whole[..(whole.Length / 2)]), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_damaged_picture_is_taken_or_refused_and_nothing_else_happens()
    {
        byte[][] files = [CameraFiles.WithExif(CameraFiles.Quarters(64, 48), 6), CameraFiles.Quarters(64, 48, SKEncodedImageFormat.Png), CameraFiles.Quarters(64, 48, SKEncodedImageFormat.Webp)];
        await Gen.Select(Gen.OneOfConst(files), Gen.Select(Gen.Int[0, 100_000], Gen.Byte).Array[1, 8], Gen.Int[0, 3]).SampleAsync(
            async (file, damage, cut) =>
            {
                byte[] broken = [.. file];
                foreach ((int at, byte value) in damage)
                {
                    broken[at % broken.Length] = value;
                }

                (StoredPhoto? photo, IReadOnlyList<InputProblem> problems) = await ReadAsync(cut == 0 ? broken[..(damage[0].Item1 % broken.Length)] : broken);
                Assert.True(photo is null == (problems.Count > 0));
                if (photo is not null)
                {
                    AssertSilent(photo.Jpeg);
                }
            },
            iter: 400,
            threads: 1);
    }

    [Fact]
    public async Task A_picture_of_very_many_scans_is_refused_before_it_is_unpacked()
    {
        byte[] file = HandmadeJpeg.Progressive(4000, 3000, 5000);
        Assert.InRange(file.Length, 100_000, 400_000);
        Assert.Equal(5000, JpegScans.Count(file));

        Assert.Contains("5000 layers", await RefusedAsync(file), StringComparison.Ordinal);
        Assert.Contains("33 layers", await RefusedAsync(HandmadeJpeg.Progressive(4000, 3000, PhotoEncoder.MostScans + 1)), StringComparison.Ordinal);
    }

    [Fact]
    public async Task As_many_scans_as_programs_write_are_taken()
    {
        StoredPhoto photo = await TakenAsync(HandmadeJpeg.Progressive(4000, 3000, 12));

        Assert.Equal((1600, 1200), (photo.Width, photo.Height));
    }

    [Theory]
    [InlineData(8000, 6200, 1, true)]
    [InlineData(8000, 6300, 1, false)]
    [InlineData(5400, 3700, 10, true)]
    [InlineData(5400, 3710, 10, false)]
    public async Task A_picture_that_is_in_memory_whole_may_have_fewer_pixels(int width, int height, int scans, bool isTaken)
    {
        byte[] file = scans == 1 ? HandmadeJpeg.Baseline(width, height) : HandmadeJpeg.Progressive(width, height, scans);
        using PhotoService desk = Desk();
        PhotoAnswer answer = await desk.ReadAsync(File(file), Stop);

        Assert.Equal(isTaken, answer.Picture is not null);
        Assert.Equal(isTaken ? 0 : 1, answer.Problems.Count);
        Assert.Equal(!isTaken, answer.Problems.Any(problem => problem.Message.Contains("million pixels", StringComparison.Ordinal)));
    }

    /// <summary>Scans by the markers alone: one, several, markers inside segments and behind the end, and files cut short.</summary>
    [Fact]
    public void Scans_are_counted_by_their_markers()
    {
        byte[] two = HandmadeJpeg.Progressive(16, 16, 2);
        byte[] comment = [0xff, 0xd8, 0xff, 0xfe, 0, 6, 0xff, 0xda, 0xff, 0xda, .. two[2..]];

        Assert.Equal(1, JpegScans.Count(HandmadeJpeg.Baseline(16, 16)));
        Assert.Equal(2, JpegScans.Count(two));
        Assert.Equal(2, JpegScans.Count(comment));
        Assert.Equal(2, JpegScans.Count([.. two, .. two]));
        Assert.Equal(1, JpegScans.Count(CameraFiles.Quarters(300, 200)));
        Assert.Equal(1, JpegScans.Count([0xff, 0xd8, 0xff, 0xda]));
        Gen.Byte.Array[0, 200].Sample(bytes => JpegScans.Count(bytes) <= bytes.Length / 2, iter: 2000, seed: "0000000000001");
    }

    [Fact]
    public async Task Who_waits_too_long_is_asked_to_send_again_and_who_hangs_up_gives_the_turn_back()
    {
        using PhotoService desk = new(TimeSpan.FromMilliseconds(50));
        TaskCompletionSource slow = new(TaskCreationOptions.RunContinuationsAsynchronously);
        using CancellationTokenSource hungUp = new();
        byte[] file = CameraFiles.Quarters(40, 30);
        Task<PhotoAnswer> first = desk.ReadAsync(new SlowFile(file, slow.Task), hungUp.Token);
        PhotoAnswer second = await desk.ReadAsync(File(file), Stop);
        using CancellationTokenSource gone = new();
        await gone.CancelAsync();

        Assert.True(second.IsBusy);
        Assert.Contains("Send it again", Assert.Single(second.Problems).Message, StringComparison.Ordinal);
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => desk.ReadAsync(File(file), gone.Token));
        await hungUp.CancelAsync();
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => first);
        Assert.NotNull((await desk.ReadAsync(File(file), Stop)).Picture);
    }

    private static FormFile File(byte[] file) => new(new MemoryStream(file), 0, file.Length, "photo", "a.jpg");

    /// <summary>A file whose reading takes until it is told to go on, or the sender hangs up.</summary>
    private sealed class SlowFile(byte[] file, Task ready) : IFormFile
    {
        public string ContentType => "image/jpeg";

        public string ContentDisposition => "";

        public IHeaderDictionary Headers { get; } = new HeaderDictionary();

        public long Length => file.Length;

        public string Name => "photo";

        public string FileName => "a.jpg";

        public void CopyTo(Stream target) => target.Write(file);

        public Task CopyToAsync(Stream target, CancellationToken cancellationToken = default) => target.WriteAsync(file, cancellationToken).AsTask();

        public Stream OpenReadStream() => new SlowStream(file, ready);
    }

    private sealed class SlowStream(byte[] file, Task ready) : MemoryStream(file)
    {
        public override async ValueTask<int> ReadAsync(Memory<byte> buffer, CancellationToken cancellationToken = default)
        {
            await ready.WaitAsync(cancellationToken);
            return await base.ReadAsync(buffer, cancellationToken);
        }
    }

    private static PhotoService Desk() => new();

    private static async Task<PhotoAnswer> ReadAsync(byte[] file)
    {
        using MemoryStream stream = new(file);
        using PhotoService desk = Desk();
        return await desk.ReadAsync(new FormFile(stream, 0, file.Length, "photo", "IMG_0001.jpg"), Stop);
    }

    private static async Task<StoredPhoto> TakenAsync(byte[] file)
    {
        (StoredPhoto? photo, IReadOnlyList<InputProblem> problems) = await ReadAsync(file);
        Assert.Empty(problems);
        return photo!;
    }

    private static async Task<string> RefusedAsync(byte[] file)
    {
        (StoredPhoto? photo, IReadOnlyList<InputProblem> problems) = await ReadAsync(file);
        Assert.Null(photo);
        InputProblem problem = Assert.Single(problems);
        Assert.Equal("photo", problem.Field);
        return problem.Message;
    }

    private static SKColor At(SKBitmap picture, string corner) => picture.GetPixel(
        corner.EndsWith("left", StringComparison.Ordinal) ? picture.Width / 4 : picture.Width * 3 / 4,
        corner.StartsWith("top", StringComparison.Ordinal) ? picture.Height / 4 : picture.Height * 3 / 4);

    /// <summary>JPEG at quality 80 keeps a plain colour within a few steps of 255.</summary>
    private static void AssertNear(SKColor expected, SKColor actual)
    {
        Assert.InRange(actual.Red - expected.Red, -12, 12);
        Assert.InRange(actual.Green - expected.Green, -12, 12);
        Assert.InRange(actual.Blue - expected.Blue, -12, 12);
    }

    /// <summary>Only what is needed to show the pixels: no application data but JFIF's (APP0), no comment (ITU-T T.81, table B.1).</summary>
    private static void AssertSilent(byte[] jpeg)
    {
        string text = Encoding.Latin1.GetString(jpeg);
        Assert.DoesNotContain("Exif", text, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("http:", text, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("GPS", text, StringComparison.Ordinal);
        Assert.DoesNotContain("ICC_PROFILE", text, StringComparison.Ordinal);
        Assert.DoesNotContain(CameraFiles.Maker, text, StringComparison.Ordinal);
        Assert.DoesNotContain(CameraFiles.Taken, text, StringComparison.Ordinal);
        Assert.Equal([0xff, 0xd8], jpeg[..2]);
        for (int at = 2; jpeg[at + 1] != 0xda; at += 2 + (jpeg[at + 2] << 8) + jpeg[at + 3])
        {
            Assert.Equal(0xff, jpeg[at]);
            Assert.False(jpeg[at + 1] is > 0xe0 and <= 0xef or 0xfe, $"A segment {jpeg[at + 1]:x2} is left.");
        }
    }

    private sealed class ThrowingStream : MemoryStream
    {
        public override int Read(Span<byte> buffer) => throw new InvalidOperationException("It was read.");

        public override ValueTask<int> ReadAsync(Memory<byte> buffer, CancellationToken cancellationToken = default) => throw new InvalidOperationException("It was read.");
    }
}
