using System.Globalization;
using Stockwright.Web.Features.Cooking.Log;
using Stockwright.Web.Fields;

namespace Stockwright.Web.Features.Cooking.Photos;

/// <summary>What became of a picture that was sent.</summary>
/// <param name="Picture">As it is stored; null when it was not taken.</param>
/// <param name="Problems">Why it was not taken; empty otherwise.</param>
/// <param name="IsBusy">True when nothing is wrong with it: others were still being worked on.</param>
internal sealed record PhotoAnswer(StoredPhoto? Picture, IReadOnlyList<InputProblem> Problems, bool IsBusy = false)
{
    public void Deconstruct(out StoredPhoto? picture, out IReadOnlyList<InputProblem> problems) => (picture, problems) = (Picture, Problems);
}

/// <summary>Takes a picture in: checks it, makes it smaller, and writes it anew without anything it said about place, device or time.</summary>
/// <param name="patience">How long one waits for those before it; null for the usual time.</param>
internal sealed class PhotoService(TimeSpan? patience = null) : IDisposable
{
    private static readonly TimeSpan UsualPatience = TimeSpan.FromSeconds(5);

    /// <summary>Largest file taken: what a phone's best setting makes, with room.</summary>
    public const int MostBytes = 15 * 1024 * 1024;

    /// <summary>One at a time: a picture unpacked takes far more memory than as a file.</summary>
    private readonly SemaphoreSlim turn = new(1);

    /// <summary>Reads a picture that was sent.</summary>
    /// <param name="photo">The file, or null.</param>
    /// <param name="cancellationToken">The sender is gone.</param>
    /// <exception cref="OperationCanceledException">The sender is gone.</exception>
    public async Task<PhotoAnswer> ReadAsync(IFormFile? photo, CancellationToken cancellationToken)
    {
        if (photo is null || photo.Length == 0)
        {
            return Refused("Choose a picture.");
        }

        if (photo.Length > MostBytes)
        {
            return Refused(string.Create(CultureInfo.InvariantCulture, $"This picture has {photo.Length / 1048576.0:0.0} MB; up to {MostBytes / 1048576} MB are taken. Take it at a smaller size."));
        }

        if (!await turn.WaitAsync(patience ?? UsualPatience, cancellationToken))
        {
            return new PhotoAnswer(null, [new InputProblem("", "Other pictures are being made smaller just now, so this one was not stored. Send it again in a moment.")], IsBusy: true);
        }

        try
        {
            // Read in its turn as well: those that wait are in files.
            byte[] file = new byte[photo.Length];
            await using (Stream stream = photo.OpenReadStream())
            {
                await stream.ReadExactlyAsync(file, cancellationToken);
            }

            switch (PhotoSignature.Of(file))
            {
                case PhotoKind.Heic:
                    return Refused("This picture is in a format (HEIC) that not every browser shows. Set the camera to JPEG (\"most compatible\") and take it again.");
                case PhotoKind.Unknown:
                    return Refused("This is not a picture we can read. Send a JPEG, PNG or WebP file.");
            }

            // The imaging library is loaded with this call, and not before the first picture.
            (StoredPhoto? picture, string problem) = PhotoEncoder.Make(file, cancellationToken);
            return picture is null ? Refused(problem) : new PhotoAnswer(picture, []);
        }
        finally
        {
            turn.Release();
        }
    }

    public void Dispose() => turn.Dispose();

    private static PhotoAnswer Refused(string message) => new(null, [new InputProblem(EntryFields.Photo, message)]);
}
