namespace Stockwright.Web.Fields;

/// <summary>What a page was sent, or is shown again because it could not be taken.</summary>
internal static class PostedForm
{
    /// <summary>Everything typed; null when the page is only opened.</summary>
    public static TypedForm? Of(HttpContext context) =>
        FormShownAgain.In(context) is { } again ? again.HasTyped ? again.Typed : null
        : HttpMethods.IsPost(context.Request.Method) && context.Request.HasFormContentType ? TypedForm.From(context.Request.Form)
        : null;
}
