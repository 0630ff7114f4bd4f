namespace Stockwright.Web.Fields;

/// <summary>What a page of fields knows.</summary>
public interface IFieldView
{
    /// <summary>The reader's measures.</summary>
    UnitSystem Units { get; }

    /// <summary>What counts when a field is left blank, as it would be typed; null when nothing does or it is not known yet.</summary>
    /// <param name="field">A field with its place in a record.</param>
    string? Usual(FieldBinding field);
}

/// <summary>A field on a page: the row, where its value is kept, and what only the page can say of it.</summary>
/// <typeparam name="TView">What the page knows.</typeparam>
/// <param name="Row">The field.</param>
/// <param name="Binding">Where its value is kept; null for a field that is read by hand.</param>
public sealed record ShownField<TView>(FieldRow Row, FieldBinding? Binding = null)
    where TView : IFieldView
{
    /// <summary>When it is asked; null for always.</summary>
    public Func<TView, bool>? Asked { get; init; }

    public Func<TView, string>? Label { get; init; }

    public Func<TView, string?>? Hint { get; init; }

    public Func<TView, string?>? Placeholder { get; init; }

    /// <summary>What is shown though nothing was typed; for days and times.</summary>
    public Func<TView, string?>? Standing { get; init; }

    /// <summary>The options with what the page knows of them.</summary>
    public Func<TView, IReadOnlyList<ChoiceOption>, IReadOnlyList<ChoiceOption>>? Options { get; init; }

    /// <summary>What counts for a blank where neither record nor row says so.</summary>
    public Func<TView, string?>? Usual { get; init; }

    internal string? BlankFor(TView view) => Usual?.Invoke(view) ?? (Binding is null ? null : view.Usual(Binding)) ?? Row.BlankIn(view.Units);
}
