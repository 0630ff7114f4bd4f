using CsCheck;
using Stockwright.Kitchen;
using Stockwright.Storage.Demo;
using UnitsNet;
using Xunit;

namespace Stockwright.Storage.Tests.Contract;

/// <summary>What every provider owes the kitchen.</summary>
public abstract class KitchenContract
{
    private const int Samples = 60;

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    protected abstract TestDatabase NewDatabase();

    [Fact]
    public async Task A_fresh_database_holds_the_demonstration_and_is_not_filled_twice()
    {
        await using TestDatabase database = NewDatabase();
        Assert.True(await database.StartAsync());
        KeptKitchen kitchen = await database.Kitchen.ReadAsync(Stop);
        Same.As(DemoKitchen.Details, kitchen.Details.Value);
        Same.As(DemoKitchen.Pots, kitchen.Setup.Pots);
        Same.As(DemoKitchen.Hobs, kitchen.Setup.Hobs);
        Same.As(DemoKitchen.Oven, kitchen.Setup.Oven);
        Same.As(DemoKitchen.Trays, kitchen.Setup.Trays);

        Kept<Pot> first = kitchen.Pots[0];
        Assert.Equal(SaveOutcome.Saved, await database.Kitchen.DeletePotAsync(first.Value.Id, first.Version, Stop));
        Assert.False(await database.StartAsync());
        Assert.Single((await database.Kitchen.ReadAsync(Stop)).Pots);
    }

    [Fact]
    public void The_plans_of_the_demonstration_lie_ahead_whatever_the_day_and_lead_to_a_thursday()
    {
        DateTimeOffset monday = new(2026, 3, 2, 23, 30, 0, TimeSpan.Zero);
        foreach (DateTimeOffset now in Enumerable.Range(0, 7).Select(day => monday.AddDays(day)))
        {
            IReadOnlyList<DemoPlans.DemoPlan> plans = DemoPlans.After(now);
            Assert.Equal(2, plans.Count);
            DateOnly[] days = [.. plans.Select(plan => DateOnly.FromDateTime(plan.Document.Request.Schedule.StartAt!.Value.DateTime))];
            Assert.All(days, day => Assert.True(day > DateOnly.FromDateTime(now.UtcDateTime)));
            Assert.Equal([DayOfWeek.Tuesday, DayOfWeek.Wednesday], days.Select(day => day.DayOfWeek));
        }
    }

    [Fact]
    public async Task Pots_of_one_name_added_at_once_all_stand_there_under_names_of_their_own()
    {
        const int Together = 20;
        await using TestDatabase database = NewDatabase();
        await database.StartAsync();
        Pot pot = DemoKitchen.Pots[0] with { Name = "The dented one" };
        using Barrier start = new(Together);
        string[] ids = await Task.WhenAll(Enumerable.Range(0, Together).Select(_ => Task.Factory.StartNew(
            () =>
            {
                start.SignalAndWait(Stop);
                return database.Kitchen.AddAsync(pot, cancellationToken: Stop);
            },
            Stop,
            TaskCreationOptions.LongRunning,
            TaskScheduler.Default).Unwrap()));
        Assert.Equal(Together, ids.Distinct(StringComparer.Ordinal).Count());
        KeptKitchen kitchen = await database.Kitchen.ReadAsync(Stop);
        IEnumerable<Pot> added = kitchen.Pots.Select(row => row.Value).Where(row => string.Equals(row.Name, pot.Name, StringComparison.Ordinal));
        Assert.Equal(ids.Order(StringComparer.Ordinal), added.Select(row => row.Id).Order(StringComparer.Ordinal));
        Assert.Equal(DemoKitchen.Pots.Count + Together, kitchen.Pots.Count);
    }

