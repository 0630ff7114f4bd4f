namespace Stockwright.Web.Fields;

/// <summary>One entry of a list to choose from.</summary>
/// <param name="Value">As sent.</param>
/// <param name="Text">As read.</param>
public sealed record ChoiceOption(string Value, string Text);
