using Stockwright.Kitchen;
using Stockwright.Larder;
using Stockwright.Planning;
using Stockwright.Recipes;
using UnitsNet;
using Xunit;

namespace Stockwright.Storage.Tests.Contract;

/// <summary>What every provider owes saved plans.</summary>
public abstract class PlanContract
{
    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    protected abstract TestDatabase NewDatabase();

    [Fact]
    public async Task A_saved_plan_keeps_what_it_was_worked_out_from_when_the_kitchen_changes()
    {
        await using TestDatabase database = NewDatabase();
        await database.StartAsync();
        StoredPlan kept = await DocumentAsync(database);
        Guid id = await database.Plans.AddAsync("Sunday", kept, cancellationToken: Stop);

        KeptKitchen kitchen = await database.Kitchen.ReadAsync(Stop);
        foreach (Kept<Pot> pot in kitchen.Pots)
        {
            await database.Kitchen.DeletePotAsync(pot.Value.Id, pot.Version, Stop);
        }

        await database.Kitchen.SaveDetailsAsync(
            new KitchenDetails("Elsewhere", "Asia/Tokyo", new KitchenSite { Altitude = Length.FromMeters(3000) }), kitchen.Details.Version, Stop);
        await database.StartAsync();

        SavedPlan plan = (await database.Plans.FindAsync(id, Stop))!;
        Assert.Null(plan.Trouble);
        Assert.Null(plan.OldQuery);
        Same.As(kept, plan.Document);
    }

    [Fact]
    public async Task A_document_holds_every_ingredient_the_plan_needs_and_no_other()
    {
        await using TestDatabase database = NewDatabase();
        await database.StartAsync();
        StoredPlan kept = await DocumentAsync(database);
        Assert.All(kept.Request.Recipe.Lines, line => Assert.True(kept.Request.Larder.TryFind(line.IngredientId, out _)));
        Assert.True(kept.Request.Larder.TryFind("oxtail", out _));
        Assert.False(kept.Request.Larder.TryFind("lobster-shell", out _));
        Assert.Equal("pot-10", kept.Kitchen.Pots[0].Id);
        Assert.Equal(2, kept.Kitchen.Pots.Count);
    }

    [Fact]
    public async Task Plans_are_listed_with_the_last_touched_first_and_times_come_back_as_utc()
    {
        await using TestDatabase database = NewDatabase();
        await database.StartAsync();
        StoredPlan kept = await DocumentAsync(database);
        DateTimeOffset first = database.Clock.Now = new(2026, 3, 1, 9, 59, 59, 999, TimeSpan.Zero);
        Guid a = await database.Plans.AddAsync("A", kept, cancellationToken: Stop);
        database.Clock.Now = first.AddMilliseconds(1);
        Guid b = await database.Plans.AddAsync("B", kept, cancellationToken: Stop);
        database.Clock.Now = first.AddTicks(15_000);
        Guid c = await database.Plans.AddAsync("C", kept, cancellationToken: Stop);
        IReadOnlyList<PlanSummary> plans = (await database.Plans.PageAsync(1, 100, Stop)).Rows;
        Assert.Equal([c, b, a], plans.Take(3).Select(plan => plan.Id));
        Assert.Equal(first, plans[2].Created);
        Assert.Equal(TimeSpan.Zero, plans[2].Created.Offset);
        Assert.Equal("10 L pot", plans[0].PotName);

        database.Clock.Now = first.AddDays(1);
        Assert.Equal(SaveOutcome.Saved, await database.Plans.RenameAsync(a, "A again", "Thick", plans[2].Version, Stop));
        plans = (await database.Plans.PageAsync(1, 100, Stop)).Rows;
        Assert.Equal(a, plans[0].Id);
        Assert.Equal(("A again", "Thick", first, first.AddDays(1)), (plans[0].Name, plans[0].Note, plans[0].Created, plans[0].Updated));
    }

    [Fact]
    public async Task A_copy_stands_by_itself()
    {
        await using TestDatabase database = NewDatabase();
        await database.StartAsync();
        Guid id = await database.Plans.AddAsync("A", await DocumentAsync(database), "note", cancellationToken: Stop);
        Guid copy = (await database.Plans.CopyAsync(id, "B", cancellationToken: Stop))!.Value;
        Assert.Equal(SaveOutcome.Saved, await database.Plans.DeleteAsync(id, 1, Stop));
        Assert.Null(await database.Plans.FindAsync(id, Stop));
        Assert.Null(await database.Plans.CopyAsync(id, "C", cancellationToken: Stop));
        SavedPlan plan = (await database.Plans.FindAsync(copy, Stop))!;
        Assert.Equal(("B", "note"), (plan.Summary.Name, plan.Summary.Note));
        Assert.NotNull(plan.Document);
    }

    [Fact]
    public async Task Two_renames_of_one_plan_do_not_overwrite_each_other()
    {
        await using TestDatabase database = NewDatabase();
        await database.StartAsync();
        Guid id = await database.Plans.AddAsync("A", await DocumentAsync(database), cancellationToken: Stop);
        Assert.Equal(SaveOutcome.Saved, await database.Plans.RenameAsync(id, "B", "", 1, Stop));
        Assert.Equal(SaveOutcome.ChangedMeanwhile, await database.Plans.RenameAsync(id, "C", "", 1, Stop));
        Assert.Equal("B", (await database.Plans.FindAsync(id, Stop))!.Summary.Name);
    }

    [Fact]
    public void A_damaged_or_newer_snapshot_is_refused_in_plain_words()
    {
        Assert.Throws<StoredDocumentException>(() => PlanSnapshot.Parse("{"));
        Assert.Throws<StoredDocumentException>(() => PlanSnapshot.Parse("null"));
        Assert.Throws<StoredDocumentException>(() => PlanSnapshot.Parse("""{"format":1}"""));
    }

    private static async Task<StoredPlan> DocumentAsync(TestDatabase database)
    {
        KitchenSetup kitchen = (await database.Kitchen.ReadAsync(Stop)).Setup;
        Assert.True(StandardRecipes.Book.TryFind("brown-chicken", out StockRecipe? recipe));
        PlanRequest request = new()
        {
            Recipe = recipe!,
            Larder = StandardLarder.Table,
            Pot = kitchen.Pots[0],
            OtherPots = kitchen.Pots,
            Hob = kitchen.Hobs[0],
            Lid = LidPosition.Off,
            Site = kitchen.Site,
            Oven = kitchen.Oven,
            Trays = kitchen.Trays,
            Goal = new PlanGoal.UseBones([new BonesAtHand("oxtail", Mass.FromKilograms(2))]),
            Schedule = new PlanSchedule { StartAt = database.Clock.Now },
        };
        return StoredPlan.Of(request, kitchen.Name);
    }
}