    [Fact]
    public async Task Without_the_demonstration_the_kitchen_is_empty_and_stays_so()
    {
        await using TestDatabase database = NewDatabase();
        Assert.True(await database.StartAsync(withDemo: false));
        Assert.False(await database.StartAsync(withDemo: true));
        KitchenSetup setup = (await database.Kitchen.ReadAsync(Stop)).Setup;
        Assert.Empty((await database.Plans.PageAsync(1, 100, Stop)).Rows);
        Assert.Empty(setup.Pots);
        Assert.Empty(setup.Hobs);
        Assert.Empty(setup.Trays);
        Assert.Null(setup.Oven);
        Same.As(new KitchenSite(), setup.Site);
        Assert.Equal("UTC", setup.TimeZoneId);
    }

    [Fact]
    public async Task Pots_hobs_ovens_trays_and_site_come_back_as_they_went_in()
    {
        await using TestDatabase database = NewDatabase();
        await database.StartAsync(withDemo: false);
        await Gen.Select(Kitchens.Pot, Kitchens.Hob, Kitchens.Oven, Kitchens.Tray, Kitchens.Details).SampleAsync(
            async (pot, hob, oven, tray, details) =>
            {
                pot = pot with { Id = await database.Kitchen.AddAsync(pot, cancellationToken: Stop) };
                hob = hob with { Id = await database.Kitchen.AddAsync(hob, cancellationToken: Stop) };
                oven = oven with { Id = await database.Kitchen.AddAsync(oven, cancellationToken: Stop) };
                tray = tray with { Id = await database.Kitchen.AddAsync(tray, cancellationToken: Stop) };
                KeptKitchen before = await database.Kitchen.ReadAsync(Stop);
                Assert.Equal(SaveOutcome.Saved, await database.Kitchen.SaveDetailsAsync(details, before.Details.Version, Stop));
                KeptKitchen after = await database.Kitchen.ReadAsync(Stop);
                Same.As(pot, after.Pots[^1].Value);
                Same.As(hob, after.Hobs[^1].Value);
                Same.As(oven, after.Ovens[^1].Value);
                Same.As(tray, after.Trays[^1].Value);
                Same.As(details, after.Details.Value);
            },
            iter: Samples,
            threads: 1);
    }

    [Fact]
    public async Task Stable_names_differ_even_when_the_cooks_names_do_not()
    {
        await using TestDatabase database = NewDatabase();
        await database.StartAsync(withDemo: false);
        Pot pot = Pot.Straight("ignored", "Big Pot!", Length.FromCentimeters(30), Length.FromCentimeters(30));
        Assert.Equal("big-pot", await database.Kitchen.AddAsync(pot, cancellationToken: Stop));
        Assert.Equal("big-pot-2", await database.Kitchen.AddAsync(pot, cancellationToken: Stop));
        Assert.Equal("pot", await database.Kitchen.AddAsync(pot with { Name = "鍋" }, cancellationToken: Stop));
    }

    [Fact]
    public async Task Pots_added_at_once_all_get_a_name_of_their_own()
    {
        await using TestDatabase database = NewDatabase();
        await database.StartAsync(withDemo: false);
        Pot pot = Pot.Straight("", "Pot", Length.FromCentimeters(30), Length.FromCentimeters(30));
        string[] ids = await Task.WhenAll(Enumerable.Range(0, 6).Select(_ => Task.Run(() => database.Kitchen.AddAsync(pot, cancellationToken: Stop), Stop)));
        Assert.Equal(6, ids.Distinct(StringComparer.Ordinal).Count());
        Assert.Equal(6, (await database.Kitchen.ReadAsync(Stop)).Pots.Count);
    }

