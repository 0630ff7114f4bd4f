using Stockwright.Kitchen;
using Stockwright.Larder;
using Stockwright.Planning;
using Stockwright.Recipes;
using Stockwright.Web.Features.Kitchen;
using Stockwright.Web.Fields;

namespace Stockwright.Web.Features.Planning;

/// <summary>
/// Reads and writes plans as links (codec version 1). Tolerant: what is unknown is left aside and named; strict: what is
/// wrong is reported at its field, and nothing is clamped or guessed.
/// </summary>
public static class PlanQuery
{
    /// <summary>Reads a form, a query string or the fields of the HTTP interface.</summary>
    /// <param name="typed">Everything that was sent.</param>
    /// <param name="book">Recipes, ingredients and kitchen it may refer to.</param>
    /// <param name="units">Measures of the numbers where the form does not say.</param>
    /// <param name="now">The present, for the default start.</param>
    public static PlanQueryResult Parse(TypedForm typed, PlanningInputs book, UnitSystem units, DateTimeOffset now)
    {
        TypedForm form = RowFields.Renumber(typed);
        List<string> ignored = LeftAside(typed);
        UnitSystem? said = form.Has(PlanFields.Units) ? ReaderUnits.Read(form[PlanFields.Units].Trim()) : units;
        FieldReader reader = new(form, said ?? units);
        if (said is null)
        {
            reader.Report(PlanFields.Units, $"Measures: {KitchenNumber.Quote(form[PlanFields.Units])} is not one of metric, us.");
        }

        StockRecipe? recipe = ReadRecipe(reader, book);
        Pot? pot = EquipmentReader.ReadPot(reader, book.Kitchen);
        Hob? hob = EquipmentReader.ReadHob(reader, book.Kitchen, pot);
        LidPosition? lid = EquipmentReader.ReadLid(reader, recipe, pot);
        PlanGoal? goal = GoalReader.Read(reader, book.Larder);
        FillMark? fill = FillFields.Read(reader);
        PlanSchedule schedule = ScheduleReader.Read(reader, book.Zone, now);
        Func<PlanRequest, PlanRequest> fields = PlanFields.OfRequest.Read(reader);
        HashSet<string> leftOut = ReadTicks(reader, PlanFields.Leave, recipe, book);
        HashSet<string> withOptional = ReadTicks(reader, PlanFields.With, recipe, book);
        PlanQuestions questions = QuestionReader.Read(reader, book.Larder);

        PlanRequest? request = null;
        if (reader.Problems.Count == 0 && recipe is not null && pot is not null && hob is not null && lid is { } position && goal is not null)
        {
            request = fields(Usual(recipe, book.Larder, book.Kitchen, pot, hob) with
            {
                Lid = position,
                Goal = goal,
                FillTo = fill,
                Schedule = schedule,
                PieceSize = questions.PieceSize,
                LeftOut = leftOut,
                WithOptional = withOptional,
            });
            if (request.Schedule.WakesAt == request.Schedule.SleepsAt)
            {
                reader.Report("sleeps", "Getting up and going to bed cannot be at the same time.");
                request = null;
            }
        }

        return new PlanQueryResult(request, questions, reader.Problems, ignored, form, reader.Units);
    }

    /// <summary>What is planned with recipe, pot and hob when nothing else is said.</summary>
    internal static PlanRequest Usual(StockRecipe recipe, LarderTable larder, KitchenSetup kitchen, Pot pot, Hob hob) => new()
    {
        Recipe = recipe,
        Larder = larder,
        Pot = pot,
        Hob = hob,
        Lid = PlanRequest.UsualLid(pot, recipe),
        Site = kitchen.Site,
        Oven = kitchen.Oven,
        Trays = kitchen.Trays,
        OtherPots = [.. kitchen.Pots.Where(other => !string.Equals(other.Id, pot.Id, StringComparison.Ordinal))],
        Goal = new PlanGoal.FillPot(),
        Schedule = new PlanSchedule(),
        TopUp = PlanRequest.UsualTopUp(recipe),
        PotCount = FillFields.PotsLike(kitchen, pot),
        HobCount = FillFields.HobsLike(kitchen, hob),
    };

    /// <summary>Writes a request as a query string that reads back to the same request; what equals the default is left out.</summary>
    /// <param name="request">The request.</param>
    /// <param name="kitchen">Kitchen the link will be read in; its pots and hobs are named, others are spelled out.</param>
    /// <param name="units">Measures to write in.</param>
    /// <param name="questions">What else is asked of the plan; null for nothing.</param>
    public static string ToQuery(PlanRequest request, KitchenSetup kitchen, UnitSystem units, PlanQuestions? questions = null) =>
        new TypedForm([.. PlanWriter.Write(request, kitchen, units).Entries, .. QuestionWriter.Write(questions ?? PlanQuestions.None, units)]).ToQuery();

