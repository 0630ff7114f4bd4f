using Stockwright.Planning;
using Stockwright.Storage;

namespace Stockwright.Web.Batches;

/// <summary>Takes a picture in: checks it, makes it smaller, and writes it anew without anything it said about place, device or time.</summary>
internal sealed class PhotoDesk
{
    private readonly InputProblem notYet = new(EntryFields.Photo, "Photos are not taken yet.");

    /// <summary>Reads a picture that was sent.</summary>
    public Task<(StoredPhoto? Picture, IReadOnlyList<InputProblem> Problems)> ReadAsync(IFormFile? photo, CancellationToken cancellationToken)
    {
        _ = photo;
        _ = cancellationToken;
        return Task.FromResult<(StoredPhoto?, IReadOnlyList<InputProblem>)>((null, [notYet]));
    }
}
