using System.Globalization;
using Microsoft.AspNetCore.Http.Features;
using Microsoft.Extensions.Options;

namespace Stockwright.Web.Fields;

/// <summary>Why a form cannot be read.</summary>
/// <param name="Status">Status of the answer.</param>
/// <param name="Message">What to say.</param>
internal sealed record FormTrouble(int Status, string Message)
{
    /// <summary>As an answer to a script.</summary>
    public IResult Result() => Results.Problem(Message, statusCode: Status, title: Status == StatusCodes.Status503ServiceUnavailable ? "Not stored." : null);
}

/// <summary>Reads a form that may carry a picture, and says what is wrong with one that cannot be read.</summary>
internal static class SentForm
{
    /// <summary>COR_E_IO: the framework's own complaint of a body that ends too soon. The disk's come with the system's number.</summary>
    private const int CutShort = unchecked((int)0x80131620);

    public static async Task<(IFormCollection? Form, FormTrouble? Trouble)> ReadAsync(HttpContext context)
    {
        try
        {
            return (await context.Request.ReadFormAsync(context.RequestAborted), null);
        }
        catch (BadHttpRequestException trouble)
        {
            return (null, new FormTrouble(trouble.StatusCode, trouble.StatusCode == StatusCodes.Status413PayloadTooLarge ? TooLarge(context) : "The form was cut short on its way. Send it again."));
        }
        catch (IOException trouble) when (trouble.HResult == CutShort)
        {
            return (null, new FormTrouble(StatusCodes.Status400BadRequest, "The form was cut short on its way. Send it again."));
        }
        catch (InvalidDataException)
        {
            FormOptions limits = context.RequestServices.GetRequiredService<IOptions<FormOptions>>().Value;
            return (null, new FormTrouble(
                StatusCodes.Status400BadRequest,
                $"The form cannot be read: it is damaged, or has more than {limits.ValueCountLimit.ToString("N0", CultureInfo.InvariantCulture)} fields, or more than {Megabytes(limits.ValueLengthLimit)} in one of them."));
        }
        catch (IOException) when (!context.RequestAborted.IsCancellationRequested)
        {
            // A large form waits in a temporary file.
            return (null, new FormTrouble(StatusCodes.Status503ServiceUnavailable, "The picture could not be received: the disk for temporary files is full or read-only."));
        }
    }

    private static string TooLarge(HttpContext context)
    {
        long? most = context.Features.Get<IHttpMaxRequestBodySizeFeature>()?.MaxRequestBodySize;
        string whole = most is { } bytes ? $"This is too large: a form may have up to {Megabytes(bytes)} in all. " : "This is too large. ";
        return $"{whole}A picture may have up to 15 MB: take it at a smaller size.";
    }

    private static string Megabytes(long bytes) => $"{(bytes / 1e6).ToString("0.#", CultureInfo.InvariantCulture)} MB";
}