    [Fact]
    public async Task The_second_of_two_writers_is_told_and_the_first_keeps_what_it_wrote()
    {
        await using TestDatabase database = NewDatabase();
        await database.StartAsync();
        Kept<Pot> seen = (await database.Kitchen.ReadAsync(Stop)).Pots[0];
        Assert.Equal(SaveOutcome.Saved, await database.Kitchen.SaveAsync(seen.Value with { Name = "First" }, seen.Version, Stop));
        Assert.Equal(SaveOutcome.ChangedMeanwhile, await database.Kitchen.SaveAsync(seen.Value with { Name = "Second" }, seen.Version, Stop));
        Assert.Equal(SaveOutcome.ChangedMeanwhile, await database.Kitchen.DeletePotAsync(seen.Value.Id, seen.Version, Stop));
        Kept<Pot> now = (await database.Kitchen.ReadAsync(Stop)).Pots[0];
        Assert.Equal("First", now.Value.Name);
        Assert.Equal(seen.Version + 1, now.Version);

        Assert.Equal(SaveOutcome.Saved, await database.Kitchen.DeletePotAsync(seen.Value.Id, now.Version, Stop));
        Assert.Equal(SaveOutcome.Gone, await database.Kitchen.SaveAsync(now.Value, now.Version, Stop));
    }

    [Fact]
    public async Task Edits_of_different_things_do_not_get_in_each_others_way()
    {
        await using TestDatabase database = NewDatabase();
        await database.StartAsync();
        KeptKitchen seen = await database.Kitchen.ReadAsync(Stop);
        Assert.Equal(SaveOutcome.Saved, await database.Kitchen.SaveAsync(seen.Pots[0].Value with { Name = "A" }, seen.Pots[0].Version, Stop));
        Assert.Equal(SaveOutcome.Saved, await database.Kitchen.SaveAsync(seen.Pots[1].Value with { Name = "B" }, seen.Pots[1].Version, Stop));
        Assert.Equal(SaveOutcome.Saved, await database.Kitchen.SaveDetailsAsync(seen.Details.Value with { Name = "C" }, seen.Details.Version, Stop));
        Assert.Equal(["A", "B"], (await database.Kitchen.ReadAsync(Stop)).Setup.Pots.Select(pot => pot.Name), StringComparer.Ordinal);
    }

    [Fact]
    public async Task An_estimated_mass_follows_the_pots_size_and_a_weighed_one_stays()
    {
        await using TestDatabase database = NewDatabase();
        await database.StartAsync(withDemo: false);
        Pot estimated = Pot.Straight("", "Estimated", Length.FromCentimeters(24), Length.FromCentimeters(22));
        Pot weighed = estimated with { Name = "Weighed", EmptyMass = Mass.FromKilograms(1.85) };
        await database.Kitchen.AddAsync(estimated, cancellationToken: Stop);
        await database.Kitchen.AddAsync(weighed, cancellationToken: Stop);
        IReadOnlyList<Kept<Pot>> pots = (await database.Kitchen.ReadAsync(Stop)).Pots;
        Assert.True(pots[0].Value.HasEstimatedMass());
        Assert.False(pots[1].Value.HasEstimatedMass());
        Assert.Equal(1.85, pots[1].Value.EmptyMass.Kilograms, 12);
    }

    [Fact]
    public async Task A_form_sent_again_adds_nothing_and_is_answered_as_the_first_time()
    {
        await using TestDatabase database = NewDatabase();
        await database.StartAsync(withDemo: false);
        Pot pot = Pot.Straight("", "Big pot", Length.FromCentimeters(30), Length.FromCentimeters(30));
        string[] given = await Task.WhenAll(Enumerable.Range(0, 6).Select(_ => Task.Run(() => database.Kitchen.AddAsync(pot, "form 1", Stop), Stop)));
        Assert.Equal("big-pot", Assert.Single(given.Distinct(StringComparer.Ordinal)));
        Assert.Equal("big-pot-2", await database.Kitchen.AddAsync(pot, "form 2", Stop));
        await database.StartAsync(withDemo: false);
        Assert.Equal("big-pot", await database.Kitchen.AddAsync(pot, "form 1", Stop));
        Assert.Equal(2, (await database.Kitchen.ReadAsync(Stop)).Pots.Count);

        // Deleted meanwhile, it does not come back by a reload.
        await database.Kitchen.DeletePotAsync("big-pot", 1, Stop);
        Assert.Equal("big-pot", await database.Kitchen.AddAsync(pot, "form 1", Stop));
        Assert.Single((await database.Kitchen.ReadAsync(Stop)).Pots);
    }
}
