namespace Stockwright.Web.Fields;

/// <summary>Post, redirect, get.</summary>
internal static class SeeOther
{
    /// <summary>Answers with 303: the browser fetches the address, and going back or reloading posts nothing twice.</summary>
    public static void Go(this HttpContext context, string address)
    {
        context.Response.StatusCode = StatusCodes.Status303SeeOther;
        context.Response.Headers.Location = address;
    }

    /// <summary>Answers with 404; the page shows why.</summary>
    public static void Miss(this HttpContext context) => context.Response.StatusCode = StatusCodes.Status404NotFound;
}
