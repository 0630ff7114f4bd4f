using System.Globalization;
using Stockwright.Planning;
using Stockwright.Storage;

namespace Stockwright.Web.Batches;

/// <summary>Takes a picture in: checks it, makes it smaller, and writes it anew without anything it said about place, device or time.</summary>
internal sealed class PhotoDesk : IDisposable
{
    /// <summary>Largest file taken: what a phone's best setting makes, with room.</summary>
    public const int MostBytes = 15 * 1024 * 1024;

    /// <summary>One at a time: a picture unpacked takes far more memory than as a file.</summary>
    private readonly SemaphoreSlim turn = new(1);

    /// <summary>Reads a picture that was sent.</summary>
    public async Task<(StoredPhoto? Picture, IReadOnlyList<InputProblem> Problems)> ReadAsync(IFormFile? photo, CancellationToken cancellationToken)
    {
        if (photo is null || photo.Length == 0)
        {
            return Refused("Choose a picture.");
        }

        if (photo.Length > MostBytes)
        {
            return Refused(string.Create(CultureInfo.InvariantCulture, $"This picture has {photo.Length / 1048576.0:0.0} MB; up to {MostBytes / 1048576} MB are taken. Take it at a smaller size."));
        }

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

        await turn.WaitAsync(cancellationToken);
        try
        {
            // The imaging library is loaded with this call, and not before the first picture.
            (StoredPhoto? picture, string problem) = PhotoMaker.Make(file);
            return picture is null ? Refused(problem) : (picture, []);
        }
        finally
        {
            turn.Release();
        }
    }

    public void Dispose() => turn.Dispose();

    private static (StoredPhoto? Picture, IReadOnlyList<InputProblem> Problems) Refused(string message) => (null, [new InputProblem(EntryFields.Photo, message)]);
}
