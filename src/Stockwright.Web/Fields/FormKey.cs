using System.Security.Cryptography;
using System.Text;

namespace Stockwright.Web.Fields;

/// <summary>
/// Tells a form that adds something from every other, so that a second tap, a reload or a repeat after a lost answer adds nothing
/// more. A hidden key is drawn when the form is shown; what was typed counts too, for who goes back and types another name means
/// another thing.
/// </summary>
internal static class FormKey
{
    /// <summary>Name of the hidden field.</summary>
    public const string Name = "form-key";

    /// <summary>The key to show again with a form that came back, or a fresh one.</summary>
    public static string Shown(TypedForm form) => Guid.TryParse(form[Name], out Guid key) ? key.ToString() : Guid.NewGuid().ToString();

    /// <summary>Key of a form that was sent; null when it brought none.</summary>
    /// <param name="request">The request, its form read already.</param>
    public static string? Of(HttpRequest request)
    {
        if (!request.HasFormContentType || !Guid.TryParse(request.Form[Name], out _))
        {
            return null;
        }

        StringBuilder text = new(request.Path);
        foreach ((string field, Microsoft.Extensions.Primitives.StringValues values) in request.Form
            .Where(pair => !string.Equals(pair.Key, "__RequestVerificationToken", StringComparison.Ordinal)).OrderBy(pair => pair.Key, StringComparer.Ordinal))
        {
            // Lengths keep two fields from reading as one.
            text.Append('\n').Append(field.Length).Append(field).Append(values.ToString().Length).Append(values.ToString());
        }

        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text.ToString())));
    }
}
