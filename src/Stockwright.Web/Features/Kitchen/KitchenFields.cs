using Stockwright.Storage;
using Stockwright.Web.Fields;

namespace Stockwright.Web.Features.Kitchen;

/// <summary>Fields of a form under one heading.</summary>
/// <typeparam name="TView">What the page knows.</typeparam>
/// <param name="Title">The heading; null for none.</param>
/// <param name="Class">Class of the element round them.</param>
/// <param name="Fields">The fields.</param>
public sealed record FieldGroup<TView>(string? Title, string Class, IReadOnlyList<ShownField<TView>> Fields)
    where TView : IFieldView;

/// <summary>What a form for a part of the kitchen knows.</summary>
/// <param name="Stored">The part as stored; null for a new one.</param>
/// <param name="UsualPart">What its blanks count for; null when nothing does.</param>
/// <param name="Units">The reader's measures.</param>
public sealed record KitchenView<T>(T? Stored, T? UsualPart, UnitSystem Units) : IFieldView
    where T : class
{
    public string? Usual(FieldBinding field) => UsualPart is not null && field is FieldBinding<T> bound ? bound.Text(UsualPart, Units, NumberRow.Short) : null;
}

/// <summary>A part of the kitchen as a form: its fields, its words, and how it is kept.</summary>
/// <typeparam name="T">A pot, a hob, an oven, a tray, or the details of the kitchen.</typeparam>
/// <param name="word">What messages call it.</param>
/// <param name="after">Where its page leads when it is saved.</param>
/// <param name="adding">Title of the page that adds one; null where there is only one, which stays.</param>
public abstract class KitchenFields<T>(string word, string after, string? adding = null)
    where T : class
{
    public string Word => word;

    public string After => after;

    public string? Adding => adding;

    public abstract IReadOnlyList<FieldGroup<KitchenView<T>>> Groups { get; }

    /// <summary>What blanks count for; null when nothing does.</summary>
    public virtual T? Usual => null;

    /// <summary>Stable name, and what the cook calls it.</summary>
    public virtual (string Id, string Name) Named(T part) => ("", "");

    /// <summary>What is stored, in a few words.</summary>
    public abstract string Text(T part, UnitSystem units);

    internal abstract IReadOnlyList<Kept<T>> In(KeptKitchen kitchen);

    internal virtual TypedForm Write(T? stored, UnitSystem units) => stored is null ? TypedForm.Empty : new FormWriter(units).Put(Bindings(), stored).Form;

    /// <summary>Reads it; null when something has to be put right.</summary>
    internal virtual T? Read(FieldReader reader, string id, T? stored) => Read(reader, Bindings(), Blank(id), stored);

    internal abstract Task<SaveOutcome> SaveAsync(KitchenStore store, T part, int version, CancellationToken cancellationToken);

    internal virtual Task AddAsync(KitchenStore store, T part, string? formKey, CancellationToken cancellationToken) => throw new NotSupportedException();

    internal virtual Task<SaveOutcome> DeleteAsync(KitchenStore store, string id, int version, CancellationToken cancellationToken) => throw new NotSupportedException();

    /// <summary>One with nothing filled in.</summary>
    protected virtual T Blank(string id) => throw new NotSupportedException();

    protected static FieldGroup<KitchenView<T>> Group(string? title, params IEnumerable<FieldBinding<T>> fields) =>
        new(title, "fields", [.. fields.Select(field => new ShownField<KitchenView<T>>(field.Row, field))]);

    protected static FieldGroup<KitchenView<T>> Group(string? title, string css, params IEnumerable<FieldRow> rows) =>
        new(title, css, [.. rows.Select(row => new ShownField<KitchenView<T>>(row))]);

    private protected T? Read(FieldReader reader, IEnumerable<FieldBinding<T>> fields, T blank, T? stored)
    {
        Func<T, T> typed = stored is null ? fields.Read(reader) : fields.ReadKept(reader, stored, Write(stored, reader.Units));
        return reader.Problems.Count > 0 ? null : typed(blank);
    }

    private IEnumerable<FieldBinding<T>> Bindings() => Groups.SelectMany(group => group.Fields).Select(field => field.Binding).OfType<FieldBinding<T>>();
}
