namespace Stockwright.Web.Fields;

/// <summary>Why a form was not taken though its page is there.</summary>
internal enum FormRefusal
{
    /// <summary>Its token is missing, too old, or of another data folder.</summary>
    Token,

    /// <summary>It does not say which form of the page it is.</summary>
    Handler,
}

/// <summary>
/// A form that was sent and not taken. Its page is rendered once more, as if it were only opened, so that no handler can run; this
/// feature of the request hands the page what was typed.
/// </summary>
internal sealed record FormShownAgain(FormRefusal Why, IFormCollection Sent)
{
    /// <summary>Everything that was sent.</summary>
    public TypedForm Typed { get; } = TypedForm.From(Sent);

    /// <summary>False for a form that is a button alone.</summary>
    public bool HasTyped => Typed.Entries.Any(entry => !entry.Key.StartsWith('_') && entry.Key is not (Edit.VersionField or FormKey.Name or ReaderUnits.QueryKey));

    /// <summary>True when a file came with it: browsers do not let a page choose it again.</summary>
    public bool HasFile => Sent.Files.Count > 0;

    /// <summary>The form this request shows again; null when there is none.</summary>
    public static FormShownAgain? In(HttpContext? context) => context?.Features.Get<FormShownAgain>();
}
