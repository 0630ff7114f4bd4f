using Stockwright.Cooking;
using Stockwright.Logbook;
using Stockwright.Web.Fields;

namespace Stockwright.Web.Features.Cooking.Log;

/// <summary>Reads an entry off a form, whoever sent it: a browser, its outbox, or a program.</summary>
internal sealed class EntryReader(TypedForm form, UnitSystem units, Batch batch, DateTimeOffset now)
{
    private readonly FieldReader reader = new(form, units);

    public FieldReader Fields => reader;

    public Batch Batch => batch;

    public DateTimeOffset Now => now;

    /// <summary>When it happened, as far as that could be read.</summary>
    public DateTimeOffset HappenedAt { get; private set; }

    /// <summary>True while nothing has to be put right.</summary>
    public bool IsGood => reader.Problems.Count == 0;

    /// <summary>The entry; null when something in it has to be put right, which then stands among the problems.</summary>
    public NewEntry? Read()
    {
        Guid id = Key(EntryFields.Entry, required: true) ?? Guid.Empty;
        Guid? corrects = Key(EntryFields.Corrects, required: false);
        string who = reader.Text(EntryFields.Who, CookName.Longest);
        DeviceClock device = DeviceClock.Read(form, now);
        DateTimeOffset made = device.Made ?? now;
        bool yesterday = form.Has(EntryFields.AtDay) && reader.Word(EntryFields.AtDay, "The day", MomentReader.Days) is TypedDay.Yesterday;
        HappenedAt = reader.Moment(EntryFields.At, batch.Zone, made, yesterday) ?? made;
        LogFact? fact = Fact();
        return !IsGood || fact is null
            ? null
            : new NewEntry
            {
                Id = id,
                BatchId = batch.Id,
                HappenedAt = HappenedAt.ToUniversalTime(),
                Who = who,
                DeviceOffset = device.Offset,
                DeviceZone = device.Zone,
                Fact = fact,
                Corrects = corrects,
            };
    }

    private Guid? Key(string field, bool required)
    {
        string text = form[field].Trim();
        if (text.Length == 0 && !required)
        {
            return null;
        }

        if (Guid.TryParse(text, out Guid id) && id != Guid.Empty)
        {
            return id;
        }

        reader.Report(field, required ? "The entry carries no key of its own (a GUID)." : $"{KitchenNumber.Quote(text)} is not the key of an entry.");
        return null;
    }

    private LogFact? Fact()
    {
        string word = form[EntryFields.Kind].Trim();
        if (EntryKinds.Find(word) is { } kind)
        {
            return kind.Read(this);
        }

        reader.Report(EntryFields.Kind, word.Length == 0 ? "Say what happened." : $"{KitchenNumber.Quote(word)} is not a kind of entry this version knows.");
        return null;
    }
}
