namespace Stockwright.Web.Batches;

/// <summary>Reads a form that may carry a picture, and says what is wrong with one that cannot be read.</summary>
internal static class SentForm
{
    /// <summary>COR_E_IO: the framework's own complaint of a body that ends too soon. The disk's come with the system's number.</summary>
    private const int CutShort = unchecked((int)0x80131620);

    public static async Task<(IFormCollection? Form, IResult? Refused)> ReadAsync(HttpContext context)
    {
        try
        {
            return (await context.Request.ReadFormAsync(context.RequestAborted), null);
        }
        catch (BadHttpRequestException trouble)
        {
            return (null, trouble.StatusCode == StatusCodes.Status413PayloadTooLarge
                ? Results.Problem("This is too large. A picture may have up to 15 MB: take it at a smaller size.", statusCode: trouble.StatusCode)
                : Results.Problem("The form was cut short on its way. Send it again.", statusCode: trouble.StatusCode));
        }
        catch (IOException trouble) when (trouble.HResult == CutShort)
        {
            return (null, Results.Problem("The form was cut short on its way. Send it again.", statusCode: StatusCodes.Status400BadRequest));
        }
        catch (InvalidDataException)
        {
            return (null, Results.Problem("The form cannot be read: it is damaged or has far too many fields.", statusCode: StatusCodes.Status400BadRequest));
        }
        catch (IOException) when (!context.RequestAborted.IsCancellationRequested)
        {
            // A large form waits in a temporary file.
            return (null, Results.Problem("The picture could not be received: the disk for temporary files is full or read-only.", statusCode: StatusCodes.Status503ServiceUnavailable, title: "Not stored."));
        }
    }
}
