namespace Stockwright.Web.Features.Strength;

/// <summary>One line under the answer.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Value">How much.</param>
/// <param name="Note">A word more, or the empty string.</param>
internal sealed record ReplyRow(string Name, string Value, string Note = "");

/// <summary>The answer to one sum.</summary>
/// <param name="Head">What to do, in a few words, read at arm's length.</param>
/// <param name="Rows">What comes of it.</param>
/// <param name="Note">How far to trust it.</param>
internal sealed record StrengthReply(string Head, IReadOnlyList<ReplyRow> Rows, string Note);
