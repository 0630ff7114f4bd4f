namespace Stockwright.Web.Shell;

/// <summary>A form that could not even be read; <c>/refused</c> says so.</summary>
/// <param name="Message">What is wrong with it, and the limit.</param>
/// <param name="Back">Address of its page.</param>
internal sealed record UnreadableForm(string Message, string Back);
