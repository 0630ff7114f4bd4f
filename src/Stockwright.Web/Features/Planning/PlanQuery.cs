using Stockwright.Kitchen;
using Stockwright.Planning;
using Stockwright.Recipes;
using Stockwright.Simmering;
using Stockwright.Web.Features.Kitchen;
using Stockwright.Web.Fields;
using UnitsNet;

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
        KitchenSite site = ReadSite(reader, book.Kitchen.Site);
        PlanGoal? goal = GoalReader.Read(reader, book.Larder);
        FillMark? fill = FillFields.Read(reader);
        SplitWay? way = reader.Form.Has(PlanFields.Way) ? reader.Word(PlanFields.Way, "If it does not fit", PlanText.Ways) : null;
        int? pots = FillFields.ReadCount(reader, PlanFields.Pots, "Pots of this size");
        int? hobs = FillFields.ReadCount(reader, PlanFields.Hobs, "Free hobs like this");
        PlanSchedule schedule = ScheduleReader.Read(reader, book.Zone, now);
        double? simmer = reader.Number(PlanFields.Simmer, "Simmer temperature", Measure.Temperature, 40 + 273.15, 125 + 273.15);
        double? seconds = reader.Number(
            PlanFields.Hours, "Simmer time", Measure.Hours, PlanRequest.SimmerTimeRange.Least.TotalSeconds, PlanRequest.SimmerTimeRange.Most.TotalSeconds);
        double? check = reader.Number(
            PlanFields.Check, "Time between checks", Measure.Minutes, PlanRequest.CheckIntervalRange.Least.TotalSeconds, PlanRequest.CheckIntervalRange.Most.TotalSeconds);
        TopUpRule? topUp = reader.Form.Has(PlanFields.TopUp) ? reader.Word(PlanFields.TopUp, "Topping up", PlanText.TopUps) : null;
        MirepoixTime? mirepoix = reader.Form.Has(PlanFields.Mirepoix) ? reader.Word(PlanFields.Mirepoix, "Mirepoix", PlanText.MirepoixTimes) : null;
        HeatUpLid? heatUpLid = reader.Word(PlanFields.HeatUpLid, "Lid while it heats up", PlanText.HeatUpLids);
        SlowCookerSetting? setting = reader.Word(PlanFields.SlowSetting, "Setting of the slow cooker", EquipmentWords.SlowSettings);
        bool inOven = reader.Form[PlanFields.InOven].Trim() is "1" or "true" or "on";
        HashSet<string> leftOut = ReadTicks(reader, PlanFields.Leave, recipe, book);
        HashSet<string> withOptional = ReadTicks(reader, PlanFields.With, recipe, book);

        PlanQuestions questions = QuestionReader.Read(reader, book.Larder);

        PlanRequest? request = null;
        if (reader.Problems.Count == 0 && recipe is not null && pot is not null && hob is not null && lid is { } position && goal is not null)
        {
            request = new PlanRequest
            {
                Recipe = recipe,
                Larder = book.Larder,
                Pot = pot,
                Hob = hob,
                Lid = position,
                Site = site,
                Oven = book.Kitchen.Oven,
                Trays = book.Kitchen.Trays,
                OtherPots = [.. book.Kitchen.Pots.Where(other => !string.Equals(other.Id, pot.Id, StringComparison.Ordinal))],
                Goal = goal,
                Schedule = schedule,
                SimmerTemperature = simmer is { } kelvins ? Temperature.FromDegreesCelsius(Math.Round(kelvins - 273.15, 9)) : null,
                SimmerTime = seconds is { } length ? TimeSpan.FromSeconds(length) : null,
                CheckInterval = check is { } interval ? TimeSpan.FromSeconds(interval) : TimeSpan.FromHours(1),
                TopUp = topUp ?? PlanRequest.UsualTopUp(recipe),
                PieceSize = questions.PieceSize,
                FillTo = fill,
                Way = way,
                PotCount = pots ?? FillFields.PotsLike(book.Kitchen, pot),
                HobCount = hobs ?? FillFields.HobsLike(book.Kitchen, hob),
                Mirepoix = mirepoix,
                HeatsUpCovered = heatUpLid == HeatUpLid.On,
                Setting = pot.Kind == PotKind.SlowCooker ? setting ?? SlowCookerSetting.High : SlowCookerSetting.High,
                SimmersInOven = inOven,
                LeftOut = leftOut,
                WithOptional = withOptional,
            };
        }

        return new PlanQueryResult(request, questions, reader.Problems, ignored, form, reader.Units);
    }

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
        string id = reader.Form[PlanFields.Recipe].Trim();
        if (id.Length == 0)
        {
            if (DefaultRecipe(book.Recipes) is not { } standing)
            {
                reader.Report(PlanFields.Recipe, "There is no recipe to plan from yet. Add one first.");
                return null;
            }

            return standing;
        }

        if (!book.Recipes.TryFind(id, out StockRecipe? recipe))
        {
            reader.Report(PlanFields.Recipe, $"There is no recipe called {KitchenNumber.Quote(id)} here. Choose one from the list.");
        }

        return recipe;
    }

    internal static StockRecipe? DefaultRecipe(RecipeBook recipes) =>
        recipes.TryFind("brown-chicken", out StockRecipe? chicken) ? chicken : recipes.Recipes is [var first, ..] ? first : null;

    private static KitchenSite ReadSite(FieldReader reader, KitchenSite kitchen)
    {
        double? altitude = reader.Altitude(PlanFields.Altitude);
        double? pressure = reader.AirPressure(PlanFields.Pressure);
        double? room = reader.Room(PlanFields.Room);
        double? tap = reader.Tap(PlanFields.Tap);
        double? film = reader.Film(PlanFields.Film);
        double? clings = reader.Clings(PlanFields.Clings);
        KitchenSite site = kitchen;
        if (altitude is { } metres)
        {
            // An altitude typed for this plan counts over the barometer reading the kitchen keeps.
            site = site with { Altitude = Length.FromMeters(metres), MeasuredPressure = null };
        }

        return site with
        {
            MeasuredPressure = pressure is { } pascals ? Pressure.FromPascals(pascals) : site.MeasuredPressure,
            Room = room is { } roomKelvins ? Temperature.FromDegreesCelsius(roomKelvins - 273.15) : site.Room,
            TapWater = tap is { } tapKelvins ? Temperature.FromDegreesCelsius(tapKelvins - 273.15) : site.TapWater,
            OwnFilmFactor = film ?? site.OwnFilmFactor,
            OwnClinging = clings is { } share ? Ratio.FromDecimalFractions(share) : site.OwnClinging,
        };
    }

    /// <summary>Ingredients ticked under a prefix: lines to leave out, or optional lines to take in.</summary>
    private static HashSet<string> ReadTicks(FieldReader reader, string prefix, StockRecipe? recipe, PlanningInputs book)
    {
        HashSet<string> ticked = new(StringComparer.Ordinal);
        bool takesIn = string.Equals(prefix, PlanFields.With, StringComparison.Ordinal);
        foreach (string name in reader.Form.Names.Where(name => name.StartsWith(prefix, StringComparison.Ordinal)))
        {
            string ingredient = name[prefix.Length..];
            if (reader.Form[name].Trim() is not ("1" or "true" or "on"))
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
