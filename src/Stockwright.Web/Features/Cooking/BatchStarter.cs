using System.Globalization;
using System.Text.Json;
using Microsoft.AspNetCore.Http.Json;
using Microsoft.AspNetCore.WebUtilities;
using Microsoft.Extensions.Options;
using Stockwright.Cooling.Limits;
using Stockwright.Storage;
using Stockwright.Web.Features.Cooking.Log;
using Stockwright.Web.Features.Kitchen;
using Stockwright.Web.Features.Planning;
using Stockwright.Web.Fields;

namespace Stockwright.Web.Features.Cooking;

/// <summary>The plan a batch is started from.</summary>
/// <param name="Book">What it is worked out from: a saved plan's own kitchen, or the kitchen as it is now.</param>
/// <param name="Parsed">What the codec made of it.</param>
/// <param name="Name">Name proposed for the batch.</param>
/// <param name="Back">Where it came from.</param>
public sealed record StartFrom(PlanningInputs Book, PlanQueryResult Parsed, string Name, string Back);

/// <summary>Starts batches.</summary>
internal sealed class BatchStarter(
    IKitchenSource kitchens, PlanStore saved, PlanService plans, BatchStore batches, BatchChanges news, IOptions<JsonOptions> json, TimeProvider clock)
{
    public const string Plan = "plan";
    public const string Key = "batch";
    public const string Name = "name";
    public const string When = "when";
    public const string Date = "date";
    public const string Time = "time";
    public const string Limit = "limit";
    public const string NowWord = "now";
    public const string LaterWord = "at";

    /// <summary>The plan a link names: a saved one, or the planner's fields. Null when there is no such saved plan.</summary>
    public async Task<StartFrom?> FromAsync(IQueryCollection query, UnitSystem units, CancellationToken cancellationToken)
    {
        PlanningInputs book = await kitchens.LoadAsync(cancellationToken);
        if (!query.TryGetValue(Plan, out Microsoft.Extensions.Primitives.StringValues named))
        {
            TypedForm typed = TypedForm.From(query);
            return From(PlanQuery.Parse(typed, book, units, clock.GetUtcNow()), book, null, $"{PlanLinks.Page}?{typed.ToQuery()}");
        }

        if (!Guid.TryParse(named.ToString(), out Guid id) || await saved.FindAsync(id, cancellationToken) is not { } plan)
        {
            return null;
        }

        if (plan.Document is not { } kept)
        {
            TypedForm old = PlanQuery.InUnits(TypedForm.From(QueryHelpers.ParseQuery(plan.OldQuery ?? "")), units, units);
            return From(PlanQuery.Parse(old, book, units, clock.GetUtcNow()), book, plan.Summary.Name, $"/plans/{id}");
        }

        return From(PlanService.Read(kept, units), PlanService.InputsOf(kept), plan.Summary.Name, $"/plans/{id}");

        StartFrom From(PlanQueryResult parsed, PlanningInputs from, string? name, string back)
        {
            string day = TimeZoneInfo.ConvertTime(clock.GetUtcNow(), from.Zone).ToString("d MMM", CultureInfo.InvariantCulture);
            return new StartFrom(from, parsed, Short(name ?? $"{parsed.Request?.Recipe.Name ?? "Stock"}, {day}"), back);
        }
    }

    /// <summary>Potfuls the plan takes; a batch is one of them.</summary>
    public int Potfuls(StartFrom from, UnitSystem units) => plans.Plan(from.Parsed, from.Book).Plan?.Fit.Potfuls ?? 1;

    /// <summary>The form as it is first shown.</summary>
    public TypedForm Blank(StartFrom from, CoolingLimit limit)
    {
        DateTimeOffset now = clock.GetUtcNow();
        DateTimeOffset planned = from.Parsed.Request?.Schedule.StartAt ?? now;
        DateTime local = TimeZoneInfo.ConvertTime(planned, from.Book.Zone).DateTime;
        return TypedForm.Empty
            .With(Key, Guid.CreateVersion7(now).ToString())
            .With(Name, from.Name)
            .With(When, planned > now + TimeSpan.FromMinutes(30) && from.Parsed.Form.Has(PlanFields.Date.Name) ? LaterWord : NowWord)
            .With(Date, local.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture))
            .With(Time, local.ToString("HH:mm", CultureInfo.InvariantCulture))
            .With(Limit, limit.Id);
    }

    /// <summary>Starts the batch; once, however often the form is sent.</summary>
    /// <returns>Its id, or what has to be put right.</returns>
    public async Task<(Guid Id, IReadOnlyList<InputProblem> Problems)> StartAsync(StartFrom from, TypedForm typed, CancellationToken cancellationToken)
    {
        UnitSystem units = from.Parsed.Units;
        FieldReader reader = new(typed, units);
        Guid id = Guid.TryParse(typed[Key], out Guid made) && made != Guid.Empty ? made : Guid.CreateVersion7(clock.GetUtcNow());
        string name = reader.Name(Name, "Give the batch a name.");
        reader.Text(EntryFields.Who, CookName.Longest);
        CoolingLimit? limit = StandardLimits.Find(typed[Limit].Trim());
        if (limit is null)
        {
            reader.Report(Limit, "Choose the limit it is to be cooled by.");
        }

        // The form was sent before, by a second tap or by going back.
        if (await batches.FindAsync(id, cancellationToken) is not null)
        {
            return (id, []);
        }

        List<InputProblem> problems = [.. reader.Problems];
        DateTimeOffset? begins = Begins(typed, from.Book.Zone, units, problems);
        if (problems.Count > 0 || limit is null || begins is not { } start)
        {
            return (Guid.Empty, problems);
        }

        PlanView view = plans.Plan(from.Parsed, from.Book, start, cancellationToken: cancellationToken);
        if (view.Plan is not { } plan)
        {
            return (Guid.Empty, [.. view.Problems.Select(problem => problem with { Field = "" })]);
        }

        NewBatch batch = new(
            id,
            name,
            StoredPlan.Of(plan.ForOnePot(), from.Book.Kitchen.Name, PlanJson.Write(view.Questions.ToKeep())),
            JsonSerializer.Serialize(PlanDocumentMapping.Make(plan.ForOnePot(), view), json.Value.SerializerOptions),
            limit.Id,
            start);
        try
        {
            await batches.StartAsync(batch, cancellationToken);
        }
        catch (StorageTroubleException trouble)
        {
            return (Guid.Empty, [new InputProblem("", trouble.Message)]);
        }

        news.Tell(id);
        return (id, []);
    }

    private DateTimeOffset? Begins(TypedForm typed, TimeZoneInfo zone, UnitSystem units, List<InputProblem> problems)
    {
        DateTimeOffset now = clock.GetUtcNow();
        if (typed[When].Trim() is not LaterWord)
        {
            return now - TimeSpan.FromTicks(now.Ticks % TimeSpan.TicksPerMinute);
        }

        if (!typed.Has(Date) || !typed.Has(Time))
        {
            problems.Add(new InputProblem(typed.Has(Date) ? Time : Date, "Say on which day and at what time it begins, or choose now."));
            return null;
        }

        FieldReader reader = new(typed.With(Time, $"{typed[Date].Trim()} {typed[Time].Trim()}"), units);
        DateTimeOffset? begins = reader.Moment(Time, zone, now);
        problems.AddRange(reader.Problems);
        if (begins is { } at && (at - now).Duration() > TimeSpan.FromDays(400))
        {
            problems.Add(new InputProblem(Date, "That is more than a year away. Check the day."));
            return null;
        }

        return begins;
    }

    private static string Short(string name) => name.Length <= FieldText.LongestName ? name : name[..FieldText.LongestName];
}
