using Stockwright.Storage;

namespace Stockwright.Web.Fields;

/// <summary>
/// One form being edited: what is typed, what is wrong, and the version it was opened at. Cascades to the fields through
/// <see cref="State"/>. Nothing typed is dropped, whatever becomes of the save.
/// </summary>
public sealed class Edit : IFieldView
{
    public const string VersionField = "version";
    public const string New = "new";
    public const string Save = "save";

    private Edit(TypedForm typed, UnitSystem units, int version, string handler)
    {
        Handler = handler;
        Typed = typed;
        Units = units;
        Version = version;
    }

    /// <summary>Name of the form on its page, by which what is sent finds it.</summary>
    public string Handler { get; }

    public TypedForm Typed { get; set; }

    /// <summary>Measures the numbers are typed in: those the form was shown in, even if the reader switched meanwhile.</summary>
    public UnitSystem Units { get; }

    /// <summary>Version handed back; zero for something not stored.</summary>
    public int Version { get; private set; }

    public List<InputProblem> Problems { get; } = [];

    /// <summary>Set when somebody else's change stands in the way.</summary>
    public bool IsConflict { get; private set; }

    public FormState State => Handler is Save ? new(Typed, Problems) : new(Typed, Problems) { IdPrefix = Handler + "-" };

    /// <summary>The form as posted, or as stored when the page is only opened.</summary>
    /// <param name="context">The request.</param>
    /// <param name="units">The reader's measures.</param>
    /// <param name="version">Version stored.</param>
    /// <param name="stored">The form as stored, in some measures.</param>
    /// <param name="handler">Name of the form where its page has several: one sent to another of them is not this one's.</param>
    public static Edit Open(HttpContext context, UnitSystem units, int version, Func<UnitSystem, TypedForm> stored, string? handler = null)
    {
        string name = handler ?? Save;
        if (PostedForm.Of(context) is not { } posted || (handler is not null && !IsFor(posted, handler)))
        {
            return new Edit(stored(units), units, version, name);
        }

        UnitSystem shown = ReaderUnits.Read(posted[ReaderUnits.QueryKey]) ?? units;
        return new Edit(posted, shown, int.TryParse(posted[VersionField], System.Globalization.NumberStyles.None, System.Globalization.CultureInfo.InvariantCulture, out int opened) ? opened : 0, name);
    }

    /// <summary>A form that lost the name of its handler counts as the page's first.</summary>
    private static bool IsFor(TypedForm posted, string handler) =>
        string.Equals(posted["_handler"].Length > 0 ? posted["_handler"] : Save, handler, StringComparison.Ordinal);

    /// <summary>Nothing counts for a blank but what its row says.</summary>
    public string? Usual(FieldBinding field) => null;

    internal FieldReader Reader() => new(Typed, Units);

    /// <summary>Reads and saves; true when it was written.</summary>
    /// <param name="what">What is edited, for instance <c>pot</c>.</param>
    /// <param name="read">Reads it; null when something is wrong.</param>
    /// <param name="save">Writes it with the version given.</param>
    /// <param name="versionNow">As for saving what was read.</param>
    internal async Task<bool> SaveAsync<T>(string what, Func<FieldReader, T?> read, Func<T, int, Task<SaveOutcome>> save, Func<Task<int>> versionNow)
        where T : class
    {
        FieldReader reader = Reader();
        T? value = read(reader);
        Problems.AddRange(reader.Problems);
        return value is not null && await SaveAsync(what, version => save(value, version), versionNow);
    }

    /// <summary>Saves; true when it was written. Otherwise the reason stands among the problems and all is kept as typed.</summary>
    /// <param name="what">What is edited, for instance <c>pot</c>.</param>
    /// <param name="save">Writes with the version given.</param>
    /// <param name="versionNow">Version stored by now, to be handed back by a save the cook insists on; zero when deleted.</param>
    public async Task<bool> SaveAsync(string what, Func<int, Task<SaveOutcome>> save, Func<Task<int>> versionNow)
    {
        try
        {
            SaveOutcome outcome = await save(Version);
            if (outcome == SaveOutcome.Saved)
            {
                return true;
            }

            IsConflict = true;
            Version = outcome == SaveOutcome.Gone ? 0 : await versionNow();
            Problems.Add(new InputProblem("", outcome == SaveOutcome.Gone
                ? $"This {what} was deleted, in another window or by somebody else, after you opened it. What you typed is still here: save once more to add it anew, or leave it."
                : $"This {what} was changed, in another window or by somebody else, after you opened it. What you typed is still here: save once more to put it in place of the other change, or leave it as it is now."));
        }
        catch (StorageTroubleException trouble)
        {
            Problems.Add(new InputProblem("", trouble.Message));
        }

        return false;
    }

    /// <summary>Deletes; true when it is gone, whoever deleted it.</summary>
    public async Task<bool> DeleteAsync(string what, Func<int, Task<SaveOutcome>> delete, Func<Task<int>> versionNow)
    {
        try
        {
            SaveOutcome outcome = await delete(Version);
            if (outcome != SaveOutcome.ChangedMeanwhile)
            {
                return true;
            }

            IsConflict = true;
            Version = await versionNow();
            Problems.Add(new InputProblem("", $"This {what} was changed, in another window or by somebody else, after you opened it, so it was not deleted. Look at it once more; delete it again if you still want to."));
        }
        catch (StorageTroubleException trouble)
        {
            Problems.Add(new InputProblem("", trouble.Message));
        }

        return false;
    }
}