    /// <summary>The same form in other measures. Numbers that cannot be read stay as typed.</summary>
    /// <param name="form">As typed.</param>
    /// <param name="standing">Measures of the numbers where the form does not say.</param>
    /// <param name="to">Measures wanted.</param>
    public static TypedForm InUnits(TypedForm form, UnitSystem standing, UnitSystem to) => PlanUnits.Convert(form, standing, to);

    private static StockRecipe? ReadRecipe(FieldReader reader, PlanningInputs book)
    {
        string id = reader.Form[PlanFields.Recipe.Name].Trim();
        if (id.Length == 0)
        {
            if (DefaultRecipe(book.Recipes) is not { } standing)
            {
                reader.Report(PlanFields.Recipe.Name, "There is no recipe to plan from yet. Add one first.");
                return null;
            }

            return standing;
        }

        if (!book.Recipes.TryFind(id, out StockRecipe? recipe))
        {
            reader.Report(PlanFields.Recipe.Name, $"There is no recipe called {KitchenNumber.Quote(id)} here. Choose one from the list.");
        }

        return recipe;
    }

    internal static StockRecipe? DefaultRecipe(RecipeBook recipes) =>
        recipes.TryFind("brown-chicken", out StockRecipe? chicken) ? chicken : recipes.Recipes is [var first, ..] ? first : null;

    /// <summary>Ingredients ticked under a prefix: lines to leave out, or optional lines to take in.</summary>
    private static HashSet<string> ReadTicks(FieldReader reader, string prefix, StockRecipe? recipe, PlanningInputs book)
    {
        HashSet<string> ticked = new(StringComparer.Ordinal);
        bool takesIn = string.Equals(prefix, PlanFields.With, StringComparison.Ordinal);
        foreach (string name in reader.Form.Names.Where(name => name.StartsWith(prefix, StringComparison.Ordinal)))
        {
            string ingredient = name[prefix.Length..];
            if (!TickRow.IsTicked(reader.Form[name]))
            {
                continue;
            }

            if (!book.Larder.TryFind(ingredient, out _))
            {
                reader.Report(name, $"There is no ingredient called {KitchenNumber.Quote(ingredient)} to {(takesIn ? "add" : "leave out")}.");
                continue;
            }

            // A tick left over from another recipe does no harm and says nothing.
            List<RecipeLine> lines = [.. (recipe?.Lines ?? []).Where(line => string.Equals(line.IngredientId, ingredient, StringComparison.Ordinal))];
            if (takesIn ? lines.Any(line => line.IsOptional) : lines.Any(line => CanLeaveOut(recipe!, line)))
            {
                ticked.Add(ingredient);
            }
            else if (!takesIn && lines.Any(line => !line.IsOptional))
            {
                reader.Report(name, "The stock is made of this; it cannot be left out.");
            }
        }

        return ticked;
    }

    /// <summary>What the stock is made of cannot be left out when there is nothing else of it; what is optional is out until it is taken in.</summary>
    internal static bool CanLeaveOut(StockRecipe recipe, RecipeLine line) =>
        !line.IsOptional
        && (line.Role != LineRole.Bones
            || recipe.Lines.Any(other => other is { Role: LineRole.Bones, IsOptional: false } && !string.Equals(other.IngredientId, line.IngredientId, StringComparison.Ordinal)));

    private static List<string> LeftAside(TypedForm typed)
    {
        List<string> sentences = [];
        string version = typed[PlanFields.VersionField].Trim();
        if (version.Length > 0 && version is not "1")
        {
            sentences.Add(KitchenNumber.TryParse(version, out double number, out _) && number > PlanFields.Version
                ? "This link was made by a newer version of Stockwright. What this version knows of it is used; check the plan before you cook from it."
                : $"This link names a version, {KitchenNumber.Quote(version)}, that never was. It is read as the present one.");
        }

        List<string> unknown = [.. typed.Names.Where(name => !PlanFields.IsKnown(name))];
        if (unknown.Count > 0)
        {
            string names = string.Join(", ", unknown.Take(5).Select(KitchenNumber.Quote)) + (unknown.Count > 5 ? ", …" : "");
            sentences.Add($"Not understood and left aside: {names}.");
        }

        List<string> repeated = [.. typed.Entries.GroupBy(entry => entry.Key, StringComparer.Ordinal)
            .Where(group => group.Count() > 1 && PlanFields.IsKnown(group.Key)).Select(group => group.Key)];
        if (repeated.Count > 0)
        {
            sentences.Add($"Given more than once, so the first counts: {string.Join(", ", repeated.Take(5).Select(KitchenNumber.Quote))}.");
        }

        return sentences;
    }
}
